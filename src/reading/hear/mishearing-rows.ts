import type { Token } from '../text.ts';
import { narrowed } from './apply-proposals.ts';
import { standsAfter, standsBefore, standsNear } from './around.ts';
import { cluesOf } from './clues.ts';
import { evidence, textOf } from './evidence.ts';
import type { Hearing, Proposal } from './hearing.ts';
import { indexPhrases, type PhraseIndex, phrasesAt } from './phrases.ts';

/**
 * Words that are heard in place of others. A row applies where one of its clues stands (`all`: each of them) and
 * nothing refuses it; `sure` needs no clue but those it names. `a|b` on both sides pairs singular with plural, one
 * `meant` serves every `said`. Clues are those of clues.ts.
 */
export interface Mishearing {
  said: string;
  meant: string;
  /** One of these stands directly before / directly after / within seven words. */
  before?: string;
  after?: string;
  near?: string;
  /** One of these stands anywhere in the note. */
  anywhere?: string;
  all?: true;
  sure?: true;
  /** Any of these within seven words / directly before / directly after refuses it. */
  unless?: string;
  unlessBefore?: string;
  unlessAfter?: string;
}

type Clues = ReadonlySet<string>;
export interface Row {
  meant: string[];
  before?: Clues;
  after?: Clues;
  near?: Clues;
  anywhere?: Clues;
  all: boolean;
  sure: boolean;
  unless: Clues;
  unlessBefore: Clues;
  unlessAfter: Clues;
}

export const indexRows = (rows: readonly Mishearing[]): PhraseIndex<Row> =>
  indexPhrases(rows.flatMap(rowsOf));

/** At each place the longest row that its clues let through. */
export function proposeByRows(rows: PhraseIndex<Row>, hearing: Hearing): Proposal[] {
  const { tokens } = hearing;
  return tokens.flatMap((_, at) => {
    for (const { to, value } of phrasesAt(rows, tokens, at).sort((a, b) => b.to - a.to)) {
      const why = evidenceFor(hearing, at, to, value);
      if (why !== undefined) return [{ from: at, to, meant: value.meant, why }];
    }
    return [];
  });
}

/** One row a pair of `said` and `meant`; a single `meant` serves every `said`. */
function rowsOf(row: Mishearing): { words: string[]; value: Row }[] {
  const meant = row.meant.split('|');
  const value = {
    before: row.before === undefined ? undefined : cluesOf(row.before),
    after: row.after === undefined ? undefined : cluesOf(row.after),
    near: row.near === undefined ? undefined : cluesOf(row.near),
    anywhere: row.anywhere === undefined ? undefined : cluesOf(row.anywhere),
    all: row.all ?? false,
    sure: row.sure ?? false,
    unless: cluesOf(row.unless),
    unlessBefore: cluesOf(row.unlessBefore),
    unlessAfter: cluesOf(row.unlessAfter),
  };
  return row.said.split('|').map((said, at) => ({
    words: said.split(' '),
    value: { ...value, meant: (meant[at] ?? meant[0]!).split(' ') },
  }));
}

function evidenceFor(hearing: Hearing, from: number, to: number, row: Row): string | undefined {
  const { tokens } = hearing;
  if (isRefused(tokens, from, to, row)) return undefined;
  const before = row.before && standsBefore(tokens, from, row.before);
  const after = row.after && standsAfter(tokens, to, row.after);
  const near = row.near && standsNear(tokens, from, to, row.near);
  const anywhere = row.anywhere && [...row.anywhere].find((word) => hearing.words.has(word));
  const asked = [row.before, row.after, row.near, row.anywhere].filter((clues) => clues !== undefined).length;
  const found = [before, after, near, anywhere].filter((clue) => clue !== undefined).length;
  if (row.all || row.sure ? found < asked : found === 0) return undefined;
  const odd = narrowed(tokens, { from, to, meant: row.meant, why: '' });
  const frame = odd.to - odd.from < to - from ? textOf(tokens.slice(from, to)) : undefined;
  return evidence(tokens.slice(odd.from, odd.to), odd.meant, { frame, before, after, near, anywhere });
}

const isRefused = (tokens: readonly Token[], from: number, to: number, row: Row): boolean =>
  standsNear(tokens, from, to, row.unless) !== undefined ||
  standsBefore(tokens, from, row.unlessBefore) !== undefined ||
  standsAfter(tokens, to, row.unlessAfter) !== undefined;
