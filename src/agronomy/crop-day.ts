/** Days of the crop between two dates, and dates at a distance. Dates are `YYYY-MM-DD`. */
import { Temporal } from 'temporal-polyfill';
import { finite } from './check-number.ts';
import { type Fault, fault, isFault } from './fault.ts';

/** Whole days from `start` to `on`; 0 on the day itself. Faults on a date that is none and where `on` is earlier. */
export function daysAfter(start: string, on: string, startedWith = 'the first date'): number | Fault {
  const from = dateOf(start);
  const to = dateOf(on);
  if (isFault(from)) return from;
  if (isFault(to)) return to;
  const days = from.until(to, { largestUnit: 'days' }).days;
  return days < 0 ? fault(`${on} is before ${startedWith}, ${start}`) : days;
}

/** The date `days` later, or earlier where negative. Part days count as the whole day before. */
export function dayPlus(date: string, days: number): string | Fault {
  const from = dateOf(date);
  if (isFault(from)) return from;
  const wrong = finite(days, 'days to add');
  if (wrong) return wrong;
  if (Math.abs(days) > 100_000) return fault(`days to add must stay under 100 000, not ${days}`);
  return from.add({ days: Math.floor(days) }).toString();
}

/** Day of the year, 1 on 1 January, for the sun's formulas. */
export function dayOfYear(date: string): number | Fault {
  const day = dateOf(date);
  return isFault(day) ? day : day.dayOfYear;
}

function dateOf(date: string): Temporal.PlainDate | Fault {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(date)) return fault(`a date is written like 2024-03-10, not ${date}`);
  try {
    return Temporal.PlainDate.from(date, { overflow: 'reject' });
  } catch {
    return fault(`${date} is not in the calendar`);
  }
}
