/** From the note's own day to the days meant. Every rule is one line of the guide's table of times, or its neighbour. */
import { addMonths, civilOf, mondayOf, monthEnd, weekdayOf } from './days.ts';

/** First and last day, both included. */
export type Days = [from: number, to: number];
export type Reckon = (day: number) => Days | null;

export const onDay =
  (shift: number): Reckon =>
  (day) => [day + shift, day + shift];

export const upTo =
  (shift: number): Reckon =>
  (day) => [day, day + shift];

export const pastDays =
  (count: number): Reckon =>
  (day) => [day - count, day];

/** Friday of the week of `day`, Sunday where `day` is a Saturday or Sunday. */
export const weekEndOf = (day: number): number => mondayOf(day) + (weekdayOf(day) < 5 ? 4 : 6);

export const restOfWeek: Reckon = (day) => [day, weekEndOf(day)];
export const weekSoFar: Reckon = (day) => [mondayOf(day), day];

/** A part of a week, counted from its Monday: `weekPart(1, 0, 2)` is Monday to Wednesday of next week. */
export const weekPart =
  (weeksOn: number, first: number, last: number): Reckon =>
  (day) => {
    const monday = mondayOf(day) + 7 * weeksOn;
    return [monday + first, monday + last];
  };

/** As `weekPart` of the week that runs, never before today. */
export const restOfWeekPart =
  (first: number, last: number): Reckon =>
  (day) => {
    const monday = mondayOf(day);
    return monday + last < day ? null : [Math.max(day, monday + first), monday + last];
  };

/** Up to Friday before the weekend; on a Saturday or Sunday the next weekend is meant. */
export const beforeWeekend: Reckon = (day) => [day, mondayOf(day) + (weekdayOf(day) < 5 ? 4 : 11)];

export const weekendToCome: Reckon = restOfWeekPart(5, 6);
export const weekendGone: Reckon = (day) => {
  const saturday = mondayOf(day) + (weekdayOf(day) < 5 ? -2 : 5);
  return [saturday, Math.min(day, saturday + 1)];
};

/** First such weekday on or after the day. */
export const weekdayFrom = (day: number, weekday: number): number =>
  day + ((weekday - weekdayOf(day) + 7) % 7);
/** Last such weekday on or before the day. */
export const weekdayBack = (day: number, weekday: number): number =>
  day - ((weekdayOf(day) - weekday + 7) % 7);

const monthStart = (day: number): number => day - civilOf(day).dayOfMonth + 1;

/** A whole month, this one where `monthsOn` is 0. */
export const wholeMonth =
  (monthsOn: number): Reckon =>
  (day) => {
    const start = addMonths(monthStart(day), monthsOn);
    return [start, monthEnd(start)];
  };

export const restOfMonth: Reckon = (day) => [day, monthEnd(day)];
export const monthSoFar: Reckon = (day) => [monthStart(day), day];
export const lastOfMonth =
  (monthsOn: number): Reckon =>
  (day) => {
    const end = monthEnd(addMonths(monthStart(day), monthsOn));
    return [end, end];
  };

/** Days 1 to 10, 11 to 20 and 21 to the end are early, mid and late (common practice). */
export function thirdOfMonth(start: number, part: 'early' | 'mid' | 'late'): Days {
  if (part === 'early') return [start, start + 9];
  return part === 'mid' ? [start + 10, start + 19] : [start + 20, monthEnd(start)];
}
