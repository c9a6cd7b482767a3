/** A person's word on what was read: kept beside the reading, never over it, and always winning. */
import { randomUUID } from 'node:crypto';
import type { Fact } from '../reading/record.ts';
import { findNote } from '../storage/note-rows.ts';
import type { Db } from '../storage/open-store.ts';
import type { CorrectionRow, FactRow } from '../storage/tables.ts';
import type { Diary, Refusal } from './diary.ts';
import { factInput } from './fact-input.ts';
import { readPlots } from './farm.ts';
import { readFarmSeen } from './farm-seen.ts';
import { readAndFile } from './read-again.ts';
import { factOf } from './shown.ts';

export interface Corrected {
  correction: string;
}

/** `No, it's not.` */
export async function strikeFact(
  diary: Diary,
  noteId: string,
  factId: string,
  by: string,
): Promise<Corrected | Refusal> {
  const row = await standingFact(diary, noteId, factId);
  return row ? keep(diary, noteId, by, { verb: 'strike', target: asTarget(row), fact: null }) : gone;
}

export async function changeFact(
  diary: Diary,
  noteId: string,
  factId: string,
  written: unknown,
  by: string,
): Promise<Corrected | Refusal> {
  const row = await standingFact(diary, noteId, factId);
  if (!row) return gone;
  const fact = await checked(diary, written);
  return 'refused' in fact
    ? fact
    : keep(diary, noteId, by, { verb: 'change', target: asTarget(row), fact: JSON.stringify(fact) });
}

/** With `id`, made by the form, sending twice adds once. */
export async function addFact(
  diary: Diary,
  noteId: string,
  written: unknown,
  by: string,
  id?: string,
): Promise<Corrected | Refusal> {
  if (id && !/^[A-Za-z0-9][A-Za-z0-9_-]{5,63}$/.test(id))
    return { refused: 'Reload the page and try again: the fact came without its id.' };
  const fact = await checked(diary, written);
  return 'refused' in fact
    ? fact
    : keep(diary, noteId, by, { verb: 'add', target: null, fact: JSON.stringify(fact) }, id);
}

/** Takes a correction back; what was read stands again. */
export async function undoCorrection(diary: Diary, id: string): Promise<Corrected | Refusal> {
  const row = await diary.db.selectFrom('corrections').selectAll().where('id', '=', id).executeTakeFirst();
  if (!row) return { refused: 'That correction is not known here.', status: 404 };
  if (row.undone_at === null) {
    await changeAndReadAgain(diary, row.note_id, (db) =>
      db.updateTable('corrections').set({ undone_at: diary.now().toString() }).where('id', '=', id).execute(),
    );
  }
  return { correction: id };
}

const gone: Refusal = {
  refused: 'That fact stands no more on this note: reload the page to see how it is read now.',
  status: 409,
};

const standingFact = (diary: Diary, noteId: string, factId: string): Promise<FactRow | undefined> =>
  diary.db
    .selectFrom('facts')
    .selectAll()
    .where('id', '=', factId)
    .where('note_id', '=', noteId)
    .executeTakeFirst();

const asTarget = (row: FactRow): string =>
  JSON.stringify({ ...factOf(row), evidence: JSON.parse(row.evidence) });

async function checked(diary: Diary, written: unknown): Promise<Fact | Refusal> {
  const answer = factInput.safeParse(written);
  if (!answer.success) {
    const issue = answer.error.issues[0]!;
    return { refused: issue.message, field: issue.path.slice(1).join('.') };
  }
  const codes = new Set((await readPlots(diary)).map(({ code }) => code));
  const { list, fact } = answer.data;
  const named = list === 'comparisons' ? [fact.more, fact.less] : [fact.plot];
  const unknown = named.find((code) => code !== null && !codes.has(code));
  return unknown
    ? { refused: `No plot is called ${unknown}: choose one from the list.`, field: 'plot' }
    : answer.data;
}

async function keep(
  diary: Diary,
  noteId: string,
  by: string,
  correction: Pick<CorrectionRow, 'verb' | 'target' | 'fact'>,
  id: string = randomUUID(),
): Promise<Corrected | Refusal> {
  if (!(await findNote(diary.db, noteId))) return { refused: 'That note is not known here.', status: 404 };
  const twice = await diary.db
    .selectFrom('corrections')
    .select('note_id')
    .where('id', '=', id)
    .executeTakeFirst();
  if (twice && twice.note_id !== noteId)
    return { refused: 'Another note has a correction with this id: reload the page.', status: 409 };
  if (twice) return { correction: id };
  const row: CorrectionRow = {
    id,
    note_id: noteId,
    at: diary.now().toString(),
    by_whom: by,
    undone_at: null,
    ...correction,
  };
  await changeAndReadAgain(diary, noteId, (db) => db.insertInto('corrections').values(row).execute());
  return { correction: id };
}

/** The change and what follows from it reach the disk together or not at all. */
async function changeAndReadAgain(
  diary: Diary,
  noteId: string,
  change: (db: Db) => Promise<unknown>,
): Promise<void> {
  const note = await findNote(diary.db, noteId);
  if (!note) return;
  const farm = await readFarmSeen(diary);
  await diary.db.transaction().execute(async (db) => {
    await change(db);
    await readAndFile(db, note, farm, diary.now().toString());
  });
}
