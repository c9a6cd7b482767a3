/** Terms of which all words but one stand as they should: the odd one is measured against the word missing. */

import type { Token } from '../text.ts';
import { standsNear } from './around.ts';
import { BINDING, cluesOf } from './clues.ts';
import { evidence } from './evidence.ts';
import { type Hearing, isOpen, namesOf, type Proposal } from './hearing.ts';
import { isNumberWord } from './number-words.ts';
import { isOrdinary } from './ordinary-words.ts';
import { nextWord } from './phrases.ts';
import { likeness } from './sound.ts';
import { isFieldWord, TRADE_SINGLES } from './sound-index.ts';
import { ONLY_IN_TERMS, TRADE_TERMS, wordsOf } from './trade-words.ts';

interface Term {
  words: string[];
  spare: ReadonlySet<string>;
}

const TERMS: readonly Term[] = TRADE_TERMS.map(({ term, spare }) => ({
  words: wordsOf(term),
  spare: new Set([
    ...wordsOf(spare ?? ''),
    ...TRADE_TERMS.flatMap((other) => siblings(wordsOf(term), wordsOf(other.term))),
  ]),
}));
const byFirst = groupBy(0);
const bySecond = groupBy(1);

const FIELD = cluesOf('@field');
const isTradeOnly = (word: string): boolean => TRADE_SINGLES.has(word) || ONLY_IN_TERMS.has(word);
/** Likeness asked of a strange word, and of an ordinary one beside a word that only the trade uses, or beside another. */
const ASKED = { strange: 0.68, besideTrade: 0.66, besideOther: 0.78 };

export function proposeByTerm({ tokens, context }: Hearing): Proposal[] {
  const names = namesOf(context);
  return tokens.flatMap((token, at) => {
    const second = nextWord(tokens, at);
    const terms = [
      ...(byFirst.get(token.lower) ?? []),
      ...(second === undefined ? [] : (bySecond.get(tokens[second]!.lower) ?? [])),
    ];
    let best: { proposal: Proposal; like: number } | undefined;
    for (const term of terms) {
      const found = oddWord(tokens, at, term, names);
      if (found && found.like > (best?.like ?? 0)) best = found;
    }
    return best ? [best.proposal] : [];
  });
}

function oddWord(
  tokens: readonly Token[],
  at: number,
  { words, spare }: Term,
  names: ReadonlySet<string>,
): { proposal: Proposal; like: number } | undefined {
  let odd: { at: number; meant: string } | undefined;
  let besideTrade = false;
  let place: number | undefined = at;
  let last = at;
  for (const meant of words) {
    if (place === undefined) return undefined;
    const { lower } = tokens[place]!;
    if (lower === meant) besideTrade ||= isTradeOnly(meant);
    else if (odd) return undefined;
    else odd = { at: place, meant };
    last = place;
    place = nextWord(tokens, place);
  }
  if (!odd || !isOpen(tokens, odd.at, odd.at + 1)) return undefined;
  const { lower, kind } = tokens[odd.at]!;
  if (kind !== 'word' || lower.length < 3 || !/^[a-z']+$/.test(lower) || isNumberWord(lower))
    return undefined;
  if (
    BINDING.has(lower) ||
    isFieldWord(lower) ||
    names.has(lower) ||
    spare.has(lower) ||
    spare.has(lower.replace(/s$/, ''))
  )
    return undefined;
  const near = standsNear(tokens, at, last + 1, FIELD);
  const ordinary = isOrdinary(lower);
  if (!near && (ordinary || !besideTrade)) return undefined;
  const like = likeness(lower, odd.meant);
  if (like < (!ordinary ? ASKED.strange : besideTrade ? ASKED.besideTrade : ASKED.besideOther))
    return undefined;
  const frame = words.join(' ');
  const why = `${evidence([tokens[odd.at]!], [odd.meant], { near })}, completes "${frame}"`;
  return { proposal: { from: odd.at, to: odd.at + 1, meant: [odd.meant], why }, like };
}

/** Words of another term in the place where two terms differ: `stem rot` is no slip for `stem borer`. */
function siblings(term: readonly string[], other: readonly string[]): string[] {
  if (term.length !== other.length) return [];
  const differing = other.filter((word, at) => word !== term[at]);
  return differing.length === 1 ? differing : [];
}

function groupBy(place: number): Map<string, Term[]> {
  const groups = new Map<string, Term[]>();
  for (const term of TERMS) {
    const word = term.words[place];
    if (word !== undefined) groups.set(word, [...(groups.get(word) ?? []), term]);
  }
  return groups;
}
