/** The sample season, for an empty diary: so that every page has something true to show before anything is set up. */
import { fileURLToPath } from 'node:url';
import type { Diary } from './diary.ts';
import { readFarm } from './farm.ts';
import { type TakenIn, takeIn } from './take-in.ts';

const FOLDER = fileURLToPath(new URL('../../sample-notes', import.meta.url));

/** Loads it where no farm is set up and no note is kept; null where there was nothing to do. */
export async function loadSampleSeason(
  diary: Diary,
  progress?: (done: number, of: number) => void,
): Promise<TakenIn | null> {
  const begun =
    (await readFarm(diary)) ?? (await diary.db.selectFrom('notes').select('id').executeTakeFirst());
  return begun ? null : takeIn(diary, FOLDER, progress);
}
