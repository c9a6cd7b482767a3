/**
 * Days as `YYYY-MM-DD`. A farm's notes share a few hundred days while a fold asks for them a hundred thousand
 * times, so the count of each day is worked out once and remembered.
 */
import { Temporal } from 'temporal-polyfill';

const EPOCH = Temporal.PlainDate.from('1970-01-01');
const counts = new Map<string, number>();
const days = new Map<number, string>();

function countOf(day: string): number {
  const known = counts.get(day);
  if (known !== undefined) return known;
  const count = EPOCH.until(day, { largestUnit: 'day' }).days;
  counts.set(day, count);
  return count;
}

function dayAt(count: number): string {
  const known = days.get(count);
  if (known !== undefined) return known;
  const day = EPOCH.add({ days: count }).toString();
  days.set(count, day);
  return day;
}

export const dayOf = (moment: string): string => moment.slice(0, 10);

/** `addDays('2030-02-27', 2)` is `2030-03-01`. */
export const addDays = (day: string, more: number): string => (more === 0 ? day : dayAt(countOf(day) + more));

/** Days from `from` to `to`; below nought where `to` is the earlier. */
export const daysBetween = (from: string, to: string): number =>
  from === to ? 0 : countOf(to) - countOf(from);

export const earlier = (a: string, b: string): string => (a < b ? a : b);
export const later = (a: string, b: string): string => (a > b ? a : b);

const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const words = new Map<string, string>();

/** `Fri 14 Mar`. */
export function dayWords(day: string): string {
  const known = words.get(day);
  if (known) return known;
  const date = Temporal.PlainDate.from(day);
  const said = `${WEEKDAYS[date.dayOfWeek - 1]} ${date.day} ${MONTHS[date.month - 1]}`;
  words.set(day, said);
  return said;
}
