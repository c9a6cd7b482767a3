/** When work was or is to be done: every wording of a day, a span of days or an event, read from the note's own day. */
import { findNumbers } from '../numbers/find-numbers.ts';
import type { When } from '../record.ts';
import type { Token } from '../text.ts';
import { boundedPoint } from './bounded-point.ts';
import { clockPoint } from './clock-point.ts';
import { dayFromIso, isoOf } from './days.ts';
import { eventTime } from './event-times.ts';
import { datePoint, isMonthFirst, monthPoint } from './month-point.ts';
import { phrasePoint } from './phrase-point.ts';
import { type Point, type ReadPoint, type TimeContext, wordAt } from './point.ts';
import { pastSpanPoint, spanPoint } from './span-point.ts';
import type { EventAt, TimeFound } from './time-found.ts';
import { weekdayPoint, weekThenWeekday } from './weekday-point.ts';

export type { EventAt, TimedEvent, TimeFound } from './time-found.ts';

/** Each way to name days; the one that takes in the most words wins. */
const POINTS: readonly ReadPoint[] = [
  phrasePoint,
  boundedPoint,
  weekThenWeekday,
  weekdayPoint,
  datePoint,
  spanPoint,
  pastSpanPoint,
  monthPoint,
  clockPoint,
];

/** Left to right, without overlaps. `observedAt` is `YYYY-MM-DDTHH:MM`; nothing is found where it holds no day. Never throws. */
export function findTimes(tokens: Token[], observedAt: string, eventAt: EventAt): TimeFound[] {
  const day = dayFromIso(observedAt);
  if (day === null) return [];
  const numberAt = new Map(findNumbers(tokens).map((number) => [number.first, number]));
  const context: TimeContext = { tokens, numberAt, day, monthFirst: isMonthFirst({ tokens, numberAt, day }) };
  const found: TimeFound[] = [];
  for (let at = 0; at < tokens.length; ) {
    const time = readTime(context, at, eventAt);
    if (time && (time.toCome || time.done)) found.push(time);
    at = time ? time.last + 1 : at + 1;
  }
  return found;
}

function readTime(context: TimeContext, at: number, eventAt: EventAt): TimeFound | null {
  const point = longestPoint(context, at);
  const event = eventTime(context, at, eventAt);
  if (event && (!point || event.last > point.last)) return event;
  return point && !isIdle(context, at, point) ? asTime(context, at, point) : null;
}

export function longestPoint(context: TimeContext, at: number): Point | null {
  let longest: Point | null = null;
  for (const read of POINTS) {
    const point = read(context, at);
    if (point && (!longest || point.last > longest.last)) longest = point;
  }
  return longest;
}

/** `too late now`, `by now` name no time, nor does the day in `yesterday's entry`. */
function isIdle(context: TimeContext, at: number, point: Point): boolean {
  if (point.rule !== 'now') return false;
  for (let back = at - 1; back >= Math.max(0, at - 5); back--) {
    const word = wordAt(context, back);
    if (/^[.,;:!?]$/.test(word)) return false;
    if (word === 'too') return true;
  }
  return false;
}

function asTime(context: TimeContext, first: number, point: Point): TimeFound {
  const rule = isNoteDay(context, first, point) ? 'note-day' : point.rule;
  return { first, last: point.last, rule, toCome: whenOf(point.toCome), done: whenOf(point.done) };
}

const whenOf = (days: Point['toCome']): When | null => days && { from: isoOf(days[0]), to: isoOf(days[1]) };

/** `Saturday round.`, `tuesday 2nd of september north one ...`: at the head of a note, the day it was written. */
function isNoteDay(context: TimeContext, first: number, point: Point): boolean {
  const plain =
    /^(weekday|date|weekday-and-date|day-of-month)$/.test(point.rule) &&
    !/^(on|by|this|for|come)$/.test(wordAt(context, first));
  return first <= 2 && plain && point.done?.[0] === context.day;
}
