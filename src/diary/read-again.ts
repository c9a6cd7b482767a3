/** Reads a note (for the first time or again) and files what stands: the text is the source, corrections win. */
import { readNote } from '../reading/read.ts';
import type { Fact, Reading } from '../reading/record.ts';
import { READER_VERSION } from '../reading/version.ts';
import { findNote, replaceReading, standingCorrections } from '../storage/note-rows.ts';
import type { Db } from '../storage/open-store.ts';
import type { CorrectionRow, FactRow, NoteRow } from '../storage/tables.ts';
import {
  type Correction,
  correctedFacts,
  kindOf,
  plotOf,
  type StandingFact,
  statusOf,
} from './corrected-facts.ts';
import type { Diary } from './diary.ts';
import { type FarmSeen, readFarmSeen } from './farm-seen.ts';
import { markStale } from './file-follow-ups.ts';

/** Reads one note and stores its facts; the follow-ups are stale from then on. */
export async function readAndFile(db: Db, note: NoteRow, farm: FarmSeen, at: string): Promise<void> {
  const reading: Reading = readNote(
    {
      id: note.id,
      observedAt: note.observed_at,
      plots: farm.plots,
      plot: note.plot,
      channel: note.channel,
      text: note.text,
    },
    farm.words,
  );
  const corrections = (await standingCorrections(db, note.id)).map(toCorrection);
  const { standing } = correctedFacts(note.id, reading.entries, corrections);
  const rows = standing.map((fact, place) => toRow(note, fact, place));
  await replaceReading(
    db,
    note.id,
    { reader: READER_VERSION, readAt: at, reading: JSON.stringify(reading) },
    rows,
  );
  await markStale(db);
}

/** Reads every note that an older reader read (or all), a hundred a transaction; tells how far it is. */
export async function readAllAgain(
  diary: Diary,
  { all = false, progress = () => {} }: { all?: boolean; progress?: (done: number, of: number) => void } = {},
): Promise<number> {
  const ids = await notesToRead(diary.db, all);
  const farm = await readFarmSeen(diary);
  for (let from = 0; from < ids.length; from += 100) {
    await diary.db.transaction().execute(async (db) => {
      for (const id of ids.slice(from, from + 100)) {
        const note = await findNote(db, id);
        if (note) await readAndFile(db, note, farm, diary.now().toString());
      }
    });
    progress(Math.min(from + 100, ids.length), ids.length);
  }
  return ids.length;
}

async function notesToRead(db: Db, all: boolean): Promise<string[]> {
  const rows = await db
    .selectFrom('notes')
    .leftJoin('readings', 'readings.note_id', 'notes.id')
    .select(['notes.id', 'readings.reader'])
    .orderBy('notes.observed_at')
    .execute();
  return rows.filter((row) => all || row.reader !== READER_VERSION).map((row) => row.id);
}

export const toCorrection = (row: CorrectionRow): Correction => ({
  id: row.id,
  verb: row.verb,
  target: row.target ? JSON.parse(row.target) : null,
  fact: row.fact ? JSON.parse(row.fact) : null,
});

function toRow(note: NoteRow, { id, origin, entry }: StandingFact, place: number): FactRow {
  const { evidence, trace, ...rest } = entry;
  const fact = rest as Fact;
  return {
    id,
    note_id: note.id,
    place,
    list: fact.list,
    plot: plotOf(fact),
    other_plot: fact.list === 'comparisons' ? fact.fact.less : null,
    kind: kindOf(fact),
    status: statusOf(fact),
    observed_at: note.observed_at,
    origin,
    fact: JSON.stringify(fact.fact),
    words: evidence.map((span) => note.text.slice(span.start, span.end)).join(' … '),
    evidence: JSON.stringify(evidence),
    trace: JSON.stringify(trace),
  };
}
