/** What brings counts and percentages nearer to an even spread. Means are shown back in the unit measured. Gomez & Gomez 1984, chapter 7. */
import { atLeast0, between, finite } from '../check-number.ts';
import type { Fault } from '../fault.ts';
import type { Sourced } from '../source.ts';

export interface Transformation extends Sourced {
  name: 'log10(x+1)' | 'square root of x+0.5' | 'arcsine of the root of a percentage';
  fits: string;
  apply: (value: number) => number | Fault;
  /** For a mean. It is lower than the mean of what was measured. */
  back: (transformed: number) => number | Fault;
}

const degrees = (rad: number): number => (180 * rad) / Math.PI;

export const TRANSFORMATIONS: readonly Transformation[] = [
  {
    name: 'log10(x+1)',
    fits: 'counts whose spread grows with the mean, zeros among them',
    apply: (value) => atLeast0(value, 'count') ?? Math.log10(value + 1),
    back: (transformed) => between(transformed, 0, 300, 'mean of logs') ?? 10 ** transformed - 1,
    source: 'Gomez & Gomez 1984, Table 7.16',
  },
  {
    name: 'square root of x+0.5',
    fits: 'small counts, percentages up to 30 or from 70 up',
    apply: (value) => atLeast0(value, 'count') ?? Math.sqrt(value + 0.5),
    back: (transformed) =>
      between(transformed, 0, 1e100, 'mean of roots') ?? Math.max(0, transformed ** 2 - 0.5),
    source: 'Gomez & Gomez 1984, chapter 7, from memory',
    unconfirmed: true,
  },
  {
    name: 'arcsine of the root of a percentage',
    fits: 'percentages from counts that spread over the whole range; result in degrees',
    apply: (value) => between(value, 0, 100, 'percentage') ?? degrees(Math.asin(Math.sqrt(value / 100))),
    back: (transformed) =>
      finite(transformed, 'mean angle') ??
      between(transformed, 0, 90, 'mean angle in degrees') ??
      100 * Math.sin((transformed * Math.PI) / 180) ** 2,
    source: 'Gomez & Gomez 1984, chapter 7, from memory',
    unconfirmed: true,
  },
];
