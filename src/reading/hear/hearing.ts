/** What the passes of a hearing look at: the words, which of them are settled, and what stands around a place. */

import type { FarmWords, PlotNamed } from '../record.ts';
import type { Token } from '../text.ts';

export interface HearContext {
  channel: 'typed' | 'dictated';
  plots: PlotNamed[];
  farmWords: FarmWords;
}

export interface Hearing {
  tokens: Token[];
  context: HearContext;
  /** Every word of the note, for clues that count from anywhere. */
  words: ReadonlySet<string>;
}

/** Read tokens `from` to `to` (excluded) as `meant`, one entry a token. */
export interface Proposal {
  from: number;
  to: number;
  meant: string[];
  why: string;
}

export const hearingOf = (tokens: Token[], context: HearContext): Hearing => ({
  tokens,
  context,
  words: new Set(tokens.map((token) => token.lower)),
});

/** Straight, lower-case form of a token as written; differs from `lower` once the token has been read as another. */
export const asWritten = (token: Token): string => token.text.toLowerCase().replaceAll('’', "'");

export const isSettled = (token: Token): boolean => token.lower !== asWritten(token);

/** Whether tokens `from` to `to` are open to change: words of the note that nothing has touched yet. */
export function isOpen(tokens: readonly Token[], from: number, to: number): boolean {
  if (from < 0 || to > tokens.length) return false;
  for (let at = from; at < to; at++) {
    const token = tokens[at]!;
    if (isSettled(token) || (token.kind === 'mark' && token.lower !== '-')) return false;
  }
  return true;
}

/** Words of the note's plots, the farm's people and varieties: names, which no search by sound may touch. */
export function namesOf({ plots, farmWords }: HearContext): ReadonlySet<string> {
  const names = [...plots.flatMap((plot) => plot.names), ...farmWords.people, ...farmWords.varieties];
  return new Set(
    names.flatMap((name) => name.toLowerCase().split(/[^\p{L}]+/u)).filter((word) => word.length > 2),
  );
}
