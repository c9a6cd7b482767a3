/** Tails and quantiles of t and F. Degrees of freedom need not be whole (Welch). */
import { atLeast0, between, finite } from '../check-number.ts';
import { type Fault, firstFault } from '../fault.ts';
import { incompleteBeta, inverseIncompleteBeta } from './incomplete-beta.ts';

/** Chance of a t as far from 0 or farther, both sides. */
export function tTwoSidedP(t: number, df: number): number | Fault {
  return firstFault(finite(t, 't'), degreesOf(df)) ?? incompleteBeta(df / (df + t * t), df / 2, 0.5);
}

/** The t that is passed, either side together, with chance `p`: 0.05 for 5 %. */
export function tCritical(p: number, df: number): number | Fault {
  const wrong = firstFault(chance(p), degreesOf(df));
  if (wrong) return wrong;
  const x = inverseIncompleteBeta(p, df / 2, 0.5);
  return Math.sqrt((df * (1 - x)) / x);
}

/** Chance of an F as large or larger. */
export function fUpperP(f: number, df1: number, df2: number): number | Fault {
  return (
    firstFault(atLeast0(f, 'F'), degrees(df1, df2)) ?? incompleteBeta(df2 / (df2 + df1 * f), df2 / 2, df1 / 2)
  );
}

/** The F that is passed with chance `p`. */
export function fCritical(p: number, df1: number, df2: number): number | Fault {
  const wrong = firstFault(chance(p), degrees(df1, df2));
  if (wrong) return wrong;
  const x = inverseIncompleteBeta(p, df2 / 2, df1 / 2);
  return (df2 * (1 - x)) / (df1 * x);
}

function chance(p: number): Fault | null {
  return between(p, 1e-9, 1 - 1e-9, 'chance');
}

function degrees(df1: number, df2: number): Fault | null {
  return firstFault(degreesOf(df1), degreesOf(df2));
}

function degreesOf(df: number): Fault | null {
  return between(df, 0.1, 1e6, 'degrees of freedom');
}
