import { readdirSync, readFileSync } from 'node:fs';
import exifr from 'exifr';
import geodesic from 'geographiclib-geodesic';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { countCover } from '../../sample-notes/count-cover.ts';
import { drawPhoto } from '../../sample-notes/draw-photo.ts';
import { SAMPLE_PHOTOS } from '../../sample-notes/photo-list.ts';
import { readSeason } from '../../sample-notes/read-season.ts';
import { noteFiles } from './note-files.ts';

interface Listed {
  file: string;
  plot: string;
  takenAt: string;
  straightDown: boolean;
  coverPercentTrue: number | null;
  position: { latitude: number; longitude: number; errorM: number } | null;
}

const FOLDER = new URL('../../sample-notes/photos/', import.meta.url);
const listed: Listed[] = JSON.parse(readFileSync(new URL('../photos.json', FOLDER), 'utf8'));
const { plots } = readSeason();
const notes = noteFiles();
const plotOf = (code: string) => plots.find((plot) => plot.code === code)!;

describe('the sample photos', () => {
  test('are listed, kept, and each shown by one note', () => {
    const files = listed.map(({ file }) => file).sort();
    expect(readdirSync(FOLDER).sort()).toEqual(files);
    expect(notes.flatMap(({ photos }) => photos).sort()).toEqual(files);
    expect(listed.map(({ file }) => file)).toEqual(SAMPLE_PHOTOS.map(({ file }) => file));
  });

  test('are small enough to be kept beside the code', () => {
    const sizes = listed.map(({ file }) => readFileSync(new URL(file, FOLDER)).length);
    expect(Math.max(...sizes)).toBeLessThanOrEqual(60_000);
    expect(sizes.reduce((sum, size) => sum + size)).toBeLessThan(2_500_000);
  });

  test.each(listed)('$file was taken within half an hour of its note', ({ file, takenAt, plot }) => {
    const note = notes.find(({ photos }) => photos.includes(file))!;
    const minutes = (Date.parse(note.on.replace(' ', 'T')) - Date.parse(takenAt)) / 60_000;
    expect(minutes).toBeGreaterThan(-1);
    expect(minutes).toBeLessThan(30);
    if (note.plot && note.photos.length === 1) expect(plot).toBe(note.plot);
  });

  test.each(listed)('$file carries its time, and its position in or near the plot', async (photo) => {
    const found = await exifr.parse(readFileSync(new URL(photo.file, FOLDER)), {
      gps: true,
      reviveValues: false,
      translateValues: false,
    });
    expect(found.DateTimeOriginal).toBe(photo.takenAt.replaceAll('-', ':').replace('T', ' '));
    expect([undefined, '+08:00']).toContain(found.OffsetTimeOriginal);
    if (photo.position === null) {
      expect(found.latitude ?? 0).toBe(0);
      return;
    }
    expect(found.latitude).toBeCloseTo(photo.position.latitude, 6);
    expect(found.longitude).toBeCloseTo(photo.position.longitude, 6);
    expect(found.GPSHPositioningError).toBe(photo.position.errorM);
    expect(metresOutside(photo.position, photo.plot)).toBeLessThan(8);
  });

  test('some lack the offset, one its position, and one had its position blanked', async () => {
    const tags = await Promise.all(
      listed.map(({ file }) =>
        exifr.parse(readFileSync(new URL(file, FOLDER)), { gps: true, reviveValues: false }),
      ),
    );
    expect(tags.filter((found) => !found.OffsetTimeOriginal).length).toBeGreaterThanOrEqual(3);
    expect(tags.filter((found) => found.GPSLatitude === undefined)).toHaveLength(1);
    expect(tags.filter((found) => found.latitude === 0 && found.longitude === 0)).toHaveLength(1);
  });
});

describe('the cover that photos.json gives', () => {
  const down = listed.filter(({ straightDown }) => straightDown);

  test('stands beside photos taken straight down, and no others', () => {
    for (const { straightDown, coverPercentTrue } of listed)
      expect(coverPercentTrue !== null).toBe(straightDown);
    expect(down.length).toBeGreaterThan(15);
  });

  test.each(down)('$file: the drawn plants, counted again', async ({ file, plot, coverPercentTrue }) => {
    const { plants } = drawPhoto(SAMPLE_PHOTOS.find((photo) => photo.file === file)!, plotOf(plot));
    expect(Math.abs((await countCover(plants!)) - coverPercentTrue!)).toBeLessThanOrEqual(0.2);
  });

  test.each(down)('$file: the kept photo shows that much green', async ({ file, coverPercentTrue }) => {
    const { data, info } = await sharp(new URL(file, FOLDER).pathname)
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect(Math.abs(greenPercent(data, info.channels) - coverPercentTrue!)).toBeLessThan(6);
  });

  test('grows with the season in a fed plot', () => {
    const fed = down.filter(({ plot }) => plot === 'E1').map(({ coverPercentTrue }) => coverPercentTrue!);
    expect(fed.length).toBeGreaterThanOrEqual(5);
    expect(fed).toEqual([...fed].sort((a, b) => a - b));
  });
});

/** How far beyond the plot's own rectangle a position lies, in metres; 0 inside. */
function metresOutside(at: { latitude: number; longitude: number }, code: string): number {
  const { corner, size } = plotOf(code);
  const away = geodesic.Geodesic.WGS84.Inverse(corner.latitude, corner.longitude, at.latitude, at.longitude);
  const turned = ((away.azi1! - corner.bearingDeg) * Math.PI) / 180;
  const beyond = (metres: number, side: number) => Math.max(0, -metres, metres - side);
  return Math.hypot(
    beyond(away.s12! * Math.cos(turned), size.lengthM),
    beyond(away.s12! * Math.sin(turned), size.widthM),
  );
}

/** Share of pixels with 2g - r - b over r + g + b (Woebbecke et al. 1995) nearer to the leaves than to the soil. */
function greenPercent(pixels: Buffer, channels: number): number {
  let green = 0;
  for (let at = 0; at < pixels.length; at += channels) {
    const [r, g, b] = [pixels[at]!, pixels[at + 1]!, pixels[at + 2]!];
    if (2 * g - r - b > 0.15 * (r + g + b)) green++;
  }
  return (100 * green * channels) / pixels.length;
}
