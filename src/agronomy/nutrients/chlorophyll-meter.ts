/** Chlorophyll meter: fixed thresholds move with season and variety; a reference strip with ample nitrogen is surer. */
import { above0, between, eachOf } from '../check-number.ts';
import { type Fault, firstFault } from '../fault.ts';
import type { Sourced } from '../source.ts';
import { meanOf } from '../statistics/describe.ts';

export interface MeterThreshold extends Sourced {
  spad: number;
  holdsFor: string;
}

export const METER_THRESHOLDS: readonly MeterThreshold[] = [
  {
    spad: 35,
    holdsFor: 'dry season, IR72-type transplanted indica; 29-39 were tried elsewhere (Babu et al. 2000)',
    source: 'Peng et al. 1996, Field Crops Research 47:243-252, from memory',
    unconfirmed: true,
  },
];

export interface MeterReading extends Sourced {
  mean: number;
  belowThreshold: boolean;
  holdsFor: string;
}

export function meterReading(readings: readonly number[], threshold: MeterThreshold): MeterReading | Fault {
  const wrong = firstFault(spads(readings), between(threshold.spad, 1, 80, 'threshold'));
  if (wrong) return wrong;
  const mean = meanOf(readings);
  const { spad, holdsFor, source, unconfirmed } = threshold;
  return { mean, belowThreshold: mean < spad, holdsFor, source, unconfirmed };
}

/** Plot over reference, %: less dependent on variety and season than a fixed value (Sensors 20:1127, 2020). */
export function sufficiencyPercent(plot: readonly number[], reference: readonly number[]): number | Fault {
  const wrong = firstFault(spads(plot), spads(reference));
  if (wrong) return wrong;
  return above0(meanOf(reference), 'mean of the reference') ?? (100 * meanOf(plot)) / meanOf(reference);
}

const spads = (readings: readonly number[]): Fault | null =>
  eachOf(readings, 1, 'meter readings', (value, what) => between(value, 0, 80, what));
