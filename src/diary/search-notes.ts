/** Notes, newest first; with words, those that hold all of them. The one place that searches. */
import { sql } from 'kysely';
import type { Diary } from './diary.ts';

export interface NoteFound {
  id: string;
  observedAt: string;
  author: string;
  plot: string | null;
  text: string;
  photos: number;
}
const NOTES_A_PAGE = 50;

export async function searchNotes(
  { db }: Diary,
  words = '',
  { before, plot }: { before?: string | undefined; plot?: string | undefined } = {},
): Promise<{ notes: NoteFound[]; older: string | null }> {
  let query = db
    .selectFrom('notes')
    .select(['id', 'observed_at', 'author', 'plot', 'text'])
    .select((eb) =>
      eb
        .selectFrom('note_photos')
        .select((inner) => inner.fn.countAll<number>().as('count'))
        .whereRef('note_photos.note_id', '=', 'notes.id')
        .as('photos'),
    );
  for (const word of words.split(/\s+/).filter(Boolean).slice(0, 12)) {
    query = query.where(sql<boolean>`lower(text) like ${`%${escapeLike(word.toLowerCase())}%`} escape '\\'`);
  }
  if (plot) query = query.where('plot', '=', plot);
  const cursor = before?.match(/^(\d{4}-\d{2}-\d{2}T\d{2}:\d{2})\/(.+)$/);
  if (cursor) query = query.where(sql<boolean>`(observed_at, id) < (${cursor[1]}, ${cursor[2]})`);
  const rows = await query
    .orderBy('observed_at', 'desc')
    .orderBy('id', 'desc')
    .limit(NOTES_A_PAGE + 1)
    .execute();
  const page = rows.slice(0, NOTES_A_PAGE);
  const last = page.at(-1);
  return {
    notes: page.map(({ observed_at, photos, ...note }) => ({
      ...note,
      observedAt: observed_at,
      photos: Number(photos ?? 0),
    })),
    older: rows.length > NOTES_A_PAGE && last ? `${last.observed_at}/${last.id}` : null,
  };
}

const escapeLike = (word: string): string => word.replace(/[\\%_]/g, (mark) => `\\${mark}`);
