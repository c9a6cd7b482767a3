/**
 * A phone's clock that was wrong on a walk: the shift stands beside each photo, what its file says is never changed. The order
 * of the walk is asked anew with the right times; what a person or a note said of a photo's plot stays.
 */
import type { PhotoRow } from '../storage/tables.ts';
import { makeChange, type PhotoState } from './changes.ts';
import type { Diary, Refusal } from './diary.ts';
import { readPlots } from './farm.ts';
import { grouped } from './grouped.ts';
import { settle } from './place-photos.ts';
import { type PhotoShown, showPhoto } from './shown.ts';
import { takenAt } from './taken-at.ts';

/** A week: a clock that is further off shows another day anyhow, which no walk explains. */
const MOST_MINUTES = 7 * 24 * 60;

export interface ClockDay {
  /** By the files' own time. */
  day: string;
  photos: number;
}

export interface ClockPhoto {
  photo: PhotoShown;
  /** Local wall times, `2031-07-14T06:55`. */
  at: string;
  atThen: string;
  plot: string | null;
  plotThen: string | null;
}

export interface ClockPreview {
  day: string;
  /** Added to what the files say; negative where the clock was fast. */
  shiftMin: number;
  photos: ClockPhoto[];
}

/** Days that have photos with a time, newest first. */
export async function clockDays({ db }: Diary): Promise<ClockDay[]> {
  const rows = await db
    .selectFrom('photos')
    .select('taken_wall')
    .where('taken_wall', 'is not', null)
    .execute();
  return [...grouped(rows, (row) => row.taken_wall!.slice(0, 10))]
    .map(([day, of]) => ({ day, photos: of.length }))
    .sort((a, b) => (a.day < b.day ? 1 : -1));
}

/** What would change; nothing is set. */
export async function previewClock(
  diary: Diary,
  day: string,
  shiftMin: number,
): Promise<ClockPreview | Refusal> {
  const rows = await photosOfDay(diary, day);
  const refused = faultOf(rows, shiftMin);
  if (refused) return refused;
  const shifted = await Promise.all(rows.map((row) => stateAfter(diary, row, shiftMin)));
  return {
    day,
    shiftMin,
    photos: rows.map((row, index) => ({
      photo: showPhoto(row, ''),
      at: takenAt(row)!.slice(0, 16),
      atThen: takenAt({ ...row, clock_shift_min: shiftMin })!.slice(0, 16),
      plot: row.plot,
      plotThen: shifted[index]!.plot,
    })),
  };
}

/** Sets the shift of these photos of the day; it replaces an earlier one. */
export async function shiftClock(
  diary: Diary,
  day: string,
  shiftMin: number,
  ids: string[],
  by: string,
): Promise<{ change: string; photos: number } | Refusal> {
  const rows = (await photosOfDay(diary, day)).filter(({ id }) => ids.includes(id));
  const refused = faultOf(rows, shiftMin);
  if (refused) return refused;
  const became = await Promise.all(rows.map((row) => stateAfter(diary, row, shiftMin)));
  const change = await makeChange(diary, {
    by,
    words: `The clock of ${rows.length === 1 ? 'one photo' : `${rows.length} photos`} of ${day} was put right.`,
    was: { photos: rows.map(stateOf) },
    became: { photos: became },
  });
  return { change, photos: rows.length };
}

function faultOf(rows: PhotoRow[], shiftMin: number): Refusal | null {
  if (!Number.isInteger(shiftMin) || Math.abs(shiftMin) > MOST_MINUTES)
    return {
      refused: 'Write by how many minutes the clock was wrong, a whole number, a week at the most.',
      field: 'minutes',
    };
  return rows.length === 0
    ? { refused: 'No photo of that day was chosen that has a time.', field: 'photo' }
    : null;
}

const photosOfDay = ({ db }: Diary, day: string): Promise<PhotoRow[]> =>
  db
    .selectFrom('photos')
    .selectAll()
    .where('taken_wall', '>=', day)
    .where('taken_wall', '<', `${day}~`)
    .orderBy('taken_wall')
    .execute();

const stateOf = ({ id, plot, placed_by, clock_shift_min }: PhotoRow): PhotoState => ({
  id,
  plot,
  placed_by,
  clock_shift_min,
});

/** The walk's word is asked anew; a person's and a note's word stay. */
async function stateAfter(diary: Diary, row: PhotoRow, shiftMin: number): Promise<PhotoState> {
  const state = { ...stateOf(row), clock_shift_min: shiftMin };
  if (row.placed_by !== null && row.placed_by !== 'order' && row.placed_by !== 'position') return state;
  const settled = await settle(diary, { ...row, clock_shift_min: shiftMin }, await readPlots(diary));
  return { ...state, plot: settled?.plot ?? null, placed_by: settled?.by ?? null };
}
