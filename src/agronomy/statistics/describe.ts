import { eachOf, finite } from '../check-number.ts';
import type { Fault } from '../fault.ts';

export interface Described {
  n: number;
  mean: number;
  /** Of a sample, n - 1 below; null from one value. */
  sd: number | null;
  /** Of the mean, sd over the root of n. */
  se: number | null;
}

/** Mean, standard deviation, standard error. Unit of the values. */
export function describe(values: readonly number[]): Described | Fault {
  const wrong = eachOf(values, 1, 'values', finite);
  if (wrong) return wrong;
  const n = values.length;
  const mean = meanOf(values);
  if (n < 2) return { n, mean, sd: null, se: null };
  const sd = Math.sqrt(squaresAround(values, mean) / (n - 1));
  return { n, mean, sd, se: sd / Math.sqrt(n) };
}

/** Not checked: for values that were. */
export const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** Not checked: for values that were. */
export const squaresAround = (values: readonly number[], centre: number): number =>
  values.reduce((sum, value) => sum + (value - centre) ** 2, 0);
