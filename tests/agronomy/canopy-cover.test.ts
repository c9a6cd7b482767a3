import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CoverMethod, coverPercent, greenCover } from '../../src/agronomy/canopy-cover.ts';
import { drawStand, type Rgb } from './canopy-drawn.ts';

const grounds: Record<string, Rgb> = {
  'brown mud': [112, 92, 72],
  'dry grey': [150, 142, 130],
  'wet and dark': [62, 54, 46],
  'red earth': [150, 92, 64],
  'water under sky': [120, 128, 134],
};
const lights: Record<string, Rgb> = {
  overcast: [1, 1, 1],
  'low sun': [1.15, 1, 0.72],
  'open shade': [0.8, 0.95, 1.15],
};
const leaves: Record<string, Rgb> = { young: [110, 160, 60], dark: [50, 105, 38], hungry: [150, 160, 70] };
/** Blades a hill and their length in cm: from bare ground to closed. */
const stands: [number, number][] = [
  [0, 10],
  [3, 8],
  [12, 14],
  [60, 24],
];

describe.each(Object.keys(grounds))('on ground that is %s', (ground) => {
  test.each(Object.keys(lights))('in %s, cover is right within three points', (light) => {
    const wrong = Object.entries(leaves).flatMap(([name, leaf]) =>
      stands.flatMap(([blades, bladeCm]) => {
        const drawn = drawStand({
          seed: blades + 11,
          blades,
          bladeCm,
          leaf,
          ground: grounds[ground]!,
          light: lights[light]!,
        });
        const { coverPercent: found, method } = greenCover(drawn.picture);
        const apart = Math.abs(found - drawn.coverPercent);
        return apart <= 3
          ? []
          : [`${name}, ${blades} blades: ${found} for ${drawn.coverPercent} by ${method}`];
      }),
    );
    expect(wrong).toEqual([]);
  });
});

const usual = {
  seed: 3,
  blades: 12,
  bladeCm: 14,
  ground: grounds['brown mud']!,
  leaf: leaves.young!,
  light: lights.overcast!,
};

test('a picture that is half in neutral shade counts as one that is not', () => {
  const drawn = drawStand({ ...usual, shade: { share: 0.5, left: [0.6, 0.6, 0.6] } });
  expect(Math.abs(greenCover(drawn.picture).coverPercent - drawn.coverPercent)).toBeLessThanOrEqual(3);
});

describe('which threshold is used, and named', () => {
  test.each([
    ['bare ground', 0, 10, 'excess green minus excess red, above zero'],
    ['a stand between planting and closing', 12, 14, 'excess green, threshold by Otsu'],
  ])('%s', (_, blades, bladeCm, method) => {
    expect(greenCover(drawStand({ ...usual, blades, bladeCm }).picture).method).toBe(method);
  });

  test('nothing but leaves: not cut in two', () => {
    const leavesOnly = greenCover(drawStand({ ...usual, blades: 0, ground: leaves.dark! }).picture);
    expect(leavesOnly).toMatchObject({
      coverPercent: 100,
      method: 'excess green minus excess red, above zero',
    });
  });

  test.each<CoverMethod>(['otsu', 'fixed'])('%s can be asked for', (wanted) => {
    const drawn = drawStand(usual);
    const found = greenCover(drawn.picture, wanted);
    expect(found.method).toContain(wanted === 'otsu' ? 'Otsu' : 'above zero');
    expect(Math.abs(found.coverPercent - drawn.coverPercent)).toBeLessThanOrEqual(4);
  });

  test('asked to part bare ground, Otsu finds plants that are not there: why the picture decides', () => {
    expect(greenCover(drawStand({ ...usual, blades: 0 }).picture, 'otsu').coverPercent).toBeGreaterThan(10);
  });
});

test('where it does not apply: straw-coloured leaves are not counted, algae are', () => {
  const straw = drawStand({ ...usual, leaf: [200, 160, 90] });
  expect(straw.coverPercent).toBeGreaterThan(20);
  expect(greenCover(straw.picture).coverPercent).toBeLessThan(1);
  const algae = drawStand({ ...usual, blades: 0, ground: [70, 110, 50] });
  expect(greenCover(algae.picture).coverPercent).toBeGreaterThan(90);
});

// check-values: cover-pct
test('431 of 1000 pixels are 43.1 %', () => {
  expect(coverPercent(Uint8Array.from({ length: 1000 }, (_, at) => (at < 431 ? 1 : 0)))).toBe(43.1);
});

test('whatever the pixels: a share between 0 and 100 that is the mask counted', () => {
  const pictures = fc
    .tuple(fc.integer({ min: 0, max: 12 }), fc.integer({ min: 0, max: 12 }))
    .chain(([width, height]) =>
      fc
        .uint8Array({ minLength: width * height * 3, maxLength: width * height * 3 })
        .map((data) => ({ data, width, height })),
    );
  fc.assert(
    fc.property(pictures, (picture) => {
      const found = greenCover(picture);
      expect(found.mask).toHaveLength(picture.width * picture.height);
      expect(found.coverPercent).toBe(coverPercent(found.mask));
      expect(found.coverPercent >= 0 && found.coverPercent <= 100).toBe(true);
    }),
  );
});
