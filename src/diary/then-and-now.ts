/** Photos of a plot before and after a piece of work, so that whoever looks can hold them side by side. */
import { daysBetween } from '../followups/days.ts';
import type { Diary } from './diary.ts';
import type { FollowUpShown } from './follow-up-lists.ts';
import { grouped } from './grouped.ts';
import { type PhotoShown, showPhoto } from './shown.ts';

export interface ThenAndNow {
  before: { day: string; photo: PhotoShown };
  after: { day: string; photo: PhotoShown };
}

/** A photo shows how it was when the item opened if it is at most so many days off. [common practice: one walk] */
const NEAR_DAYS = 4;

interface Dated {
  id: string;
  plot: string;
  day: string;
  noteId: string;
}

/** By item id: the photo nearest to the day on which it opened, and the last one after the work; where there are both. */
export async function thenAndNow(diary: Diary, items: FollowUpShown[]): Promise<Map<string, ThenAndNow>> {
  const asked = items.filter(({ plot, doneOn }) => plot && doneOn);
  const ofPlot = grouped(
    await datedPhotos(diary, [...new Set(asked.map(({ plot }) => plot!))]),
    (photo) => photo.plot,
  );
  const pairs = asked.flatMap((item) => {
    const pair = pairOf(item, ofPlot.get(item.plot!) ?? []);
    return pair ? [{ id: item.id, ...pair }] : [];
  });
  const photos = await photosShown(diary, [
    ...new Set(pairs.flatMap(({ before, after }) => [before.id, after.id])),
  ]);
  return new Map(
    pairs.flatMap(({ id, before, after }) => {
      const [one, other] = [photos.get(before.id), photos.get(after.id)];
      if (!one || !other) return [];
      return [
        [id, { before: { day: before.day, photo: one }, after: { day: after.day, photo: other } }] as const,
      ];
    }),
  );
}

function pairOf(
  { openedAt, doneOn, noteId }: FollowUpShown,
  photos: Dated[],
): { before: Dated; after: Dated } | null {
  const opened = openedAt.slice(0, 10);
  const off = (photo: Dated): number =>
    Math.abs(daysBetween(opened, photo.day)) - (photo.noteId === noteId ? 0.5 : 0);
  const before = photos
    .filter(({ day }) => day <= doneOn! && Math.abs(daysBetween(opened, day)) <= NEAR_DAYS)
    .sort((a, b) => off(a) - off(b))[0];
  const after = photos.filter(({ day }) => day >= doneOn!).at(-1);
  return before && after && after.day > before.day ? { before, after } : null;
}

/** Oldest first; the day that the file gives, else that of its note. Those without a picture are left out. */
async function datedPhotos({ db }: Diary, plots: string[]): Promise<Dated[]> {
  if (plots.length === 0) return [];
  const rows = await db
    .selectFrom('photos')
    .innerJoin('note_photos', 'note_photos.photo_id', 'photos.id')
    .innerJoin('notes', 'notes.id', 'note_photos.note_id')
    .select(['photos.id', 'photos.plot', 'photos.taken_wall', 'notes.observed_at', 'notes.id as note_id'])
    .where('photos.plot', 'in', plots)
    .where('photos.fault', 'is', null)
    .execute();
  return rows
    .map((row) => ({
      id: row.id,
      plot: row.plot!,
      at: row.taken_wall ?? row.observed_at,
      day: (row.taken_wall ?? row.observed_at).slice(0, 10),
      noteId: row.note_id,
    }))
    .sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
}

async function photosShown({ db }: Diary, ids: string[]): Promise<Map<string, PhotoShown>> {
  if (ids.length === 0) return new Map();
  const rows = await db
    .selectFrom('photos')
    .leftJoin('note_photos', 'note_photos.photo_id', 'photos.id')
    .leftJoin('notes', 'notes.id', 'note_photos.note_id')
    .selectAll('photos')
    .select('notes.text')
    .where('photos.id', 'in', ids)
    .execute();
  return new Map(rows.map((row) => [row.id, showPhoto(row, row.text ?? '')]));
}
