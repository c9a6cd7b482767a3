import { copyFileSync, existsSync, mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { coverOverTime, setStraightDown } from '../../src/diary/canopy.ts';
import type { Diary } from '../../src/diary/diary.ts';
import { keepNote } from '../../src/diary/keep-note.ts';
import { developWaiting, keepLoosePhoto } from '../../src/diary/keep-photos.ts';
import { photoTray, placePhoto } from '../../src/diary/place-photos.ts';
import { loadSeasonFile } from '../../src/diary/season-file.ts';
import { maskPath } from '../../src/storage/media.ts';
import { openTestDiary } from './test-diary.ts';

/** Photos of the sample season: drawn, with true cover known, positions a few metres off as a phone's are. */
const SAMPLE = fileURLToPath(new URL('../../sample-notes/', import.meta.url));
interface SamplePhoto {
  file: string;
  plot: string;
  takenAt: string;
  coverPercentTrue: number | null;
  position: { latitude: number } | null;
}
const sample = JSON.parse(readFileSync(join(SAMPLE, 'photos.json'), 'utf8')) as SamplePhoto[];

let diary: Diary;
let end: () => Promise<void>;
beforeEach(async () => {
  ({ diary, end } = await openTestDiary());
  await loadSeasonFile(diary, readFileSync(join(SAMPLE, 'season.yaml'), 'utf8'));
});
afterEach(() => end());

const onTrialPlot = sample.find(({ plot, position }) => /^E\d/.test(plot) && position)!;

async function takeIn(file: string): Promise<string> {
  mkdirSync(join(diary.mediaFolder, 'incoming'), { recursive: true });
  const path = join(diary.mediaFolder, 'incoming', file);
  copyFileSync(join(SAMPLE, 'photos', file), path);
  const { id } = await keepLoosePhoto(diary, { path, name: file });
  await developWaiting(diary);
  return id!;
}

describe('a photo without words', () => {
  test('waits in the tray with its likely plots: strips are narrower than the error', async () => {
    const id = await takeIn(onTrialPlot.file);
    const [waiting] = await photoTray(diary);
    expect(waiting).toMatchObject({ photo: { id, plot: null }, says: expect.stringMatching(/about \d+ %/) });
    expect(waiting!.likely.map(({ code }) => code)).toContain(onTrialPlot.plot);
  });

  test('taken between two notes of one plot is that plot’s', async () => {
    const minute = onTrialPlot.takenAt.slice(0, 16);
    for (const n of [1, 2])
      await keepNote(diary, { id: `note-000${n}`, plot: 'E7', observedAt: minute, text: `look ${n}` });
    await takeIn(onTrialPlot.file);
    expect(await photoTray(diary)).toEqual([]);
    expect(await diary.db.selectFrom('photos').select(['plot', 'placed_by']).execute()).toEqual([
      { plot: 'E7', placed_by: 'order' },
    ]);
  });

  test('is placed by a person with one word, and that word stays', async () => {
    const id = await takeIn(onTrialPlot.file);
    expect(await placePhoto(diary, id, 'e3')).toMatchObject({ plot: 'E3' });
    expect(await photoTray(diary)).toEqual([]);
    expect(await placePhoto(diary, id, 'Z9')).toMatchObject({
      field: 'plot',
      refused: expect.stringMatching(/No plot is called Z9/),
    });
  });
});

describe('green cover', () => {
  const down = sample.filter(({ coverPercentTrue }) => coverPercentTrue !== null).slice(0, 3);

  test('of a drawn picture comes near the cover that was drawn', async () => {
    for (const { file, coverPercentTrue, plot } of down) {
      const id = await takeIn(file);
      const reading = await setStraightDown(diary, id, true);
      expect(
        reading && 'coverPercent' in reading && Math.abs(reading.coverPercent - coverPercentTrue!),
      ).toBeLessThan(3);
      expect(existsSync(maskPath(diary.mediaFolder, id))).toBe(true);
      await placePhoto(diary, id, plot);
    }
    const points = await coverOverTime(diary, down[0]!.plot);
    expect(points.map(({ day }) => day)).toEqual([...points.map(({ day }) => day)].sort());
    expect(points.length).toBeGreaterThan(0);
  });

  test('goes when the photo was not taken straight down after all', async () => {
    const id = await takeIn(down[0]!.file);
    await setStraightDown(diary, id, true);
    expect(await setStraightDown(diary, id, false)).toBeNull();
    expect(await coverOverTime(diary, down[0]!.plot)).toEqual([]);
  });
});
