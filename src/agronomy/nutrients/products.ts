/** What fertilisers hold, percent by weight of N, P2O5, K2O and S. A bag's own label goes before this table. */
import { type Fault, fault } from '../fault.ts';
import type { Sourced } from '../source.ts';

export interface Fertiliser extends Sourced {
  name: string;
  alsoCalled: readonly string[];
  nPercent: number;
  p2o5Percent: number;
  k2oPercent: number;
  sPercent: number;
}

const IFA = 'International Fertilizer Association conversion tables';
const row = (
  name: string,
  alsoCalled: string[],
  [nPercent, p2o5Percent, k2oPercent, sPercent]: [number, number, number, number],
): Fertiliser => ({ name, alsoCalled, nPercent, p2o5Percent, k2oPercent, sPercent, source: IFA });

export const FERTILISERS: readonly Fertiliser[] = [
  row('urea', [], [46, 0, 0, 0]),
  row('ammonium sulphate', ['ammonium sulfate', 'sulphate of ammonia', 'AS'], [21, 0, 0, 24]),
  row('ammonium chloride', [], [25, 0, 0, 0]),
  row('diammonium phosphate', ['DAP'], [18, 46, 0, 0]),
  row('monoammonium phosphate', ['MAP'], [11, 52, 0, 0]),
  row('triple superphosphate', ['TSP'], [0, 46, 0, 0]),
  /** 16 % in many countries (memory): look at the bag. */
  row('single superphosphate', ['SSP'], [0, 15, 0, 12]),
  row('potassium chloride', ['KCl', 'MOP', 'muriate of potash'], [0, 0, 60, 0]),
  row('potassium sulphate', ['potassium sulfate', 'SOP', 'K2SO4'], [0, 0, 50, 18]),
];

const byName = new Map(
  FERTILISERS.flatMap((one) =>
    [one.name, ...one.alsoCalled].map((name) => [name.toLowerCase(), one] as const),
  ),
);

export function fertiliser(name: string): Fertiliser | Fault {
  return (
    byName.get(name.trim().toLowerCase()) ?? fault(`"${name}" is not in the table: give its percentages`)
  );
}
