/** Letters spoken one by one: `b p h`, `BP H`, `dee ay tee`. */

import type { Token } from '../text.ts';
import { type Hearing, isOpen, type Proposal } from './hearing.ts';
import { isNumberWord } from './number-words.ts';

/** Names of letters as they are written down by ear. */
const LETTER_NAMES: Record<string, string> = {
  ay: 'a',
  eh: 'a',
  be: 'b',
  bee: 'b',
  see: 'c',
  sea: 'c',
  cee: 'c',
  dee: 'd',
  gee: 'g',
  jee: 'g',
  aitch: 'h',
  haitch: 'h',
  kay: 'k',
  el: 'l',
  ell: 'l',
  en: 'n',
  pee: 'p',
  pea: 'p',
  are: 'r',
  ar: 'r',
  ess: 's',
  tea: 't',
  tee: 't',
  you: 'u',
  vee: 'v',
  we: 'v',
};

/** Initials in use on rice farms; the counts of days only straight after a figure. */
const INITIALS = ['bph', 'wbph', 'glh', 'lcc', 'blb', 'spad', 'awd', 'gas', 'rtv', 'pi'];
const AFTER_FIGURE = ['dat', 'das', 'dap'];
const LONGEST = 4;

export const letterOf = (word: string): string | undefined =>
  /^[a-z]$/.test(word) ? word : LETTER_NAMES[word];

export function proposeLetters({ tokens }: Hearing): Proposal[] {
  return tokens.flatMap((_, at) => {
    const found = initialsAt(tokens, at);
    return found ? [found] : [];
  });
}

function initialsAt(tokens: readonly Token[], at: number): Proposal | undefined {
  const wanted = isFigure(tokens[at - 1]) ? [...INITIALS, ...AFTER_FIGURE] : INITIALS;
  let letters = '';
  for (let to = at; to < Math.min(tokens.length, at + LONGEST + 1); to++) {
    const spoken = lettersIn(tokens[to]!);
    if (spoken === undefined) return undefined;
    letters += spoken;
    if (to > at && wanted.includes(letters) && isOpen(tokens, at, to + 1))
      return {
        from: at,
        to: to + 1,
        meant: [letters],
        why: `letters spoken one by one: ${letters.toUpperCase()}`,
      };
  }
  return undefined;
}

/** `b`, `bee`, or a part of the initials already run together (`BP` of `BP H`). */
function lettersIn({ lower, kind }: Token): string | undefined {
  if (kind !== 'word') return undefined;
  const named = letterOf(lower);
  if (named !== undefined) return named;
  return lower.length <= 3 && /^[b-df-hj-np-tv-xz]+$/.test(lower) ? lower : undefined;
}

const isFigure = (token: Token | undefined): boolean =>
  token !== undefined && (token.kind === 'number' || isNumberWord(token.lower));
