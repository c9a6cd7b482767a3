/** All photos of a plot by day, newest day first, and a pair of two days to hold against one another. */
import { cropAge } from '../plots/expected-stages.ts';
import type { Diary } from './diary.ts';
import { type Plot, readPlot } from './farm.ts';
import { grouped } from './grouped.ts';
import { type PhotoShown, showPhoto } from './shown.ts';

export interface PhotoDay {
  day: string;
  age: string | null;
  /** In the order in which they were taken. */
  photos: PhotoShown[];
}

export interface PlotPhotos {
  plot: Plot;
  days: PhotoDay[];
  /** The earlier and the later photo; null where there are no two days. */
  pair: { first: PairSide; second: PairSide } | null;
}

export interface PairSide {
  day: string;
  age: string | null;
  photo: PhotoShown;
}

/** Without days asked for, the first and the last day are held against one another. */
export async function plotPhotos(
  diary: Diary,
  code: string,
  asked: { first?: string | undefined; second?: string | undefined } = {},
): Promise<PlotPhotos | null> {
  const plot = await readPlot(diary, code);
  if (!plot) return null;
  const byDay = grouped(await photosOf(diary, code), ({ at }) => at.slice(0, 10));
  const days = [...byDay]
    .map(([day, of]) => ({
      day,
      age: plot.crop ? cropAge(plot.crop, day) : null,
      photos: of.map(({ photo }) => photo),
    }))
    .reverse();
  return { plot, days, pair: pairOf(days, asked) };
}

async function photosOf({ db }: Diary, code: string): Promise<{ at: string; photo: PhotoShown }[]> {
  const rows = await db.selectFrom('photos').selectAll().where('plot', '=', code).execute();
  const notes = await db
    .selectFrom('note_photos')
    .innerJoin('notes', 'notes.id', 'note_photos.note_id')
    .innerJoin('photos', 'photos.id', 'note_photos.photo_id')
    .select(['note_photos.photo_id', 'notes.text', 'notes.observed_at'])
    .where('photos.plot', '=', code)
    .orderBy('notes.observed_at', 'desc')
    .execute();
  const noteOf = new Map(notes.map((note) => [note.photo_id, note]));
  return rows
    .map((row) => {
      const note = noteOf.get(row.id);
      const photo = showPhoto(row, note?.text ?? '');
      return { at: photo.takenAt ?? note?.observed_at ?? row.received_at.slice(0, 16), photo };
    })
    .sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
}

/** Both from straight above where both days have one, so that like stands beside like. */
function pairOf(
  days: PhotoDay[],
  { first, second }: { first?: string | undefined; second?: string | undefined },
): PlotPhotos['pair'] {
  if (days.length < 2) return null;
  const find = (day: string | undefined) => days.find((one) => one.day === day);
  const chosen = [find(first) ?? days.at(-1)!, find(second) ?? days[0]!];
  const [one, two] = chosen.sort((a, b) => (a.day < b.day ? -1 : 1)) as [PhotoDay, PhotoDay];
  const bothDown = [one, two].every(({ photos }) => photos.some(({ straightDown }) => straightDown));
  const side = ({ day, age, photos }: PhotoDay): PairSide => ({
    day,
    age,
    photo:
      photos.find((photo) => !photo.fault && (!bothDown || photo.straightDown)) ??
      photos.find((photo) => !photo.fault) ??
      photos[0]!,
  });
  return { first: side(one), second: side(two) };
}
