/** A day with what bounds or joins it: `by Friday`, `from Monday`, `until Thursday`, `Tuesday or Wednesday`, `Mon-Wed`. */
import { clockPoint } from './clock-point.ts';
import { civilOf } from './days.ts';
import { datePoint, monthPoint } from './month-point.ts';
import { phrasePoint } from './phrase-point.ts';
import { type Point, type ReadPoint, type TimeContext, wordAt } from './point.ts';
import type { Days } from './reckon.ts';
import { spanPoint } from './span-point.ts';
import { isWeekdayName, weekdayPoint, weekThenWeekday } from './weekday-point.ts';

type Bound = (point: Point, day: number) => Point;

const upToIt: Bound = (point, day) => ({
  ...point,
  rule: `by-${point.rule}`,
  toCome: point.toCome && [day, Math.max(day, point.toCome[1])],
});
const fromIt: Bound = (point) => ({ ...point, rule: `from-${point.rule}` });
const sinceIt: Bound = (point) => ({ ...point, rule: `since-${point.rule}`, toCome: null });
const afterIt: Bound = (point) => ({
  ...point,
  rule: `after-${point.rule}`,
  toCome: point.toCome && [point.toCome[1] + 1, point.toCome[1] + 1],
  done: null,
});

/** Longest first, as the first that fits is taken. */
const BOUNDS: readonly [phrase: string[], bound: Bound][] = (
  [
    ['by no later than', upToIt],
    ['no later than', upToIt],
    ['not later than', upToIt],
    ['no later then', upToIt],
    ['at the latest by', upToIt],
    ['latest by', upToIt],
    ['by latest', upToIt],
    ['at the latest', upToIt],
    ['latest', upToIt],
    ['before the end of', upToIt],
    ['by the end of', upToIt],
    ['by end of', upToIt],
    ['on or before', upToIt],
    ['any day before', upToIt],
    ['sometime before', upToIt],
    ['anytime before', upToIt],
    ['due by', upToIt],
    ['due', fromIt],
    ['between now and', upToIt],
    ['from now till', upToIt],
    ['from now until', upToIt],
    ['from now to', upToIt],
    ['from today till', upToIt],
    ['from today until', upToIt],
    ['from today to', upToIt],
    ['now to', upToIt],
    ['by', upToIt],
    ['before', upToIt],
    ['b4', upToIt],
    ['bfore', upToIt],
    ['prior to', upToIt],
    ['ahead of', upToIt],
    ['not before', fromIt],
    ['no earlier than', fromIt],
    ['not earlier than', fromIt],
    ['not until', fromIt],
    ['not till', fromIt],
    ['starting from', fromIt],
    ['starting on', fromIt],
    ['starting', fromIt],
    ['start from', fromIt],
    ['beginning on', fromIt],
    ['beginning', fromIt],
    ['with effect from', fromIt],
    ['as from', fromIt],
    ['as of', fromIt],
    ['from', fromIt],
    ['till after', afterIt],
    ['until after', afterIt],
    ['not after', upToIt],
    ['until', fromIt],
    ['till', fromIt],
    ["'til", fromIt],
    ['til', fromIt],
    ['untill', fromIt],
    ['to', fromIt],
    ['since', sinceIt],
    ['ever since', sinceIt],
    ['after', afterIt],
    ['sometime', fromIt],
    ['some time', fromIt],
    ['around', fromIt],
    ['about', fromIt],
    ['maybe', fromIt],
    ['again', fromIt],
    ['during', fromIt],
    ['only', fromIt],
    ['early', fromIt],
    ['late', fromIt],
    ['come', fromIt],
  ] as const
).map(([phrase, bound]): [string[], Bound] => [phrase.split(' '), bound]);

const BY_FIRST = new Map<string, [phrase: string[], bound: Bound][]>();
for (const entry of BOUNDS)
  BY_FIRST.set(entry[0][0] ?? '', [...(BY_FIRST.get(entry[0][0] ?? '') ?? []), entry]);

const PLAIN: readonly ReadPoint[] = [
  phrasePoint,
  weekThenWeekday,
  weekdayPoint,
  datePoint,
  spanPoint,
  monthPoint,
  clockPoint,
];

function plainPoint(context: TimeContext, at: number): Point | null {
  let longest: Point | null = null;
  for (const read of PLAIN) {
    const point = read(context, at);
    if (point && (!longest || point.last > longest.last)) longest = point;
  }
  return longest;
}

export const boundedPoint: ReadPoint = (context, at) => {
  const cue = BY_FIRST.get(wordAt(context, at))?.find(([phrase]) =>
    phrase.every((word, step) => wordAt(context, at + step) === word),
  );
  const start = cue ? at + cue[0].length : wordAt(context, at) === 'between' ? at + 1 : at;
  const point = joinedPoint(context, start, wordAt(context, at) === 'between');
  if (!point || point.rule === 'clock' || point.rule === 'now') return null;
  if (!cue) return latest(context, point);
  if (isSpanOfMany(point) && cue[0][0] === 'from') return fromIt(point, context.day);
  return latest(context, cue[1](point, context.day));
};

const isSpanOfMany = (point: Point): boolean => point.rule === 'joined';

/** `Thu latest`, `Friday at the latest`, `before Friday comes`. */
function latest(context: TimeContext, point: Point): Point {
  const next = wordAt(context, point.last + 1);
  if (/^(latest|max|deadline)$/.test(next)) return { ...upToIt(point, context.day), last: point.last + 1 };
  if (
    next === 'at' &&
    /^(the|d)$/.test(wordAt(context, point.last + 2)) &&
    wordAt(context, point.last + 3) === 'latest'
  )
    return { ...upToIt(point, context.day), last: point.last + 3 };
  if (next === 'at' && wordAt(context, point.last + 2) === 'latest')
    return { ...upToIt(point, context.day), last: point.last + 2 };
  if (next === 'or' && /^(before|sooner|earlier)$/.test(wordAt(context, point.last + 2)))
    return { ...upToIt(point, context.day), last: point.last + 2 };
  if (/^(comes|onwards|onward|onwards|on)$/.test(next) && (next !== 'on' || /^from/.test(point.rule)))
    return { ...point, last: point.last + (next === 'on' ? 0 : 1) };
  return point;
}

const JOINS = new Set(['or', 'to', '-', '–', '—', 'till', 'until', 'thru', 'through', '/', 'and', '&', 'n']);

/** `Tuesday or Wednesday`, `today or tomorrow`, `the 24th or 25th`, `Mon-Wed`, `tomorrow or the day after`: first day to last. */
function joinedPoint(context: TimeContext, at: number, between: boolean): Point | null {
  const first = plainPoint(context, at);
  if (!first || first.rule === 'clock') return first;
  const join = wordAt(context, first.last + 1);
  if (!JOINS.has(join)) return first;
  let start = first.last + 2;
  if (join === 'or' && /^(maybe|perhaps|else|even)$/.test(wordAt(context, start))) start++;
  const second = dayAfter(context, first, start) ?? laterPoint(context, first, start);
  if (!second?.toCome || !first.toCome || second.rule === 'clock') return first;
  const spoken = /^(and|&|n)$/.test(join);
  if (spoken && !between && !(isWeekdayName(wordAt(context, start)) && /weekday/.test(first.rule)))
    return first;
  if (second.toCome[1] <= first.toCome[0]) return first;
  return {
    last: second.last,
    rule: 'joined',
    toCome: [first.toCome[0], second.toCome[1]],
    done: bothDone(first, second),
  };
}

function bothDone(first: Point, second: Point): Days | null {
  if (!first.done || !second.done) return null;
  return [Math.min(first.done[0], second.done[0]), Math.max(first.done[1], second.done[1])];
}

/** The second day counts from the first: on a Sunday, `Saturday or Sunday` ends tomorrow week. */
function laterPoint(context: TimeContext, first: Point, start: number): Point | null {
  const own = plainPoint(context, start);
  const counted =
    own && /weekday|day-of-month/.test(own.rule) && first.toCome
      ? plainPoint({ ...context, day: first.toCome[0] }, start)
      : own;
  return counted ? { ...counted, done: own?.done ?? null } : bareDayOfMonth(context, first, start);
}

/** `the 24th or 25th`, `on the 24th or the 25th`, `14 to 16 March`: the second figure leans on the first. */
function bareDayOfMonth(context: TimeContext, first: Point, start: number): Point | null {
  const number = context.numberAt.get(start);
  if (!/date|day-of-month/.test(first.rule) || !number || number.form !== 'ordinal' || !first.toCome)
    return null;
  return spreadFrom(first, number.value, number.last);
}

function spreadFrom(first: Point, value: number, last: number): Point | null {
  const on = first.toCome?.[0];
  if (on === undefined) return null;
  for (let day = on + 1; day <= on + 31; day++) {
    if (civilOf(day).dayOfMonth === value)
      return { last, rule: 'day-of-month', toCome: [day, day], done: null };
  }
  return null;
}

/** `… or the day after`, `… or the next day`. */
function dayAfter(context: TimeContext, first: Point, start: number): Point | null {
  const begin = wordAt(context, start) === 'the' ? start + 1 : start;
  const words = `${wordAt(context, begin)} ${wordAt(context, begin + 1)}`;
  if (words !== 'day after' && words !== 'next day' && words !== 'following day') return null;
  const day = first.toCome?.[1];
  const last = wordAt(context, begin + 2) === 'tomorrow' ? begin + 2 : begin + 1;
  return day === undefined ? null : { last, rule: 'day-after', toCome: [day + 1, day + 1], done: null };
}
