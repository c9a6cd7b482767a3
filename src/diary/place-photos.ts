/**
 * Which plot a photo shows: by its note's words first, then by the walk's order and time, and by position only where the plot
 * is wider than the error. What stays open waits in the tray with its likely plots.
 */

import { type LikelyPlot, likelyPlots, positionSettles, sayLikely } from '../plots/likely-plots.ts';
import { betweenTwoNotesOf, type Seen, walkPrior } from '../plots/walk-prior.ts';
import { findPhoto } from '../storage/photo-rows.ts';
import type { PhotoRow } from '../storage/tables.ts';
import { makeChange } from './changes.ts';
import type { Diary, Refusal } from './diary.ts';
import { type Plot, readPlots } from './farm.ts';
import { type PhotoShown, showPhoto } from './shown.ts';
import { takenAt } from './taken-at.ts';

export interface TrayPhoto {
  photo: PhotoShown;
  likely: LikelyPlot[];
  /** `B2 (about 70 %) or B3`. */
  says: string;
  /** Id of the note that it came with, or null. */
  noteId: string | null;
}

/** Photos that nobody and nothing has placed, newest first. */
export async function photoTray(diary: Diary, most = 100): Promise<TrayPhoto[]> {
  const plots = await readPlots(diary);
  const rows = await diary.db
    .selectFrom('photos')
    .selectAll()
    .where('plot', 'is', null)
    .where('placed_by', 'is', null)
    .orderBy('taken_wall', 'desc')
    .orderBy('id')
    .limit(most)
    .execute();
  return Promise.all(
    rows.map(async (row) => {
      const likely = await likelyOf(diary, row, plots);
      const note = await noteOf(diary, row.id);
      return {
        photo: showPhoto(row, note?.text ?? ''),
        likely: likely.slice(0, 4),
        says: saysOf(row, likely),
        noteId: note?.id ?? null,
      };
    }),
  );
}

export async function trayCount({ db }: Diary): Promise<number> {
  const { count } = await db
    .selectFrom('photos')
    .select((eb) => eb.fn.countAll<number>().as('count'))
    .where('plot', 'is', null)
    .where('placed_by', 'is', null)
    .executeTakeFirstOrThrow();
  return Number(count);
}

const noteOf = ({ db }: Diary, photoId: string) =>
  db
    .selectFrom('notes')
    .innerJoin('note_photos', 'note_photos.note_id', 'notes.id')
    .select(['notes.id', 'notes.text'])
    .where('note_photos.photo_id', '=', photoId)
    .orderBy('notes.observed_at')
    .executeTakeFirst();

function saysOf(row: PhotoRow, likely: LikelyPlot[]): string {
  if (row.developed_at === null) return 'It waits to be opened; its likely plots stand here then.';
  if (row.latitude === null) return 'Its file gives no position, so nothing points at a plot.';
  return sayLikely(likely);
}

/** The likely plots of one photo, best first. */
export async function likelyPlotsOf(diary: Diary, row: PhotoRow): Promise<LikelyPlot[]> {
  return (await likelyOf(diary, row, await readPlots(diary))).slice(0, 4);
}

/** A person's word: it stands against everything that is worked out. `null`: it shows no plot at all. */
export async function placePhoto(
  diary: Diary,
  id: string,
  code: string | null,
  by = '',
): Promise<{ plot: string | null; change: string } | Refusal> {
  const row = await findPhoto(diary.db, id);
  if (!row) return { refused: 'That photo is not known here.', status: 404 };
  const wanted = code?.trim().toLowerCase();
  const plot = (await readPlots(diary)).find((one) => one.code.toLowerCase() === wanted);
  if (code !== null && !plot) {
    return {
      refused: wanted
        ? `No plot is called ${code.slice(0, 40)}: choose one from the list.`
        : 'No plot was chosen: choose one from the list.',
      field: 'plot',
    };
  }
  const settled = plot?.code ?? null;
  const was = { id, plot: row.plot, placed_by: row.placed_by, clock_shift_min: row.clock_shift_min };
  const change = await makeChange(diary, {
    by,
    words: settled ? `The photo was placed in ${settled}.` : 'The photo was said to show no plot.',
    was: { photos: [was] },
    became: { photos: [{ ...was, plot: settled, placed_by: 'person' }] },
  });
  return { plot: settled, change };
}

/** After a photo's metadata is known: by the walk, else by position where that may settle it. */
export async function placeByWalkOrPosition(diary: Diary, id: string): Promise<void> {
  const row = await findPhoto(diary.db, id);
  if (!row || row.plot !== null || row.placed_by !== null) return;
  const settled = await settle(diary, row, await readPlots(diary));
  if (!settled) return;
  await diary.db
    .updateTable('photos')
    .set({ plot: settled.plot, placed_by: settled.by })
    .where('id', '=', id)
    .where('plot', 'is', null)
    .where('placed_by', 'is', null)
    .execute();
}

/** Where the walk or the position puts a photo, whatever stands now; null where neither settles it. */
export async function settle(
  diary: Diary,
  row: PhotoRow,
  plots: Plot[],
): Promise<{ plot: string; by: 'order' | 'position' } | null> {
  const at = takenAt(row);
  if (!at) return null;
  const between = betweenTwoNotesOf(at, await seenOn(diary, at.slice(0, 10)));
  if (between) return { plot: between, by: 'order' };
  const plot = positionSettles(await likelyOf(diary, row, plots), fixOf(row), (code) =>
    narrowestM(plots, code),
  );
  return plot ? { plot, by: 'position' } : null;
}

async function likelyOf(diary: Diary, row: PhotoRow, plots: Plot[]): Promise<LikelyPlot[]> {
  if (row.latitude === null || row.longitude === null) return [];
  const outlines = plots.flatMap(({ code, boundary }) => (boundary ? [{ code, boundary }] : []));
  const at = takenAt(row);
  const prior = at
    ? walkPrior(
        at,
        await seenOn(diary, at.slice(0, 10)),
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
