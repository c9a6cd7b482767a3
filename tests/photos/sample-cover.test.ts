/**
 * The sample season's photos from straight above, whose cover was counted in the drawing itself. They are squeezed into
 * 58 kB each, which smears the colour of leaves three pixels wide; without that the method is within three points.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { afterAll, expect, test } from 'vitest';
import { countCover } from '../../sample-notes/count-cover.ts';
import { drawPhoto } from '../../sample-notes/draw-photo.ts';
import { SAMPLE_PHOTOS } from '../../sample-notes/photo-list.ts';
import { readSeason } from '../../sample-notes/read-season.ts';
import { greenCover } from '../../src/agronomy/canopy-cover.ts';
import { openDarkroom } from '../../src/photos/darkroom.ts';

interface Listed {
  file: string;
  straightDown: boolean;
  coverPercentTrue: number | null;
}

const sample = new URL('../../sample-notes/', import.meta.url);
const listed = (JSON.parse(readFileSync(new URL('photos.json', sample), 'utf8')) as Listed[]).filter(
  ({ straightDown, coverPercentTrue }) => straightDown && coverPercentTrue !== null,
);
const darkroom = openDarkroom();
afterAll(() => darkroom.close());

/** Those that the squeezed photos get most wrong, one bare and one closed. */
const hardest = ['e1-down-0710', 'e4-down-0807', 'e8-down-0804', 'e1-down-0825', 'e1-down-0908'];

test('the drawings themselves: within three points', { timeout: 120_000 }, async () => {
  const { plots } = readSeason();
  let checked = 0;
  for (const photo of SAMPLE_PHOTOS.filter(({ file }) => hardest.includes(file.replace('.jpg', '')))) {
    const plot = plots.find(({ code }) => code === photo.plot);
    const { picture, plants } = drawPhoto(photo, plot!);
    const { data, info } = await sharp(Buffer.from(picture), { unlimited: true })
      .removeAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    const found = greenCover({ data, width: info.width, height: info.height });
    expect(Math.abs(found.coverPercent - (await countCover(plants!))), photo.file).toBeLessThanOrEqual(3);
    checked++;
  }
  expect(checked).toBe(hardest.length);
});

test('small JPEGs of the sample: within six points each, within three for most, and nothing to warn of', async () => {
  const errors = await Promise.all(
    listed.map(async ({ file, coverPercentTrue }) => {
      const found = await darkroom.cover(fileURLToPath(new URL(`photos/${file}`, sample)));
      if ('fault' in found) throw new Error(`${file}: ${found.fault}`);
      expect(found.warnings, file).toEqual([]);
      return Math.abs(found.coverPercent - coverPercentTrue!);
    }),
  );
  expect(Math.max(...errors)).toBeLessThanOrEqual(6);
  expect(errors.filter((error) => error <= 3).length).toBeGreaterThan(errors.length * 0.6);
});
