/**
 * The sample season's photos from straight above, whose cover was counted in the drawing itself. They are squeezed into
 * 58 kB each, which smears the colour of leaves three pixels wide; without that the method is within three points.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';
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
