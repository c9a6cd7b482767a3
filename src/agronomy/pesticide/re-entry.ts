/** When people may go in again. The label's interval goes before everything here. */
import { Temporal } from 'temporal-polyfill';
import { atLeast0, between, eachOf } from '../check-number.ts';
import { type Fault, fault, firstFault, isFault } from '../fault.ts';
import type { Sourced } from '../source.ts';

export type AcuteCategory = 'I' | 'II' | 'III' | 'IV';

const EPA = 'US EPA pesticide label training, module 3 p. 27; 40 CFR 156.208';

/** Hours, by the worst acute category of the active ingredients; for where a label is silent, in the United States. */
export const DEFAULT_REENTRY_HOURS: Readonly<Record<AcuteCategory, number>> = {
  I: 48,
  II: 24,
  III: 12,
  IV: 12,
};
/** Organophosphates that inhibit cholinesterase, outdoors where less than 25 in of rain falls a year. */
export const ORGANOPHOSPHATE_DRY_HOURS = 72;

export interface ReentryHours extends Sourced {
  hours: number;
  /** Whether the label said so. */
  fromLabel: boolean;
  words: string;
}

const REMINDER = 'The label and national law decide; where they ask for longer or for more, that holds.';

export function reentryHours(product: {
  labelHours?: number;
  category?: AcuteCategory;
  organophosphateInDryArea?: boolean;
}): ReentryHours | Fault {
  const { labelHours, category, organophosphateInDryArea } = product;
  if (labelHours !== undefined)
    return (
      between(labelHours, 0, 24 * 90, 're-entry interval in hours') ?? {
        hours: labelHours,
        fromLabel: true,
        words: REMINDER,
        source: 'label',
      }
    );
  if (category === undefined)
    return fault('read the re-entry interval from the label: without it no time can be given');
  const byCategory = DEFAULT_REENTRY_HOURS[category];
  if (byCategory === undefined) return fault(`an acute category is I, II, III or IV, not ${category}`);
  const hours = organophosphateInDryArea ? Math.max(byCategory, ORGANOPHOSPHATE_DRY_HOURS) : byCategory;
  return { hours, fromLabel: false, words: REMINDER, source: EPA };
}

/** Of a mixture the longest holds (Washington State Univ.; Oregon IPM Center 2020). */
export function mixtureReentryHours(hours: readonly number[]): number | Fault {
  return eachOf(hours, 1, 're-entry intervals in hours', atLeast0) ?? Math.max(...hours);
}

/** `2024-03-10T06:30` plus the interval, same form, by the clock of the place. */
export function reentryFrom(appliedAt: string, hours: number): string | Fault {
  const at = clockTime(appliedAt);
  if (isFault(at)) return at;
  const wrong = firstFault(
    atLeast0(hours, 're-entry interval in hours'),
    between(hours, 0, 24 * 90, 'interval in hours'),
  );
  return wrong ?? at.add({ minutes: Math.ceil(hours * 60) }).toString({ smallestUnit: 'minute' });
}

function clockTime(written: string): Temporal.PlainDateTime | Fault {
  if (!/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2})?$/.test(written))
    return fault(`a time is written like 2024-03-10T06:30, not ${written}`);
  try {
    return Temporal.PlainDateTime.from(written, { overflow: 'reject' });
  } catch {
    return fault(`${written} is not in the calendar`);
  }
}
