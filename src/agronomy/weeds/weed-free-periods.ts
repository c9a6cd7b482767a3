import { atLeast0 } from '../check-number.ts';
import type { Fault } from '../fault.ts';
import type { Sourced } from '../source.ts';

export interface WeedFreePeriod extends Sourced {
  crop: string;
  countedFrom: 'transplanting' | 'sowing';
  fromDays: number;
  toDays: number;
}

/** When a crop must stand clean. They differ by place and planting. */
export const WEED_FREE_PERIODS: readonly WeedFreePeriod[] = [
  {
    crop: 'transplanted',
    countedFrom: 'transplanting',
    fromDays: 0,
    toDays: 42,
    source: 'DRR Hyderabad, weeks 1-6',
  },
  {
    crop: 'lowland',
    countedFrom: 'sowing',
    fromDays: 0,
    toDays: 56,
    source: 'IPB, IR28, first 8 weeks; counted from sowing is our reading',
    unconfirmed: true,
  },
  {
    crop: 'dry direct seeded',
    countedFrom: 'sowing',
    fromDays: 20,
    toDays: 50,
    source: 'Pakistan, three basmatis',
  },
];

/** Periods that a day of the crop lies in. */
export function weedFreePeriodsOn(
  day: number,
  countedFrom: WeedFreePeriod['countedFrom'],
): WeedFreePeriod[] | Fault {
  return (
    atLeast0(day, `days after ${countedFrom}`) ??
    WEED_FREE_PERIODS.filter((p) => p.countedFrom === countedFrom && day >= p.fromDays && day <= p.toDays)
  );
}

export interface WeedLossAnchor extends Sourced {
  words: string;
}

/** Losses once measured, for a feeling of size; not a forecast. */
export const WEED_LOSS_ANCHORS: readonly WeedLossAnchor[] = [
  {
    words: 'Echinochloa glabrescens in 5 % of hills: 7 % less; in half of them: 87 % less',
    source: 'IRRI 1987, in a weed-control handbook p. 18',
  },
  { words: 'Cyperus difformis: 12-50 % less', source: 'IRRI' },
];
