import type { Token } from '../text.ts';
import { MULTIPLES, TENS, UNITS, VULGAR_FRACTIONS } from './number-words.ts';

export interface Cardinal {
  value: number;
  /** Index of the last token. */
  last: number;
  spelled: boolean;
}

/** A whole or decimal number that starts at `at`: `2,200`, `4.5`, `one hundred and five`, `three point five`, `a dozen`. */
export function readCardinal(tokens: Token[], at: number): Cardinal | null {
  const plain =
    readDigits(tokens, at) ?? readDozen(tokens, at) ?? readSpelled(tokens, at) ?? readPoint(tokens, at, 0);
  if (!plain) return null;
  const decimal =
    tokens[plain.last + 1]?.lower === 'point' ? readPoint(tokens, plain.last + 1, plain.value) : null;
  return decimal ?? plain;
}

/** `2,200` is two thousand two hundred; `3,5` is three and a half, as much of the world writes it. */
export function valueOfDigits(text: string): number {
  if (/^\d{1,3}(,\d{3})+(\.\d+)?$/.test(text)) return Number(text.replaceAll(',', ''));
  return Number(text.replace(',', '.'));
}

function readDigits(tokens: Token[], at: number): Cardinal | null {
  const token = tokens[at];
  if (!token || !/^\d/.test(token.lower)) return null;
  const value = valueOfDigits(token.lower);
  if (!Number.isFinite(value)) return null;
  const multiple = MULTIPLES.get(tokens[at + 1]?.lower ?? '');
  if (multiple) return { value: value * multiple, last: at + 1, spelled: false };
  if (touches(tokens, at + 1) && tokens[at + 1]?.lower === 'k')
    return { value: value * 1000, last: at + 1, spelled: false };
  return { value, last: at, spelled: false };
}

/** `a dozen`, `two dozen`, `half a dozen`, `half dozen`. */
function readDozen(tokens: Token[], at: number): Cardinal | null {
  const words = [0, 1, 2].map((step) => tokens[at + step]?.lower ?? '');
  const [first = '', second = '', third = ''] = words;
  if (first === 'dozen') return { value: 12, last: at, spelled: true };
  if (first === 'half' && second === 'dozen') return { value: 6, last: at + 1, spelled: true };
  if (first === 'half' && second === 'a' && third === 'dozen')
    return { value: 6, last: at + 2, spelled: true };
  const many = first === 'a' ? 1 : UNITS.get(first);
  return many !== undefined && second === 'dozen' ? { value: many * 12, last: at + 1, spelled: true } : null;
}

/** Grows a number word by word; a word that cannot go on from what stands starts a new number (`one forty two`). */
function readSpelled(tokens: Token[], at: number): Cardinal | null {
  const opens = tokens[at]?.lower ?? '';
  const article = opens === 'a' || opens === 'an';
  if (article && !MULTIPLES.has(tokens[at + 1]?.lower ?? '')) return null;
  let index = article ? at + 1 : at;
  let total = 0;
  let group = 0;
  let last = -1;
  let seen = false;
  while (true) {
    const word = tokens[index]?.lower ?? '';
    const small = UNITS.get(word) ?? TENS.get(word);
    const multiple = MULTIPLES.get(word);
    if (small !== undefined && joins(small, group, total, seen)) group += small;
    else if (multiple === 100 && group < 100 && !(seen && group === 0)) group = (group || 1) * 100;
    else if (multiple !== undefined && multiple > 100 && !(seen && group === 0)) {
      total += (group || 1) * multiple;
      group = 0;
    } else break;
    seen = true;
    last = index;
    index = afterJoin(tokens, index, multiple !== undefined, TENS.has(word));
    if (small === 0) break;
  }
  return seen ? { value: total + group, last, spelled: true } : null;
}

/** A unit goes on a ten or a round hundred, a ten or teen only on a round hundred. */
function joins(small: number, group: number, total: number, seen: boolean): boolean {
  if (!seen) return true;
  if (small === 0) return false;
  const round = group % 100 === 0 && group + total > 0;
  return round || (small < 10 && group % 100 >= 20 && group % 10 === 0);
}

/** Where the next word of the number may stand: past `and` after a hundred, past the hyphen of `sixty-two`. */
function afterJoin(tokens: Token[], index: number, hundred: boolean, ten: boolean): number {
  const next = tokens[index + 1]?.lower;
  if (hundred && next === 'and') {
    const after = tokens[index + 2]?.lower ?? '';
    return UNITS.has(after) || TENS.has(after) ? index + 2 : index + 1;
  }
  return ten && next === '-' && touches(tokens, index + 1) ? index + 2 : index + 1;
}

/** `point five`, `three point two five`, `5 point 8`, `three point oh five`. */
function readPoint(tokens: Token[], at: number, whole: number): Cardinal | null {
  if (tokens[at]?.lower !== 'point') return null;
  let digits = '';
  let index = at + 1;
  for (; index <= at + 4; index++) {
    const word = tokens[index]?.lower ?? '';
    const digit = word === 'oh' ? 0 : UNITS.get(word);
    if (digit !== undefined && digit < 10) digits += digit;
    else if (digits === '' && /^\d{1,3}$/.test(word))
      return { value: Number(`${whole}.${word}`), last: index, spelled: true };
    else if (digits === '' && TENS.has(word)) digits += String((TENS.get(word) ?? 0) / 10);
    else break;
  }
  return digits === '' ? null : { value: Number(`${whole}.${digits}`), last: index - 1, spelled: true };
}

/** `and a half`, `and half`, `and three quarters`, `1/2` or `½` after a whole number: what it adds, and where it ends. */
export function readAddedPart(tokens: Token[], at: number): { value: number; last: number } | null {
  const vulgar = VULGAR_FRACTIONS.get(tokens[at]?.lower ?? '');
  if (vulgar !== undefined) return { value: vulgar, last: at };
  if (tokens[at]?.lower !== 'and' && tokens[at]?.lower !== 'n') return null;
  const words = [1, 2, 3].map((step) => tokens[at + step]?.lower ?? '');
  const skip = words[0] === 'a' || words[0] === 'one' ? 1 : 0;
  if (words[skip] === 'half') return { value: 0.5, last: at + 1 + skip };
  if (skip === 1 && words[1] === 'quarter') return { value: 0.25, last: at + 2 };
  return words[0] === 'three' && words[1] === 'quarters' ? { value: 0.75, last: at + 2 } : null;
}

/** True where the token at `index` follows the one before it without a space. */
export const touches = (tokens: Token[], index: number): boolean =>
  tokens[index] !== undefined && tokens[index]?.start === tokens[index - 1]?.end;
