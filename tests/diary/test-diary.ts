import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Temporal } from 'temporal-polyfill';
import type { Diary } from '../../src/diary/diary.ts';
import { openDiary } from '../../src/diary/open-diary.ts';
import { loadSeasonFile } from '../../src/diary/season-file.ts';

/** Four plots of an invented trial; plot B2 is meant to be yellow. */
export const SEASON = `
farm: { name: Kestrel Bottom, timeZone: Asia/Manila, latitude: 15.5, longitude: 120.7 }
season: { name: Wet season 2031, from: 2031-06-01, to: 2031-11-30 }
people: [ { name: Odalys }, { name: Teun } ]
crews: [ { name: Water crew, leader: Teun, people: 3 } ]
fields: [ { code: B, name: Back field } ]
plots:
  - { code: B1, names: [the road plot], field: B, treatment: { nitrogen: 90N }, replicate: 1, walk: 1, size: { widthM: 5, lengthM: 20 }, crop: { variety: Lumen 3, daysToMaturity: 120, establishment: transplanted, sown: 2031-06-10, planted: 2031-07-02 } }
  - { code: B2, names: [the pale plot], field: B, treatment: { nitrogen: 0N }, replicate: 1, walk: 2, crop: { variety: Lumen 3, daysToMaturity: 120, sown: 2031-06-10, planted: 2031-07-02 }, protocol: ["zero nitrogen: meant to be yellow"] }
  - { code: B3, field: B, treatment: { nitrogen: 90N }, replicate: 2, walk: 3 }
  - { code: B4, field: B, treatment: { nitrogen: 0N }, replicate: 2, walk: 4 }
`;

/** A real diary in a folder of its own; its clock stands where the test puts it. */
export async function openTestDiary(
  at = '2031-07-14T00:00:00Z',
): Promise<{ diary: Diary; folder: string; setTime(at: string): void; end(): Promise<void> }> {
  const folder = mkdtempSync(join(tmpdir(), 'bundwalk-'));
  let now = Temporal.Instant.from(at);
  const diary = openDiary(folder, () => now);
  const loaded = await loadSeasonFile(diary, SEASON);
  if ('problems' in loaded) throw new Error(JSON.stringify(loaded.problems));
  return {
    diary,
    folder,
    setTime: (next) => {
      now = Temporal.Instant.from(next);
    },
    end: async () => {
      await diary.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
