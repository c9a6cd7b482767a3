/** SQL of notes, their readings, facts and corrections. */
import { sql } from 'kysely';
import type { Db } from './open-store.ts';
import type { CorrectionRow, FactRow, NoteRow } from './tables.ts';

/** False where a note of this id is there already; nothing is overwritten. */
export async function insertNote(db: Db, row: NoteRow): Promise<boolean> {
  const answer = await db
    .insertInto('notes')
    .values(row)
    .onConflict((clash) => clash.column('id').doNothing())
    .executeTakeFirst();
  return answer.numInsertedOrUpdatedRows === 1n;
}

export const findNote = (db: Db, id: string): Promise<NoteRow | undefined> =>
  db.selectFrom('notes').selectAll().where('id', '=', id).executeTakeFirst();

/** Puts this reading and its facts in the place of any earlier ones. */
export async function replaceReading(
  db: Db,
  noteId: string,
  reading: { reader: string; readAt: string; reading: string },
  facts: FactRow[],
): Promise<void> {
  const row = { note_id: noteId, reader: reading.reader, read_at: reading.readAt, reading: reading.reading };
  await db
    .insertInto('readings')
    .values(row)
    .onConflict((clash) => clash.column('note_id').doUpdateSet(row))
    .execute();
  await db.deleteFrom('facts').where('note_id', '=', noteId).execute();
  for (let at = 0; at < facts.length; at += 50)
    await db
      .insertInto('facts')
      .values(facts.slice(at, at + 50))
      .execute();
}

/** Traces are long, and only a note's own page shows them. */
export const factsOfNotes = (
  db: Db,
  noteIds: string[],
  traces: 'with traces' | 'without traces',
): Promise<FactRow[]> =>
  noteIds.length === 0
    ? Promise.resolve([])
    : db
        .selectFrom('facts')
        .select([
          'id',
          'note_id',
          'place',
          'list',
          'plot',
          'other_plot',
          'kind',
          'status',
          'observed_at',
          'origin',
        ])
        .select(['fact', 'words', 'evidence'])
        .select(traces === 'with traces' ? 'trace' : sql<null>`null`.as('trace'))
        .where('note_id', 'in', noteIds)
        .orderBy('note_id')
        .orderBy('place')
        .execute();

/** Corrections that stand, in the order they were made. */
export const standingCorrections = (db: Db, noteId: string): Promise<CorrectionRow[]> =>
  db
    .selectFrom('corrections')
    .selectAll()
    .where('note_id', '=', noteId)
    .where('undone_at', 'is', null)
    .orderBy('at')
    .orderBy('id')
    .execute();
