/** What stands around a place in a note, in the terms that rows are written in. */

import type { Token } from '../text.ts';
import { isNumberWord } from './number-words.ts';

/** How many words either way still bear on one: about a spoken clause (common practice, tried on tuned notes). */
export const REACH = 7;

/** `#` stands for any figure, `^` for the beginning and `$` for the end of a sentence or of a part between commas. */
export function standsBefore(
  tokens: readonly Token[],
  at: number,
  clues: ReadonlySet<string>,
): string | undefined {
  const token = tokens[at - 1];
  if (!token || token.kind === 'mark') {
    if (token && clues.has(token.lower)) return token.lower;
    return clues.has('^') && token?.lower !== '-' ? 'the beginning' : undefined;
  }
  return matching(token, clues);
}

export function standsAfter(
  tokens: readonly Token[],
  at: number,
  clues: ReadonlySet<string>,
): string | undefined {
  const token = tokens[at];
  if (!token || token.kind === 'mark') {
    if (token && clues.has(token.lower)) return token.lower;
    return clues.has('$') && token?.lower !== '-' ? 'the end' : undefined;
  }
  return matching(token, clues);
}

/** The nearest clue within reach of tokens `from` to `to`, on either side. */
export function standsNear(
  tokens: readonly Token[],
  from: number,
  to: number,
  clues: ReadonlySet<string>,
): string | undefined {
  for (let step = 1; step <= REACH; step++) {
    for (const token of [tokens[from - step], tokens[to - 1 + step]]) {
      const found = token && matching(token, clues);
      if (found) return found;
    }
  }
  return undefined;
}

function matching(token: Token, clues: ReadonlySet<string>): string | undefined {
  if (clues.has(token.lower)) return token.lower;
  return clues.has('#') && (token.kind === 'number' || isNumberWord(token.lower)) ? token.lower : undefined;
}
