/**
 * Civil days as whole numbers, 0 on 1970-01-01, in the proleptic Gregorian calendar. The reader also runs in the
 * phone, so it carries this page of arithmetic instead of a calendar library; tests hold it against one.
 */

/** Days before the first of each month in a common year. */
const DAYS_BEFORE = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334] as const;

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

/** Leap days from year 1 to the end of `year`. */
const leapDaysTo = (year: number): number =>
  Math.floor(year / 4) - Math.floor(year / 100) + Math.floor(year / 400);

export function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeap(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

/** `month` is 1 to 12; `dayOfMonth` must exist in it. */
export function dayOf(year: number, month: number, dayOfMonth: number): number {
  const before = (year - 1) * 365 + leapDaysTo(year - 1);
  const inYear = (DAYS_BEFORE[month - 1] ?? 0) + (month > 2 && isLeap(year) ? 1 : 0) + dayOfMonth - 1;
  return before + inYear - EPOCH;
}
/** Days from 0001-01-01 to 1970-01-01. */
const EPOCH = 1969 * 365 + leapDaysTo(1969);

export interface CivilDate {
  year: number;
  month: number;
  dayOfMonth: number;
}

export function civilOf(day: number): CivilDate {
  let year = 1970 + Math.floor(day / 365.2425);
  while (dayOf(year + 1, 1, 1) <= day) year++;
  while (dayOf(year, 1, 1) > day) year--;
  let month = 12;
  while (dayOf(year, month, 1) > day) month--;
  return { year, month, dayOfMonth: day - dayOf(year, month, 1) + 1 };
}

/** `YYYY-MM-DD` at the start of `text`; null where no such day stands there. */
export function dayFromIso(text: string): number | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})/.exec(text);
  if (!match) return null;
  const [year, month, dayOfMonth] = [Number(match[1]), Number(match[2]), Number(match[3])];
  const exists = month >= 1 && month <= 12 && dayOfMonth >= 1 && dayOfMonth <= daysInMonth(year, month);
  return exists ? dayOf(year, month, dayOfMonth) : null;
}

export function isoOf(day: number): string {
  const { year, month, dayOfMonth } = civilOf(day);
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(dayOfMonth).padStart(2, '0')}`;
}

/** 0 on Monday to 6 on Sunday. */
export const weekdayOf = (day: number): number => (((day + 3) % 7) + 7) % 7;

export const mondayOf = (day: number): number => day - weekdayOf(day);

/** Same day of the month so many months on; the last day of that month where it is too short. */
export function addMonths(day: number, months: number): number {
  const { year, month, dayOfMonth } = civilOf(day);
  const count = year * 12 + month - 1 + months;
  const [toYear, toMonth] = [Math.floor(count / 12), (count % 12) + 1];
  return dayOf(toYear, toMonth, Math.min(dayOfMonth, daysInMonth(toYear, toMonth)));
}

export function monthEnd(day: number): number {
  const { year, month } = civilOf(day);
  return dayOf(year, month, daysInMonth(year, month));
}
