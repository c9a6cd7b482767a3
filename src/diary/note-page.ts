/** One note whole: its words, what was read from them and why, what people corrected, its photos. */

import { cropAge } from '../plots/expected-stages.ts';
import type { Heard, Reading } from '../reading/record.ts';
import { sayFact } from '../reading/say-fact.ts';
import { factsOfNotes, findNote } from '../storage/note-rows.ts';
import { photosOfNotes } from '../storage/photo-rows.ts';
import type { CorrectionRow } from '../storage/tables.ts';
import { correctedFacts } from './corrected-facts.ts';
import type { Diary } from './diary.ts';
import { readPlot } from './farm.ts';
import { toCorrection } from './read-again.ts';
import { byList, type FactShown, type PhotoShown, showFact, showPhoto } from './shown.ts';

export interface CorrectionShown {
  id: string;
  at: string;
  by: string;
  verb: 'strike' | 'change' | 'add';
  was: string | null;
  now: string | null;
  undone: boolean;
}

export interface NotePage {
  note: {
    id: string;
    observedAt: string;
    receivedAt: string;
    author: string;
    plot: string | null;
    channel: 'typed' | 'dictated';
    text: string;
  };
  heard: Heard[];
  facts: FactShown[];
  /** What was read and then taken away by a person. */
  struck: { sentence: string; words: string; correction: string }[];
  photos: PhotoShown[];
  corrections: CorrectionShown[];
  /** Of the note's plot, on the note's day: `33 DAT`. */
  age: string | null;
}

export async function notePage(diary: Diary, id: string): Promise<NotePage | null> {
  const { db } = diary;
  const row = await findNote(db, id);
  if (!row) return null;
  const [facts, photos, read, corrections, plot] = await Promise.all([
    factsOfNotes(db, [id], 'with traces'),
    photosOfNotes(db, [id]),
    db.selectFrom('readings').select('reading').where('note_id', '=', id).executeTakeFirst(),
    db.selectFrom('corrections').selectAll().where('note_id', '=', id).orderBy('at').orderBy('id').execute(),
    row.plot ? readPlot(diary, row.plot) : null,
  ]);
  const reading: Reading | null = read ? JSON.parse(read.reading) : null;
  const standing = corrections.filter((correction) => correction.undone_at === null).map(toCorrection);
  const { struck } = correctedFacts(id, reading?.entries ?? [], standing);
  return {
    note: {
      id: row.id,
      observedAt: row.observed_at,
      receivedAt: row.received_at,
      author: row.author,
      plot: row.plot,
      channel: row.channel,
      text: row.text,
    },
    heard: reading?.heard ?? [],
    facts: facts.map(showFact).sort(byList),
    struck: struck
      .filter(({ fact }) => fact.origin === 'reading')
      .map(({ fact, correction }) => ({
        sentence: sayFact(fact.entry),
        words: fact.entry.evidence.map((span) => row.text.slice(span.start, span.end)).join(' … '),
        correction,
      })),
    photos: photos.map((photo) => showPhoto(photo, row.text)),
    corrections: corrections.map(showCorrection),
    age: plot?.crop ? cropAge(plot.crop, row.observed_at.slice(0, 10)) : null,
  };
}

const showCorrection = (row: CorrectionRow): CorrectionShown => ({
  id: row.id,
  at: row.at,
  by: row.by_whom,
  verb: row.verb,
  was: row.target ? sayFact(JSON.parse(row.target)) : null,
  now: row.fact ? sayFact(JSON.parse(row.fact)) : null,
  undone: row.undone_at !== null,
});
