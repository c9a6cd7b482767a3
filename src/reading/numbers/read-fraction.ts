/** Parts of a whole. */
import type { Token } from '../text.ts';
import type { NumberFound } from './number-found.ts';
import { PARTS, UNITS, VULGAR_FRACTIONS } from './number-words.ts';
import { touches } from './read-cardinal.ts';

const LOOSE = new Set([
  'almost',
  'nearly',
  'roughly',
  'about',
  'around',
  'maybe',
  'perhaps',
  'over',
  'under',
]);

/** `half`, `half a`, `a third`, `two thirds`, `three quarters`, `2/3`, `½`. */
export function readFraction(tokens: Token[], at: number): NumberFound | null {
  const part = readSlash(tokens, at) ?? readVulgar(tokens, at) ?? readPartWords(tokens, at);
  if (!part) return null;
  const vague = LOOSE.has(tokens[at - 1]?.lower ?? '');
  return { first: at, last: part.last, value: part.value, form: 'fraction', ...(vague && { vague: true }) };
}

export function readSlash(tokens: Token[], at: number): { value: number; last: number } | null {
  if (tokens[at + 1]?.lower !== '/' || !touches(tokens, at + 1) || !touches(tokens, at + 2)) return null;
  const above = Number(tokens[at]?.lower);
  const below = Number(tokens[at + 2]?.lower);
  const whole = [2, 3, 4, 5, 8, 10].includes(below) && Number.isInteger(above) && above > 0 && above < below;
  return whole && tokens[at + 3]?.lower !== '/' && tokens[at - 1]?.lower !== '/'
    ? { value: above / below, last: at + 2 }
    : null;
}

const readVulgar = (tokens: Token[], at: number) => {
  const value = VULGAR_FRACTIONS.get(tokens[at]?.lower ?? '');
  return value === undefined ? null : { value, last: at };
};

function readPartWords(tokens: Token[], at: number): { value: number; last: number } | null {
  const first = tokens[at]?.lower ?? '';
  if (first === 'half' && [1, 2].some((step) => tokens[at + step]?.lower === 'dozen')) return null;
  if (first === 'half') return { value: 0.5, last: at };
  if (first === 'quarter' && OF_A_QUARTER.has(tokens[at + 1]?.lower ?? '')) return { value: 0.25, last: at };
  const count = first === 'a' || first === 'an' ? 1 : UNITS.get(first);
  if (!count) return null;
  const gap = tokens[at + 1]?.lower === '-' ? at + 2 : at + 1;
  const word = tokens[gap]?.lower ?? '';
  const parts = PARTS.get(word);
  if (!parts || count >= parts) return null;
  if (count === 1 ? word.endsWith('s') : !word.endsWith('s') && word !== 'third') return null;
  if (first === 'a' && tokens[gap + 1]?.kind === 'word' && IS_A_NEXT_ONE.has(tokens[gap + 1]?.lower ?? ''))
    return null;
  return { value: count / parts, last: gap };
}

/** `quarter bag`, `quarter inch`: by itself the word is as often a place (`the NE quarter`). */
const OF_A_QUARTER = new Set([
  'bag',
  'sack',
  'inch',
  'acre',
  'kilo',
  'litre',
  'liter',
  'ton',
  'gallon',
  'dose',
]);

/** `a third pass`, `a second spray` count on; `a third of it` measures. */
const IS_A_NEXT_ONE = new Set(
  'pass spray round time walk one leaf dose shot flush visit weeding irrigation split row plot man day week'.split(
    ' ',
  ),
);
