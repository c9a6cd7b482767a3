import { expect, test } from 'vitest';
import type { PictureRgb } from '../../src/agronomy/canopy-cover.ts';
import { glareShare, laplacianVariance, pictureWarnings } from '../../src/agronomy/canopy-warnings.ts';
import { drawStand } from './canopy-drawn.ts';

const usual = {
  seed: 5,
  blades: 12,
  bladeCm: 14,
  ground: [112, 92, 72],
  leaf: [110, 160, 60],
  light: [1, 1, 1],
} as const;
const drawn = (light = 1): PictureRgb => drawStand({ ...usual, light: [light, light, light] }).picture;

test('nothing to say about a sharp picture in good light', () => {
  expect(pictureWarnings(drawn())).toEqual([]);
});

test('too dark', () => {
  expect(pictureWarnings(drawn(0.3)).join()).toMatch(/very dark/);
});

test('glare: a tenth of the picture white and without colour', () => {
  const picture = drawn();
  picture.data.fill(252, 0, Math.floor(picture.data.length / 10));
  expect(glareShare(picture)).toBeCloseTo(0.1, 2);
  expect(pictureWarnings(picture).join()).toMatch(/10 % of the picture is glare/);
});

test('bright leaves are no glare', () => {
  const picture = drawn();
  for (let at = 0; at < picture.data.length; at += 3) picture.data.set([200, 250, 120], at);
  expect(glareShare(picture)).toBe(0);
});

test('blurred, as a hand that moved', () => {
  expect(pictureWarnings(smeared(drawn(), 15)).join()).toMatch(/blurred/);
});

test('variance of the Laplacian: a single bright dot in a field of 5 by 5', () => {
  const grey = new Float32Array(25);
  grey[12] = 9;
  // Inside 3 by 3: one -36, four 9, four 0; mean 0; variance (36² + 4 x 9²) / 9.
  expect(laplacianVariance(grey, { width: 5, height: 5 })).toBeCloseTo((1296 + 324) / 9, 6);
  expect(laplacianVariance(new Float32Array(4), { width: 2, height: 2 })).toBe(0);
});

/** Each dot becomes the mean of a square of `size` dots around it. */
function smeared({ data, width, height }: PictureRgb, size: number): PictureRgb {
  const soft = new Uint8Array(data.length);
  const half = Math.floor(size / 2);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      for (let channel = 0; channel < 3; channel++) {
        let [sum, dots] = [0, 0];
        for (let dy = -half; dy <= half; dy++)
          for (let dx = -half; dx <= half; dx++) {
            const [atX, atY] = [x + dx, y + dy];
            if (atX < 0 || atY < 0 || atX >= width || atY >= height) continue;
            sum += data[(atY * width + atX) * 3 + channel]!;
            dots++;
          }
        soft[(y * width + x) * 3 + channel] = Math.round(sum / dots);
      }
  return { data: soft, width, height };
}
