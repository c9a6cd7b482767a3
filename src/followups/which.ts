/** The question that is put where two items fit, or one fits badly. */
import type { ActionFact } from '../reading/record.ts';
import { dayOf, dayWords } from './days.ts';
import type { DiaryFact, Question } from './item.ts';
import type { Item } from './ledger.ts';
import type { Fit } from './match.ts';
import { workWords } from './words.ts';

const MOST_CANDIDATES = 5;

export function whichQuestion(fact: DiaryFact, fits: Fit[]): Question {
  const { kind } = fact.fact.fact as ActionFact;
  const on = dayWords(dayOf(fact.observedAt));
  const sentence =
    fits.length === 1
      ? `Is the ${workWords(kind)} of the note of ${on} this one? ${capital(fits[0]!.doubts.join('; '))}.`
      : `Which ${workWords(kind)} does the note of ${on} mean?`;
  return {
    factId: fact.id,
    noteId: fact.noteId,
    asks: 'which',
    sentence,
    words: fact.words,
    candidates: fits.slice(0, MOST_CANDIDATES).map(({ item, doubts, reasons }) => ({
      itemId: item.id,
      reason: [placeOf(item), ...reasons, ...doubts].filter(Boolean).join('; '),
    })),
  };
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

const placeOf = (item: Item): string =>
  [item.plot ?? 'plot not named', item.place].filter(Boolean).join(', ');

/** Asked on the item itself: a person's look answers it. */
export function lookQuestion(
  item: Item,
  fact: DiaryFact,
  asks: 'found' | 'gone',
  sentence: string,
): Question {
  return {
    factId: fact.id,
    noteId: fact.noteId,
    asks,
    sentence,
    words: fact.words,
    candidates: [{ itemId: item.id, reason: placeOf(item) }],
  };
}
