/**
 * Which plot a photo shows: by its note's words first, then by the walk's order and time, and by position only where the plot
 * is wider than the error. What stays open waits in the tray with its likely plots.
 */

import { type LikelyPlot, likelyPlots, positionSettles, sayLikely } from '../plots/likely-plots.ts';
import { betweenTwoNotesOf, type Seen, walkPrior } from '../plots/walk-prior.ts';
import { findPhoto } from '../storage/photo-rows.ts';
import type { PhotoRow } from '../storage/tables.ts';
import type { Diary, Refusal } from './diary.ts';
import { type Plot, readPlots } from './farm.ts';
import { type PhotoShown, showPhoto } from './shown.ts';

export interface TrayPhoto {
  photo: PhotoShown;
  likely: LikelyPlot[];
  /** `B2 (about 70 %) or B3`. */
  says: string;
  /** Id of the note that it came with, or null. */
  noteId: string | null;
}

/** Photos that nobody and nothing has placed, newest first. */
export async function photoTray(diary: Diary): Promise<TrayPhoto[]> {
  const plots = await readPlots(diary);
  const rows = await diary.db
    .selectFrom('photos')
    .leftJoin('note_photos', 'note_photos.photo_id', 'photos.id')
    .leftJoin('notes', 'notes.id', 'note_photos.note_id')
    .selectAll('photos')
    .select(['note_photos.note_id', 'notes.text'])
    .where('photos.plot', 'is', null)
    .orderBy('photos.taken_wall', 'desc')
    .limit(100)
    .execute();
  return Promise.all(
    rows.map(async (row) => {
      const likely = await likelyOf(diary, row, plots);
      return {
        photo: showPhoto(row, row.text ?? ''),
        likely: likely.slice(0, 4),
        says: sayLikely(likely),
        noteId: row.note_id,
      };
    }),
  );
}

/** A person's word: it stands against everything that is worked out. */
export async function placePhoto(
  diary: Diary,
  id: string,
  code: string,
): Promise<{ plot: string } | Refusal> {
  if (!(await findPhoto(diary.db, id))) return { refused: 'That photo is not known here.', status: 404 };
  const plot = (await readPlots(diary)).find((one) => one.code.toLowerCase() === code.trim().toLowerCase());
  if (!plot)
    return { refused: `No plot is called ${code.slice(0, 40)}: choose one from the list.`, field: 'plot' };
  await diary.db
    .updateTable('photos')
    .set({ plot: plot.code, placed_by: 'person' })
    .where('id', '=', id)
    .execute();
  return { plot: plot.code };
}

/** After a photo's metadata is known: by the walk, else by position where that may settle it. */
export async function placeByWalkOrPosition(diary: Diary, id: string): Promise<void> {
  const row = await findPhoto(diary.db, id);
  if (!row || row.plot !== null || !row.taken_wall) return;
  const plots = await readPlots(diary);
  const between = betweenTwoNotesOf(row.taken_wall, await seenOn(diary, row.taken_wall.slice(0, 10)));
  const settled =
    between ??
    positionSettles(await likelyOf(diary, row, plots), fixOf(row), (code) => narrowestM(plots, code));
  if (!settled) return;
  await diary.db
    .updateTable('photos')
    .set({ plot: settled, placed_by: between ? 'order' : 'position' })
    .where('id', '=', id)
    .where('plot', 'is', null)
    .execute();
}

async function likelyOf(diary: Diary, row: PhotoRow, plots: Plot[]): Promise<LikelyPlot[]> {
  if (row.latitude === null || row.longitude === null) return [];
  const outlines = plots.flatMap(({ code, boundary }) => (boundary ? [{ code, boundary }] : []));
  const prior = row.taken_wall
    ? walkPrior(
        row.taken_wall,
        await seenOn(diary, row.taken_wall.slice(0, 10)),
        plots.map(({ code }) => code),
      )
    : undefined;
  return likelyPlots(fixOf(row), outlines, prior);
}

const fixOf = (row: PhotoRow) => ({
  latitude: row.latitude ?? 0,
  longitude: row.longitude ?? 0,
  accuracyM: row.accuracy_m,
});

/** Notes of a day that speak of one plot: where the walker stood, and when. */
async function seenOn({ db }: Diary, day: string): Promise<Seen[]> {
  const rows = await db
    .selectFrom('notes')
    .select(['observed_at', 'plot'])
    .where('plot', 'is not', null)
    .where('observed_at', '>=', day)
    .where('observed_at', '<', `${day}~`)
    .execute();
  return rows.map((row) => ({ at: row.observed_at, plot: row.plot! }));
}

function narrowestM(plots: Plot[], code: string): number | null {
  const plot = plots.find((one) => one.code === code);
  return plot?.widthM && plot.lengthM ? Math.min(plot.widthM, plot.lengthM) : null;
}
