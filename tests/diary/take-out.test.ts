import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Papa from 'papaparse';
import sharp from 'sharp';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { strikeFact } from '../../src/diary/correct.ts';
import type { Diary } from '../../src/diary/diary.ts';
import { followUpLists } from '../../src/diary/follow-up-lists.ts';
import { developWaiting } from '../../src/diary/keep-photos.ts';
import { notePage } from '../../src/diary/note-page.ts';
import { openDiary } from '../../src/diary/open-diary.ts';
import { restore } from '../../src/diary/restore.ts';
import { takeIn } from '../../src/diary/take-in.ts';
import { takeOut, wholeDiary } from '../../src/diary/take-out.ts';
import { openTestDiary, SEASON } from './test-diary.ts';

let diary: Diary;
let end: () => Promise<void>;
let folder: string;
beforeEach(async () => {
  ({ diary, end } = await openTestDiary());
  folder = mkdtempSync(join(tmpdir(), 'bundwalk-folder-'));
});
afterEach(async () => {
  await end();
  rmSync(folder, { recursive: true, force: true });
});

async function walkFolder(): Promise<void> {
  writeFileSync(join(folder, 'season.yaml'), SEASON);
  writeFileSync(
    join(folder, 'a.txt'),
    'On: 2031-07-14 07:00\nBy: Odalys\nPlot: B1\nPhotos: gap.jpg, lost.jpg\n\n=1+1 weeds thick, hand weed by Friday\n',
  );
  writeFileSync(join(folder, 'b.txt'), 'On: 2031-07-14 07:20\nSpoken: yes\n\nb two pale as it should be\n');
  writeFileSync(join(folder, 'c.txt'), 'no header at all\n');
  writeFileSync(
    join(folder, 'gap.jpg'),
    await sharp({ create: { width: 60, height: 40, channels: 3, background: '#4a7' } })
      .jpeg()
      .toBuffer(),
  );
  writeFileSync(
    join(folder, 'loose.png'),
    await sharp({ create: { width: 60, height: 40, channels: 3, background: '#a47' } })
      .png()
      .toBuffer(),
  );
}

test('a folder is taken in, what cannot be is named, and again adds nothing', async () => {
  await walkFolder();
  const first = await takeIn(diary, folder);
  expect(first).toMatchObject({ notes: 2, photos: 2 });
  expect(first.problems.map(({ file, words }) => `${file}: ${words}`)).toEqual([
    expect.stringMatching(/^a.txt: the photo lost.jpg is not in the folder/),
    expect.stringMatching(/^c.txt: line 1: .*no header line/),
  ]);
  const second = await takeIn(diary, folder);
  expect(second).toMatchObject({ notes: 0, photos: 0 });
  expect(await diary.db.selectFrom('notes').selectAll().execute()).toHaveLength(2);
  await developWaiting(diary);
});

test('a changed file is not taken over the note that it once was', async () => {
  await walkFolder();
  await takeIn(diary, folder);
  writeFileSync(join(folder, 'b.txt'), 'On: 2031-07-14 07:20\nSpoken: yes\n\nb two is fine\n');
  const { problems } = await takeIn(diary, folder);
  expect(problems.find(({ file }) => file === 'b.txt')!.words).toMatch(/the earlier words stand/);
  await developWaiting(diary);
});

test('what is taken out restores to the same diary', async () => {
  await walkFolder();
  await takeIn(diary, folder);
  await developWaiting(diary);
  const [note] = await diary.db.selectFrom('notes').select('id').orderBy('observed_at').execute();
  const weeds = (await notePage(diary, note!.id))!.facts.find(({ kind }) => kind === 'weeds')!;
  await strikeFact(diary, note!.id, weeds.id, 'Teun');
  const out = join(folder, 'out');
  await takeOut(diary, out);

  const other = openDiary(join(folder, 'other'), diary.now);
  await restore(other, out);
  const { tables } = await wholeDiary(other);
  expect(withoutTimes(tables)).toEqual(withoutTimes((await wholeDiary(diary)).tables));
  expect((await notePage(other, note!.id))!.facts).toEqual((await notePage(diary, note!.id))!.facts);
  expect(await followUpLists(other)).toEqual(await followUpLists(diary));
  await developWaiting(other);
  await other.close();
});

/** When a photo was opened differs between the two; nothing else may. */
const withoutTimes = (tables: Awaited<ReturnType<typeof wholeDiary>>['tables']) => ({
  ...tables,
  photos: tables.photos.map((row) => ({ ...row, developed_at: null })),
});

test('tables open in a spreadsheet: as many columns in each row, and no formula runs', async () => {
  await walkFolder();
  await takeIn(diary, folder);
  await developWaiting(diary);
  await takeOut(diary, join(folder, 'out'));
  const notes = Papa.parse<string[]>(readFileSync(join(folder, 'out', 'notes.csv'), 'utf8'));
  expect(notes.errors).toEqual([]);
  expect(new Set(notes.data.map((row) => row.length)).size).toBe(1);
  const text = notes.data[1]![notes.data[0]!.indexOf('text')];
  expect(text).toMatch(/^'=1\+1/);
});

test('plots are polygons that run counterclockwise and close (RFC 7946)', async () => {
  await diary.db
    .updateTable('plots')
    .set({ boundary: '[[120,15],[120,15.001],[120.001,15.001],[120.001,15]]' })
    .where('code', '=', 'B1')
    .execute();
  await takeOut(diary, join(folder, 'out'));
  const { features } = JSON.parse(readFileSync(join(folder, 'out', 'plots.geojson'), 'utf8'));
  const ring: [number, number][] = features[0].geometry.coordinates[0];
  const twiceArea = ring.slice(1).reduce((sum, [x, y], at) => sum + ring[at]![0] * y - x * ring[at]![1], 0);
  expect(ring[0]).toEqual(ring.at(-1));
  expect(twiceArea).toBeGreaterThan(0);
});
