/** The open search: words that are no ordinary English and sound like a trade word, alone or run together. */

import type { Token } from '../text.ts';
import { standsNear } from './around.ts';
import { BINDING, cluesOf } from './clues.ts';
import { evidence } from './evidence.ts';
import { type Hearing, isOpen, namesOf, type Proposal } from './hearing.ts';
import { isNumberWord } from './number-words.ts';
import { isOrdinary } from './ordinary-words.ts';
import { nextWord } from './phrases.ts';
import { isFieldWord, isTradeJoined, nearestTradeWord, type TradeSound } from './sound-index.ts';

const FIELD = cluesOf('@field');
const MOST_WORDS = 3;
const SHORTEST = 5;
const LONGEST = 24;

/** Likeness that is asked (tried on recogniser output, see tests/bench/hear.ts); the more ordinary, the more. */
const ASKED = { strange: 0.78, short: 0.86, alone: 0.9, mixed: 0.88, plain: 0.9 };
const LONG = 8;

export function proposeBySound({ tokens, context }: Hearing): Proposal[] {
  const names = namesOf(context);
  return tokens.flatMap((_, at) => {
    const found = proposalsAt(tokens, at, names);
    return found.length === 0 ? [] : [found.reduce((a, b) => (b.like > a.like ? b : a)).proposal];
  });
}

interface Found {
  proposal: Proposal;
  like: number;
}

function proposalsAt(tokens: readonly Token[], at: number, names: ReadonlySet<string>): Found[] {
  const found: Found[] = [];
  const words: string[] = [];
  let last: number | undefined = at;
  while (last !== undefined && words.length < MOST_WORDS) {
    const { lower, kind } = tokens[last]!;
    if (kind !== 'word' || !/^[a-z']+$/.test(lower) || isNumberWord(lower) || names.has(lower)) break;
    words.push(lower);
    const one = isOpen(tokens, at, last + 1) ? nearestFor(tokens, at, last + 1, words) : undefined;
    if (one) found.push(one);
    last = nextWord(tokens, last);
  }
  return found;
}

function nearestFor(
  tokens: readonly Token[],
  from: number,
  to: number,
  words: readonly string[],
): Found | undefined {
  const letters = words.join('');
  if (letters.length < SHORTEST || letters.length > LONGEST || holdsTerm(words)) return undefined;
  if (BINDING.has(words[0]!) || BINDING.has(words.at(-1)!)) return undefined;
  const nearest = nearestTradeWord(letters);
  if (!nearest) return undefined;
  const { sound, like } = nearest;
  if (like === 1 && sound.joined === letters) return apart(sound.meant, from, to, words);
  const near = standsNear(tokens, from, to, FIELD);
  if (like < asked(words, sound, near !== undefined)) return undefined;
  return {
    proposal: { from, to, meant: sound.meant, why: evidence(tokens.slice(from, to), sound.meant, { near }) },
    like,
  };
}

/** Whether the trade word is there already and the rest only stands beside it: `now milky stage`, `is stem borer`. */
const holdsTerm = (words: readonly string[]): boolean =>
  words.some((_, from) =>
    words.some(
      (_, to) =>
        to >= from && to - from < words.length - 1 && isTradeJoined(words.slice(from, to + 1).join('')),
    ),
  ) ||
  (words.length === 1 && isFieldWord(words[0]!));

/** One word written as two. Some are written so by everybody and stay. */
function apart(meant: string[], from: number, to: number, words: readonly string[]): Found | undefined {
  if (
    meant.length > 1 ||
    words.length < 2 ||
    words.every(isFieldWord) ||
    /^(top|dead|white)$/.test(words[0]!)
  )
    return undefined;
  return { proposal: { from, to, meant, why: `"${meant[0]}" written apart` }, like: 1 };
}

/**
 * A short word is like too many others, so more is asked of it. Two plain words in a row are read as one only for the
 * Latin names of weeds, which no sentence makes by chance.
 */
function asked(words: readonly string[], { joined, kind, meant }: TradeSound, near: boolean): number {
  const strange = words.filter((word) => !isOrdinary(word) && !isFieldWord(word)).length;
  if (words.length === 1 && strange === 0) return Infinity;
  if (!near) return words.length === 1 && joined.length > LONG ? ASKED.alone : Infinity;
  if (strange === 0) return kind === 'weed' && joined.length > LONG ? ASKED.plain : Infinity;
  if (joined.length < LONG || kind === 'nutrient' || (words.length === 1 && meant.length > 1))
    return ASKED.short;
  return words.length === 1 ? ASKED.strange : ASKED.mixed;
}
