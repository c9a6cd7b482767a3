/** When a treated crop may be cut: days on the label, from the last treatment; protects whoever eats it. */
import { atLeast0, between, wholeCount } from '../check-number.ts';
import { dayPlus } from '../crop-day.ts';
import { type Fault, fault, firstFault, isFault } from '../fault.ts';
import { reentryFrom } from './re-entry.ts';

/** First day on which harvest is allowed. */
export function earliestHarvestOn(lastAppliedOn: string, labelDays: number): string | Fault {
  return (
    firstFault(
      wholeCount(labelDays, 'pre-harvest interval in days'),
      between(labelDays, 0, 365, 'pre-harvest interval in days'),
    ) ?? dayPlus(lastAppliedOn, labelDays)
  );
}

/** Hours after treatment before harvest: re-entry wins where it is longer (Washington State Univ., Crop Protection Guide). */
export function harvestNotBeforeHours(reentryHours: number, preHarvestHours: number): number | Fault {
  return (
    firstFault(
      atLeast0(reentryHours, 're-entry in hours'),
      atLeast0(preHarvestHours, 'pre-harvest interval in hours'),
    ) ?? Math.max(reentryHours, preHarvestHours)
  );
}

export interface Application {
  product: string;
  /** `2024-03-10T06:30`. */
  appliedAt: string;
  reentryHours: number;
  preHarvestDays: number;
}

/** First day on which every application allows harvest, and the one that holds it up. */
export function harvestAfterAll(
  applications: readonly Application[],
): { on: string; because: string } | Fault {
  let last: { on: string; because: string } | null = null;
  for (const { product, appliedAt, reentryHours, preHarvestDays } of applications) {
    const byHarvest = earliestHarvestOn(appliedAt.slice(0, 10), preHarvestDays);
    if (isFault(byHarvest)) return fault(`${product}: ${byHarvest.fault}`);
    const opens = reentryFrom(appliedAt, reentryHours);
    if (isFault(opens)) return fault(`${product}: ${opens.fault}`);
    const byReentry = dayOfWork(opens);
    const on = laterDay(byReentry, byHarvest);
    if (!last || on > last.on)
      last = {
        on,
        because: `${product}, ${on === byHarvest ? 'pre-harvest interval' : 're-entry interval'}`,
      };
  }
  return last ?? fault('no application is given');
}

const dayOfWork = (opens: string): string => opens.slice(0, 10);

const laterDay = (a: string, b: string): string => [a, b].sort()[1]!;
