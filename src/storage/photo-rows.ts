/** SQL of photos and of their notes. */
import type { Db } from './open-store.ts';
import type { PhotoRow } from './tables.ts';

/** The same content twice is one photo: what is known of it already stays. */
export const insertPhoto = (db: Db, row: PhotoRow) =>
  db
    .insertInto('photos')
    .values(row)
    .onConflict((clash) => clash.column('id').doNothing())
    .execute();

export const linkPhoto = (db: Db, noteId: string, photoId: string, place: number) =>
  db
    .insertInto('note_photos')
    .values({ note_id: noteId, photo_id: photoId, place })
    .onConflict((clash) => clash.columns(['note_id', 'photo_id']).doNothing())
    .execute();

export const findPhoto = (db: Db, id: string): Promise<PhotoRow | undefined> =>
  db.selectFrom('photos').selectAll().where('id', '=', id).executeTakeFirst();

/** Photos of these notes, in the order in which they came. */
export async function photosOfNotes(db: Db, noteIds: string[]): Promise<(PhotoRow & { note_id: string })[]> {
  if (noteIds.length === 0) return [];
  return db
    .selectFrom('note_photos')
    .innerJoin('photos', 'photos.id', 'note_photos.photo_id')
    .selectAll('photos')
    .select('note_photos.note_id')
    .where('note_photos.note_id', 'in', noteIds)
    .orderBy('note_photos.note_id')
    .orderBy('note_photos.place')
    .execute();
}
