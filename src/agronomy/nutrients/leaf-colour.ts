/**
 * Leaf colour chart. Ten healthy hills; the youngest fully open leaf, its middle, in the shade of the body, by the same
 * person at the same time of day; halves allowed; the mean counts (IRRI). Numbers depend on the chart, so the rule brings it.
 */
import { between, eachOf } from '../check-number.ts';
import { type Fault, fault, firstFault } from '../fault.ts';
import type { Sourced } from '../source.ts';
import { meanOf } from '../statistics/describe.ts';

export interface LeafColourRule extends Sourced {
  name: string;
  /** Which chart the numbers belong to. */
  chart: string;
  /** Nitrogen is due when the mean is below. */
  critical: number;
  nKgPerHa: number;
}

const TAMIL_NADU = 'Sudhalakshmi, Velu & Thiyagarajan 2008, Agric. Reviews 29(4):306-310, Tamil Nadu';
const rule = (name: string, critical: number, nKgPerHa: number): LeafColourRule => ({
  name,
  chart: 'six shades',
  critical,
  nKgPerHa,
  source: TAMIL_NADU,
});

export const LEAF_COLOUR_RULES: readonly LeafColourRule[] = [
  rule('light-green varieties, kuruvai or navarai season', 3, 35),
  rule('light-green varieties, samba or thaladi season', 3, 30),
  rule('other varieties and hybrids, kuruvai or navarai season', 4, 35),
  rule('other varieties and hybrids, samba or thaladi season', 4, 30),
];

export const LEAF_COLOUR_READINGS = {
  wanted: 10,
  everyDays: [7, 10],
  fromDaysAfterTransplanting: 14,
  source: 'IRRI',
} as const;

export interface LeafColourSuggestion extends Sourced {
  mean: number;
  readings: number;
  belowCritical: boolean;
  /** Null where nothing is due. Only a suggestion: the trial's protocol goes before it, which the caller sees to. */
  suggestedNKgPerHa: number | null;
  remarks: string[];
}

export function leafColourSuggestion(
  readings: readonly number[],
  by: LeafColourRule,
): LeafColourSuggestion | Fault {
  const wrong = firstFault(
    eachOf(readings, 1, 'readings', (value, what) => between(value, 1, 6, what)),
    between(by.critical, 1, 6, 'critical value'),
    between(by.nKgPerHa, 0, 150, 'N of the rule in kg/ha'),
  );
  if (wrong) return wrong;
  const odd = readings.find((reading) => !Number.isInteger(reading * 2));
  if (odd !== undefined) return fault(`a leaf colour is read in halves, not ${odd}`);
  const mean = meanOf(readings);
  const belowCritical = mean < by.critical;
  return {
    mean,
    readings: readings.length,
    belowCritical,
    suggestedNKgPerHa: belowCritical ? by.nKgPerHa : null,
    remarks: [
      `holds for a chart with ${by.chart}`,
      ...(readings.length < LEAF_COLOUR_READINGS.wanted
        ? [`only ${readings.length} of 10 hills were read`]
        : []),
    ],
    source: by.source,
    unconfirmed: by.unconfirmed,
  };
}
