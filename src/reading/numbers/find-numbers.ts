/** Every number of a note, in digits or in words, with what kind of number it is. */
import type { Token } from '../text.ts';
import { joinShares, WHOLE_THINGS } from './join-shares.ts';
import type { NumberFound } from './number-found.ts';
import {
  ORDINALS,
  SOUND_ALIKES,
  TENS,
  UNIT_BEFORE_WHICH_ONLY_A_NUMBER_STANDS,
  UNITS,
} from './number-words.ts';
import { type Cardinal, readAddedPart, readCardinal, touches } from './read-cardinal.ts';
import { readFraction, readSlash } from './read-fraction.ts';

export type { NumberForm, NumberFound } from './number-found.ts';

/** Left to right, without overlaps. Linear in the number of tokens; never throws. */
export function findNumbers(tokens: Token[]): NumberFound[] {
  const found: NumberFound[] = [];
  for (let at = 0; at < tokens.length; ) {
    const listed = readCommaList(tokens, at);
    const number = listed?.at(-1) ?? readNumber(tokens, at);
    if (number) found.push(...(listed ?? [number]));
    at = number ? number.last + 1 : at + 1;
  }
  return joinShares(tokens, found);
}

/** `17,19,15` written without spaces stands as one token: three readings, not a number in thousands. */
function readCommaList(tokens: Token[], at: number): NumberFound[] | null {
  const parts = tokens[at]?.lower.split(',') ?? [];
  if (
    parts.length < 3 ||
    parts.length > 40 ||
    !parts.every((part) => /^\d+(\.\d+)?$/.test(part)) ||
    parts.slice(1).every((part) => /^\d{3}$/.test(part))
  )
    return null;
  return parts.map((part) => ({ first: at, last: at, value: Number(part), form: 'cardinal' }));
}

function readNumber(tokens: Token[], at: number): NumberFound | null {
  const range = readRange(tokens, at);
  if (range) return asPercent(tokens, range);
  const fraction = readFraction(tokens, at);
  if (fraction) return fraction;
  const ordinal = readOrdinal(tokens, at);
  if (ordinal) return ordinal;
  const amount = readAmount(tokens, at) ?? readCross(tokens, at) ?? readSoundAlike(tokens, at);
  if (!amount) return null;
  return asPercent(tokens, {
    first: at,
    last: amount.last,
    value: amount.value,
    form: 'cardinal',
    ...('vague' in amount && { vague: true }),
  });
}

/** The second side of `25x20`, which stands as one word `x20`. */
function readCross(tokens: Token[], at: number): Cardinal | null {
  const side = /^x(\d{1,4})$/.exec(tokens[at]?.lower ?? '');
  return side && tokens[at - 1]?.kind === 'number'
    ? { value: Number(side[1]), last: at, spelled: false }
    : null;
}

/** A cardinal with what is added to it: `one and a half`, `2 1/2`, `4½`, `minus twelve`, `a couple`. */
function readAmount(tokens: Token[], at: number): (Cardinal & { vague?: boolean }) | null {
  const sign = readSign(tokens, at);
  if (sign > at) {
    const amount = readCardinal(tokens, sign);
    return amount && { ...amount, value: -amount.value };
  }
  if (isPronoun(tokens, at)) return null;
  const couple = readCouple(tokens, at);
  if (couple) return couple;
  const whole = readCardinal(tokens, at);
  if (!whole) return null;
  const added = readAddedPart(tokens, whole.last + 1) ?? readSlashAfterWhole(tokens, whole);
  return added ? { ...whole, value: whole.value + added.value, last: added.last } : whole;
}

const readSlashAfterWhole = (tokens: Token[], whole: Cardinal) => {
  const slash = whole.spelled ? null : readSlash(tokens, whole.last + 1);
  return slash && !touches(tokens, whole.last + 1) ? slash : null;
};

/** Index behind `minus`, or behind a dash that follows a space and touches the figure; else `at`. */
function readSign(tokens: Token[], at: number): number {
  if (tokens[at]?.lower === 'minus') return at + 1;
  const dash = tokens[at]?.lower === '-' || tokens[at]?.lower === '−';
  return dash && at > 0 && !touches(tokens, at) && touches(tokens, at + 1) ? at + 1 : at;
}

const BEFORE_PRONOUN = new Set(
  'this that which any every another other each no the odd sick bad good last next these those'.split(' '),
);

/** `this one`, `the other one`: no number. */
function isPronoun(tokens: Token[], at: number): boolean {
  return (
    tokens[at]?.lower === 'one' &&
    BEFORE_PRONOUN.has(tokens[at - 1]?.lower ?? '') &&
    !WHOLE_THINGS.has(tokens[at + 1]?.lower ?? '')
  );
}

function readCouple(tokens: Token[], at: number): (Cardinal & { vague: true }) | null {
  const start = tokens[at]?.lower === 'a' ? at + 1 : at;
  if (tokens[start]?.lower !== 'couple') return null;
  return {
    value: 2,
    last: tokens[start + 1]?.lower === 'of' ? start + 1 : start,
    spelled: true,
    vague: true,
  };
}

const RANGE_MARKS = new Set(['-', '–', '—']);
const RANGE_WORDS = new Set(['to', 'or', 'till', 'until', 'upto', 'up']);

/** `5-6`, `five to six`, `10 or 12`, `between 5 and 6`, `five six per hill`: low must lie under high. */
function readRange(tokens: Token[], at: number): NumberFound | null {
  const between = tokens[at]?.lower === 'between';
  const low = readAmount(tokens, between ? at + 1 : at);
  if (!low || low.value < 0) return null;
  const join = tokens[low.last + 1]?.lower ?? '';
  const unitBetween = join === '%' || join === 'percent';
  const joinAt = unitBetween ? low.last + 2 : low.last + 1;
  const joinWord = tokens[joinAt]?.lower ?? '';
  const joined = between ? joinWord === 'and' : RANGE_WORDS.has(joinWord) || RANGE_MARKS.has(joinWord);
  const highAt = !joined ? low.last + 1 : joinWord === 'up' ? joinAt + 2 : joinAt + 1;
  if (joined && isJoinOfCodes(tokens, at, joinAt)) return null;
  const high = readAmount(tokens, highAt);
  if (!high || high.value <= low.value) return null;
  if (!joined && !isSideBySide(tokens, at, low, high)) return null;
  if (joined && tokens[high.last + 1]?.lower === joinWord && RANGE_MARKS.has(joinWord)) return null;
  const lowValue = scaledLow(low, high);
  return {
    first: at,
    last: high.last,
    value: (lowValue + high.value) / 2,
    low: lowValue,
    high: high.value,
    form: 'range',
  };
}

/** `three to four hundred`: the hundred belongs to both. */
const scaledLow = (low: Cardinal, high: Cardinal): number =>
  low.spelled &&
  high.spelled &&
  low.value < 10 &&
  high.value >= 100 &&
  high.value < 1000 &&
  high.value % 100 === 0
    ? low.value * 100
    : low.value;

/** `A-1`, `North-1-2`, `2031-03-14`: a dash inside a code or a date joins no range. */
function isJoinOfCodes(tokens: Token[], at: number, joinAt: number): boolean {
  if (!RANGE_MARKS.has(tokens[joinAt]?.lower ?? '')) return false;
  return touches(tokens, at) && (tokens[at - 1]?.lower === '-' || tokens[at - 1]?.lower === '/');
}

/** Two spelled neighbours alone (`five six per hill`); in a longer row (`nine ten eleven`) each is a reading of its own. */
function isSideBySide(tokens: Token[], at: number, low: Cardinal, high: Cardinal): boolean {
  if (!low.spelled || !high.spelled || high.value !== low.value + 1 || high.value > 12 || low.value < 2)
    return false;
  return !isNumberWord(tokens[at - 1]?.lower) && !isNumberWord(tokens[high.last + 1]?.lower);
}

const isNumberWord = (word = ''): boolean => UNITS.has(word) || TENS.has(word);

const PERCENT_WORDS = new Set(['%', 'percent', 'pct', 'pc', 'percentage']);

/** Takes in `%`, `percent`, `per cent`, which may stand twice in a range (`5% to 6%`). */
function asPercent(tokens: Token[], number: NumberFound): NumberFound {
  const word = tokens[number.last + 1]?.lower ?? '';
  const last = PERCENT_WORDS.has(word)
    ? number.last + 1
    : word === 'per' && isCent(tokens[number.last + 2]?.lower)
      ? number.last + 2
      : -1;
  if (last < 0) return number;
  return number.form === 'range' ? { ...number, last, percent: true } : { ...number, last, form: 'percent' };
}

const isCent = (word = ''): boolean => word === 'cent' || word === 'cents';

/** `third`, `24th`, `twenty fourth`. */
function readOrdinal(tokens: Token[], at: number): NumberFound | null {
  const word = tokens[at]?.lower ?? '';
  const ten = TENS.get(word);
  if (ten !== undefined) {
    const next = tokens[at + 1]?.lower === '-' ? at + 2 : at + 1;
    const unit = ORDINALS.get(tokens[next]?.lower ?? '');
    return unit && unit < 10 ? { first: at, last: next, value: ten + unit, form: 'ordinal' } : null;
  }
  const spelled = ORDINALS.get(word);
  if (spelled) return { first: at, last: at, value: spelled, form: 'ordinal' };
  const suffix = tokens[at + 1]?.lower ?? '';
  if (/^\d{1,3}$/.test(word) && /^(st|nd|rd|th)$/.test(suffix) && touches(tokens, at + 1))
    return { first: at, last: at + 1, value: Number(word), form: 'ordinal' };
  const glued = /^(\d{1,3})(st|nd|rd|th)$/.exec(word);
  return glued ? { first: at, last: at, value: Number(glued[1]), form: 'ordinal' } : null;
}

/** `leaf colour is for,` and `to inches of water`: only where the small word itself cannot stand. */
function readSoundAlike(tokens: Token[], at: number): Cardinal | null {
  const word = tokens[at]?.lower ?? '';
  const value = SOUND_ALIKES.get(word);
  if (value === undefined || !tokens[at]) return null;
  const next = tokens[at + 1];
  const beforeUnit = next !== undefined && UNIT_BEFORE_WHICH_ONLY_A_NUMBER_STANDS.has(next.lower);
  const ends = next === undefined || (next.kind === 'mark' && /^[.,;:!?]$/.test(next.text));
  const afterIs = /^(is|are|says|reads|reading|chart|colour|color|score|spad)$/.test(
    tokens[at - 1]?.lower ?? '',
  );
  const asNumber =
    (beforeUnit && !isNumberWord(tokens[at - 1]?.lower)) ||
    (ends && afterIs && value !== 8 && word !== 'too');
  return asNumber ? { value, last: at, spelled: true } : null;
}
