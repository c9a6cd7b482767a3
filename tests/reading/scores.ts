/** Compares records with annotated ones, by the measures of the annotation guide. */
import { readFileSync } from 'node:fs';
import { readNote } from '../../src/reading/read.ts';
import { LIST_NAMES, type ListName, type NoteRecord, type NoteToRead } from '../../src/reading/record.ts';

export interface Annotated {
  note: NoteToRead;
  record: Partial<NoteRecord>;
}
export interface Tally {
  hit: number;
  miss: number;
  extra: number;
}
export type Scores = Record<ListName, Tally>;

export const annotated = (path: string): Annotated[] =>
  readFileSync(path, 'utf8')
    .split('\n')
    .filter((line) => line.trim())
    .map((line) => JSON.parse(line) as Annotated);

type Loose = Record<string, unknown>;
const KEYS: Record<ListName, readonly string[]> = {
  stages: ['plot', 'stage', 'status'],
  ages: ['plot', 'days', 'since'],
  findings: ['plot', 'kind', 'status'],
  measurements: ['plot', 'quantity'],
  actions: ['plot', 'kind', 'status'],
  lessons: ['plot'],
  unvisited: ['plot'],
  comparisons: ['attribute', 'more', 'less'],
};
/** The lists that make up the record figure. */
export const MAIN_LISTS = ['stages', 'ages', 'findings', 'measurements', 'actions'] as const;

export const noScores = (): Scores =>
  Object.fromEntries(LIST_NAMES.map((list) => [list, { hit: 0, miss: 0, extra: 0 }])) as Scores;

export function scoreNotes(notes: readonly Annotated[]): Scores {
  const scores = noScores();
  for (const { note, record } of notes) {
    const read = readNote(note).record;
    for (const list of LIST_NAMES)
      count(scores[list], list, (record[list] ?? []) as unknown as Loose[], read[list] as unknown as Loose[]);
  }
  return scores;
}

function count(tally: Tally, list: ListName, gold: readonly Loose[], read: readonly Loose[]): void {
  const free = [...read];
  for (const entry of gold) {
    const at = free.findIndex((other) => fits(list, entry, other));
    if (at < 0) tally.miss++;
    else {
      tally.hit++;
      free.splice(at, 1);
    }
  }
  tally.extra += free.length;
}

function fits(list: ListName, gold: Loose, read: Loose): boolean {
  if (KEYS[list].some((key) => (gold[key] ?? null) !== (read[key] ?? null))) return false;
  if (list === 'measurements') return isNear(gold.value as number, read.value as number);
  return list !== 'lessons' || shareWords(gold.text as string, read.text as string);
}

const isNear = (gold: number, read: number): boolean =>
  Math.abs(gold - read) <= Math.max(0.01 * Math.abs(gold), 1e-9);

/** Half of the words of the shorter text stand in the other. */
export function shareWords(a: string, b: string): boolean {
  const [x, y] = [wordsIn(a), wordsIn(b)];
  const both = [...x].filter((word) => y.has(word)).length;
  return both > 0 && both / Math.min(x.size, y.size) >= 0.5;
}
const wordsIn = (text: string): Set<string> => new Set(text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []);

/** F1 in percent. */
export function f1({ hit, miss, extra }: Tally): number {
  return hit === 0 ? 0 : (100 * 2 * hit) / (2 * hit + miss + extra);
}

export const sumOf = (scores: Scores, lists: readonly ListName[]): Tally =>
  lists.reduce(
    (sum, list) => ({
      hit: sum.hit + scores[list].hit,
      miss: sum.miss + scores[list].miss,
      extra: sum.extra + scores[list].extra,
    }),
    { hit: 0, miss: 0, extra: 0 },
  );
