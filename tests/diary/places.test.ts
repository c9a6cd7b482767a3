import { copyFileSync, mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { keepBoundaries, previewBoundaries } from '../../src/diary/boundaries.ts';
import { undoChange } from '../../src/diary/changes.ts';
import type { Diary } from '../../src/diary/diary.ts';
import { keepNote } from '../../src/diary/keep-note.ts';
import { developWaiting, keepLoosePhoto } from '../../src/diary/keep-photos.ts';
import { photoPage } from '../../src/diary/photo-page.ts';
import { photoTray, placePhoto, trayCount } from '../../src/diary/place-photos.ts';
import { loadSeasonFile } from '../../src/diary/season-file.ts';
import { previewClock, shiftClock } from '../../src/diary/shift-clock.ts';
import { openTestDiary } from './test-diary.ts';

const SAMPLE = fileURLToPath(new URL('../../sample-notes/', import.meta.url));
/** Taken at 06:43 by its file. */
const FILE = 'e1-down-0721.jpg';
const DAY = '2031-07-21';

let diary: Diary;
let end: () => Promise<void>;
let id: string;
beforeEach(async () => {
  ({ diary, end } = await openTestDiary());
  await loadSeasonFile(diary, readFileSync(join(SAMPLE, 'season.yaml'), 'utf8'));
  const incoming = join(diary.mediaFolder, 'incoming');
  mkdirSync(incoming, { recursive: true });
  const path = join(incoming, FILE);
  copyFileSync(join(SAMPLE, 'photos', FILE), path);
  id = (await keepLoosePhoto(diary, { path, name: FILE })).id!;
  await developWaiting(diary);
});
afterEach(() => end());

const stands = () =>
  diary.db
    .selectFrom('photos')
    .select(['plot', 'placed_by', 'clock_shift_min', 'taken_wall'])
    .executeTakeFirstOrThrow();
const notesIn = async (plot: string, ...minutes: string[]): Promise<void> => {
  for (const minute of minutes) {
    const observedAt = `${DAY}T${minute}`;
    await keepNote(diary, {
      id: `note-${plot}-${minute.replace(':', '')}`,
      plot,
      observedAt,
      text: 'Looked at.',
    });
  }
};

describe('a clock that was 60 minutes slow', () => {
  test('is shown first; set, the walk places the photo anew, and the file’s word stays', async () => {
    const before = await stands();
    await notesIn('E7', '07:40', '07:46');
    const preview = await previewClock(diary, DAY, 60);
    expect(preview).toMatchObject({
      photos: [{ at: `${DAY}T06:43`, atThen: `${DAY}T07:43`, plot: null, plotThen: 'E7' }],
    });
    expect(await stands()).toEqual(before);
    const set = await shiftClock(diary, DAY, 60, [id], 'Mirela');
    expect(await stands()).toEqual({
      plot: 'E7',
      placed_by: 'order',
      clock_shift_min: 60,
      taken_wall: before.taken_wall,
    });
    expect((await photoPage(diary, id))!.taken).toMatchObject({
      at: `${DAY}T07:43`,
      fileSays: `${DAY}T06:43`,
    });
    expect(await undoChange(diary, 'change' in set ? set.change : '')).toMatchObject({ left: 0 });
    expect(await stands()).toEqual(before);
  });

  test('leaves what a person said of the plot', async () => {
    await placePhoto(diary, id, 'E2');
    await notesIn('E7', '07:40', '07:46');
    expect(await previewClock(diary, DAY, 60)).toMatchObject({ photos: [{ plotThen: 'E2' }] });
  });

  test('undone after somebody placed the photo, leaves that placing', async () => {
    const set = await shiftClock(diary, DAY, 60, [id], '');
    await placePhoto(diary, id, 'E3');
    expect(await undoChange(diary, 'change' in set ? set.change : '')).toMatchObject({ left: 1 });
    expect(await stands()).toMatchObject({ plot: 'E3', clock_shift_min: 60 });
  });

  test.each([[Number.NaN], [1.5], [7 * 24 * 60 + 1]])('%f minutes are refused', async (minutes) => {
    expect(await previewClock(diary, DAY, minutes)).toMatchObject({ field: 'minutes' });
  });
});

describe('a photo that shows no plot', () => {
  test('leaves the tray, is not placed by the walk, and comes back by undo', async () => {
    const placed = await placePhoto(diary, id, null);
    expect([await trayCount(diary), await photoTray(diary)]).toEqual([0, []]);
    await undoChange(diary, 'change' in placed ? placed.change : '');
    expect(await trayCount(diary)).toBe(1);
  });
});

describe('outlines', () => {
  const box = (east: number): [number, number][] => [
    [120.73 + east, 15.52],
    [120.7301 + east, 15.52],
    [120.7301 + east, 15.5201],
    [120.73 + east, 15.5201],
  ];

  test('are matched by code and by spoken name, whatever case and spaces', async () => {
    const preview = await previewBoundaries(diary, [
      { name: 'plot e 2', boundary: box(0) },
      { name: 'The pump plot', boundary: box(0.001) },
      { name: 'Z9', boundary: box(0.002) },
    ]);
    expect(preview.rows.map(({ code }) => code)).toEqual(['E2', 'E1']);
    expect(preview.unmatched).toEqual(['Z9']);
    expect(preview.rows[0]!.areaM2).toBeCloseTo(118.7, 0);
  });

  test('of one plot that come twice are both left out', async () => {
    const found = [0, 0.001].map((east) => ({ name: 'E2', boundary: box(east) }));
    expect(await previewBoundaries(diary, found)).toMatchObject({ rows: [], twice: ['E2'] });
    expect(await keepBoundaries(diary, found, '')).toMatchObject({ refused: expect.any(String) });
  });
});
