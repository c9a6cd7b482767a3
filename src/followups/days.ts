import { Temporal } from 'temporal-polyfill';

export const dayOf = (moment: string): string => moment.slice(0, 10);

/** `addDays('2030-02-27', 2)` is `2030-03-01`. */
export function addDays(day: string, days: number): string {
  return days === 0 ? day : Temporal.PlainDate.from(day).add({ days }).toString();
}

/** Days from `from` to `to`; below nought where `to` is the earlier. */
export function daysBetween(from: string, to: string): number {
  return from === to ? 0 : Temporal.PlainDate.from(from).until(to, { largestUnit: 'day' }).days;
}

export const earlier = (a: string, b: string): string => (a < b ? a : b);
export const later = (a: string, b: string): string => (a > b ? a : b);

const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** `Fri 14 Mar`. */
export function dayWords(day: string): string {
  const date = Temporal.PlainDate.from(day);
  return `${WEEKDAYS[date.dayOfWeek - 1]} ${date.day} ${MONTHS[date.month - 1]}`;
}
