import { addMonths } from './days.ts';
import { type Point, type ReadPoint, type TimeContext, wordAt } from './point.ts';
import type { Days } from './reckon.ts';
import { weekdayPoint } from './weekday-point.ts';

type UnitOfTime = 'hour' | 'day' | 'week' | 'fortnight' | 'month';
const UNITS: ReadonlyMap<string, UnitOfTime> = new Map(
  (
    [
      ['hour', 'minute minutes min mins hour hours hr hrs'],
      ['day', "day days d day's days' dys night nights sleeps jours"],
      ['week', "week weeks wk wks week's weeks'"],
      ['fortnight', "fortnight fortnights fortnight's"],
      ['month', "month months mth mths month's"],
    ] as const
  ).flatMap(([unit, words]) => words.split(' ').map((word): [string, UnitOfTime] => [word, unit])),
);

/** A length of time: from `low` to `high` of the unit, ending at `last`. */
export interface Span {
  low: number;
  high: number;
  unit: UnitOfTime;
  last: number;
}

/** `three days`, `2-3 days`, `a week`, `a week or two`, `a day or 2`, `couple of weeks`, `10 to 12 days`. */
export function readSpan(context: TimeContext, at: number): Span | null {
  const number = context.numberAt.get(at);
  const article = /^(a|an|another)$/.test(wordAt(context, at));
  const amount =
    number && number.form !== 'ordinal' && number.form !== 'share' && number.value > 0 ? number : null;
  if (!amount && !article) return null;
  let index = amount ? amount.last + 1 : at + 1;
  while (
    /^(-|more|full|odd|good|whole|clear|working|other|of|short)$/.test(wordAt(context, index)) &&
    index < at + 6
  )
    index++;
  const word = wordAt(context, index);
  const unit = UNITS.get(word);
  if (!unit || (word === 'min' && !amount)) return null;
  const low = amount?.low ?? amount?.value ?? 1;
  const span: Span = { low, high: amount?.high ?? low, unit, last: index };
  return orMore(context, span);
}

/** `… or two`, `… or 10 days`, `… or so`. */
function orMore(context: TimeContext, span: Span): Span {
  if (wordAt(context, span.last + 1) !== 'or') return span;
  if (wordAt(context, span.last + 2) === 'so') return { ...span, last: span.last + 2 };
  const number = context.numberAt.get(span.last + 2);
  if (number?.form !== 'cardinal') return span;
  const unit = UNITS.get(wordAt(context, number.last + 1));
  if (unit && unit !== span.unit) {
    const inDays = { low: daysOf(span.low, span.unit), high: daysOf(number.value, unit) };
    return inDays.high > inDays.low ? { ...inDays, unit: 'day', last: number.last + 1 } : span;
  }
  return number.value > span.low
    ? { ...span, high: number.value, last: unit ? number.last + 1 : number.last }
    : span;
}

const DAYS_IN: Record<Exclude<UnitOfTime, 'hour' | 'month'>, number> = { day: 1, week: 7, fortnight: 14 };

/** Whole days of a span; hours are rounded to days (48 hours are two), a month is 30 days where no date is at hand. */
export function daysOf(count: number, unit: UnitOfTime): number {
  if (unit === 'hour') return count < 18 ? 0 : Math.round(count / 24);
  return unit === 'month' ? count * 30 : Math.round(count * DAYS_IN[unit]);
}

const shifted = (day: number, count: number, unit: UnitOfTime, sign: 1 | -1): number =>
  unit === 'month' && Number.isInteger(count)
    ? addMonths(day, sign * count)
    : day + sign * daysOf(count, unit);

/** `in three days`, `within a week`, `in the next 3 days`, `ten days from now`, `a week from Friday`, `three days ago`, `2 days back`. */
export const spanPoint: ReadPoint = (context, at) => {
  const told = saysBefore(context, at) ? readSpan(context, at + 1) : null;
  if (told && told.unit !== 'hour' && !countsFromEvent(context, told.last + 1))
    return { ...ago(context, told), last: told.last };
  const lead = readLead(context, at);
  const span = readSpan(context, lead.start);
  if (
    !span ||
    (span.unit === 'hour' &&
      wordAt(context, span.last).startsWith('min') &&
      lead.kind === 'none' &&
      !isAgo(context, span.last + 1))
  )
    return null;
  if (isAgo(context, span.last + 1)) return ago(context, span);
  if (lead.kind === 'within') return withinSpan(context, span);
  const tail = readTail(context, span.last + 1);
  const isTimed = lead.kind === 'in' || tail !== null;
  if (!isTimed || (lead.kind === 'in' && tail === null && countsFromEvent(context, span.last + 1)))
    return null;
  return ahead(context, span, tail);
};

type LeadKind = 'none' | 'in' | 'within';
const WITHIN_PHRASES: readonly string[][] = [
  'within the next',
  'within next',
  'within the coming',
  'within',
  'in the next',
  'in next',
  'over the next',
  'during the next',
  'in the coming',
  'inside of',
  'inside',
  'for the next',
  'the next',
  'next',
  'in under',
  'in less than',
  'not later than',
  'no later than',
  'no more than',
  'at most',
  'coming',
  'the coming',
].map((phrase) => phrase.split(' '));
const IN_PHRASES: readonly string[][] = [
  'in about',
  'in around',
  'in maybe',
  'in another',
  'in some',
  'in roughly',
  'in say',
  'in like',
  'in abt',
  'in bout',
  'wait for',
  'wait',
  'leave it for',
  'leave it',
  'leave for',
  'hold off for',
  'hold off',
  'give them',
  'give her',
  'in',
  'after another',
  'after about',
  'after',
  'again in',
  'give it',
  'come back in',
  'about',
].map((phrase) => phrase.split(' '));

function readLead(context: TimeContext, at: number): { start: number; kind: LeadKind } {
  const starts = (phrase: string[]): boolean =>
    phrase.every((word, step) => wordAt(context, at + step) === word);
  const within = WITHIN_PHRASES.find(starts);
  if (within) return { start: at + within.length, kind: 'within' };
  const into = IN_PHRASES.find(starts);
  if (into && into[0] !== 'about')
    return {
      start:
        at +
        (/^(another)$/.test(into.at(-1) ?? '') && !context.numberAt.has(at + into.length)
          ? into.length - 1
          : into.length),
      kind: 'in',
    };
  return { start: into ? at + into.length : at, kind: 'none' };
}

/** `before 3 days`, as it is said in India: three days ago. */
const saysBefore = (context: TimeContext, at: number): boolean => wordAt(context, at) === 'before';

const isAgo = (context: TimeContext, at: number): boolean =>
  /^(ago|back)$/.test(wordAt(context, at)) &&
  !(wordAt(context, at) === 'back' && /^(to|in|of|the)$/.test(wordAt(context, at + 1)));

function ago(context: TimeContext, span: Span): Point {
  const from = shifted(context.day, span.high, span.unit, -1);
  const to = shifted(context.day, span.low, span.unit, -1);
  return { last: span.last + 1, rule: 'ago', toCome: null, done: [from, to] };
}

const withinSpan = (context: TimeContext, span: Span): Point => ({
  last: span.last,
  rule: 'within',
  toCome: [context.day, shifted(context.day, span.high, span.unit, 1)],
  done: null,
});

/** What makes a bare span a time: `from now`, `hence`, `time`, `from Friday`; with the day it counts from. */
function readTail(context: TimeContext, at: number): { last: number; from: number } | null {
  const word = wordAt(context, at);
  if (/^(hence|time)$/.test(word)) return { last: at, from: context.day };
  if (word === 'today') return { last: at, from: context.day };
  if (word !== 'from' && word !== 'on') return null;
  const next = wordAt(context, at + 1);
  if (word === 'from' && (next === 'now' || next === 'today')) return { last: at + 1, from: context.day };
  if (word === 'from' && /^(tomorrow|tmrw)$/.test(next)) return { last: at + 1, from: context.day + 1 };
  const weekday = weekdayPoint(context, at + 1);
  return weekday?.toCome ? { last: weekday.last, from: weekday.toCome[0] } : null;
}

/** `in 5 days after transplanting` is no day of the calendar. */
const countsFromEvent = (context: TimeContext, at: number): boolean =>
  /^(after|before|of|since|old|following)$/.test(wordAt(context, at));

function ahead(context: TimeContext, span: Span, tail: { last: number; from: number } | null): Point {
  const from = tail?.from ?? context.day;
  const toCome: Days = [shifted(from, span.low, span.unit, 1), shifted(from, span.high, span.unit, 1)];
  return { last: tail?.last ?? span.last, rule: 'in-a-span', toCome, done: null };
}

/** `the last three days`, `over the past week`, `for the last 2 days`. */
export const pastSpanPoint: ReadPoint = (context, at) => {
  const start = /^(the|these)$/.test(wordAt(context, at)) ? at + 1 : at;
  if (!/^(last|past)$/.test(wordAt(context, start))) return null;
  const span = readSpan(context, start + 1);
  if (!span) return null;
  return {
    last: span.last,
    rule: 'past-span',
    toCome: null,
    done: [shifted(context.day, span.high, span.unit, -1), context.day],
  };
};
