/** Green cover from photos taken straight down, and its line over time for a plot. */

import { maskPath, originalPath } from '../storage/media.ts';
import { findPhoto } from '../storage/photo-rows.ts';
import type { Diary, Refusal } from './diary.ts';
import { takenAt } from './taken-at.ts';

export interface CoverReading {
  coverPercent: number;
  method: string;
  /** What makes it unsure: light, glare, blur. */
  warnings: string[];
}

export interface CoverPoint extends CoverReading {
  photoId: string;
  /** Local day. */
  day: string;
}

/** Says whether a photo was taken straight down; if so its cover is measured, with the mask kept beside it. */
export async function setStraightDown(
  diary: Diary,
  id: string,
  straightDown: boolean,
): Promise<CoverReading | null | Refusal> {
  if (!(await findPhoto(diary.db, id))) return { refused: 'That photo is not known here.', status: 404 };
  if (!straightDown) {
    await diary.db
      .updateTable('photos')
      .set({ straight_down: 0, cover_percent: null, cover: null })
      .where('id', '=', id)
      .execute();
    return null;
  }
  await diary.db.updateTable('photos').set({ straight_down: 1 }).where('id', '=', id).execute();
  return measureCover(diary, id);
}

export async function measureCover(diary: Diary, id: string): Promise<CoverReading | Refusal> {
  const answer = await diary.darkroom.cover(
    originalPath(diary.mediaFolder, id),
    maskPath(diary.mediaFolder, id),
  );
  if (diary.darkroom.isClosed()) return { refused: 'The server is stopping: measure the photo again later.' };
  await diary.db
    .updateTable('photos')
    .set({ cover_percent: 'fault' in answer ? null : answer.coverPercent, cover: JSON.stringify(answer) })
    .where('id', '=', id)
    .execute();
  return 'fault' in answer ? { refused: answer.fault } : answer;
}

/** Oldest first. */
export async function coverOverTime({ db }: Diary, plot: string): Promise<CoverPoint[]> {
  const rows = await db
    .selectFrom('photos')
    .select(['id', 'taken_wall', 'clock_shift_min', 'received_at', 'cover'])
    .where('plot', '=', plot)
    .where('straight_down', '=', 1)
    .where('cover_percent', 'is not', null)
    .execute();
  return rows
    .map((row) => ({
      photoId: row.id,
      day: (takenAt(row) ?? row.received_at).slice(0, 10),
      ...(JSON.parse(row.cover!) as CoverReading),
    }))
    .sort((a, b) => a.day.localeCompare(b.day));
}
