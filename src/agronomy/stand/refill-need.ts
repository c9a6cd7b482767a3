import { above0, between, wholeCount } from '../check-number.ts';
import { type Fault, firstFault, isFault } from '../fault.ts';
import type { Sourced } from '../source.ts';
import { missingHillsPercent } from './hills.ts';

export interface SeedlingsPerHill extends Sourced {
  crop: string;
  from: number;
  to: number;
}

/** For each week that seedlings are older than they should be, one more a hill (PhilRice). */
export const SEEDLINGS_PER_HILL: readonly SeedlingsPerHill[] = [
  { crop: 'inbred', from: 2, to: 3, source: 'PhilRice' },
  { crop: 'hybrid', from: 1, to: 2, source: 'PhilRice' },
  { crop: 'late planting or old seedlings', from: 5, to: 6, source: 'RKMP-DRR' },
  { crop: 'system of rice intensification, 15 days old', from: 1, to: 2, source: 'TNAU' },
];

export interface RefillNeed {
  hills: number;
  seedlings: number;
  missingPercent: number;
}

/** Seedlings to carry to the plot. `sparePercent` for what breaks on the way; 10 is common practice. */
export function refillNeed(gap: {
  expected: number;
  present: number;
  seedlingsPerHill: number;
  sparePercent?: number;
}): RefillNeed | Fault {
  const spare = gap.sparePercent ?? 10;
  const wrong = firstFault(
    wholeCount(gap.seedlingsPerHill, 'seedlings a hill'),
    above0(gap.seedlingsPerHill, 'seedlings a hill'),
    between(spare, 0, 100, 'spare in %'),
  );
  if (wrong) return wrong;
  const missingPercent = missingHillsPercent(gap.expected, gap.present);
  if (isFault(missingPercent)) return missingPercent;
  const hills = gap.expected - gap.present;
  const seedlings = Math.ceil(withSpare(hills * gap.seedlingsPerHill, spare));
  return { hills, seedlings, missingPercent };
}

/** In hundredths first, so that 110 % of 10 is 11 and not 11.000000000000002. */
const withSpare = (seedlings: number, sparePercent: number): number =>
  (seedlings * (100 + sparePercent)) / 100;
