/**
 * Studentised range, for Tukey's honest difference: the range of k normal means over a standard deviation with df degrees of
 * freedom. Straight integration by the trapezoid rule, which for such smooth bells is exact to many figures.
 */
import { above0, between } from '../check-number.ts';
import { type Fault, firstFault, isFault } from '../fault.ts';
import { logGamma } from './incomplete-beta.ts';

/** Tukey's honest difference, unit of the means: what any two of all `k` may differ by chance, `p` of the times. */
export function tukeyDifference(
  analysis: { seMean: number; error: { df: number } },
  k: number,
  p = 0.05,
): number | Fault {
  const q = studentisedRangeCritical(p, k, analysis.error.df);
  return isFault(q) ? q : q * analysis.seMean;
}

/** The q that is passed with chance `p` (0.05 for 5 %) among `k` means. Means 2 to 100, df 1 or more. */
export function studentisedRangeCritical(p: number, k: number, df: number): number | Fault {
  const wrong = firstFault(
    between(p, 0.001, 0.5, 'chance'),
    between(k, 2, 100, 'means'),
    above0(df, 'degrees of freedom'),
    between(df, 1, 10_000, 'degrees of freedom'),
  );
  if (wrong) return wrong;
  return whereItCrosses((q) => rangeChance(q, k, df) - (1 - p));
}

/** Root of a rising function by false position with the Illinois change, from 0 upwards: ten steps instead of forty halvings. */
function whereItCrosses(rising: (q: number) => number): number {
  let low = 0;
  let below = rising(low);
  let high = 4;
  let above = rising(high);
  while (above < 0) {
    [low, below] = [high, above];
    high *= 2;
    above = rising(high);
  }
  for (let step = 0; step < 200 && high - low > 1e-10 * high; step++) {
    const middle = high - (above * (high - low)) / (above - below);
    const there = rising(middle);
    if (Math.abs(there) < 1e-13) return middle;
    if (there < 0) [low, below, above] = [middle, there, above / 2];
    else [high, above, below] = [middle, there, below / 2];
  }
  return (low + high) / 2;
}

/** Chance of a range up to q: over the standard deviation s, whose density is taken in its logarithm. */
function rangeChance(q: number, k: number, df: number): number {
  const scale = Math.log(2) + (df / 2) * Math.log(df / 2) - logGamma(df / 2);
  const step = Math.min(0.1, 0.3 / Math.sqrt(2 * df));
  const last = Math.log(1 + 9 / Math.sqrt(df));
  let sum = 0;
  for (let u = -Math.max(32 / df, 9 / Math.sqrt(df)); u <= last; u += step) {
    const density = Math.exp(scale + df * u - (df * Math.exp(2 * u)) / 2);
    if (density > 1e-17) sum += density * rangeOfNormals(q * Math.exp(u), k);
  }
  return sum * step;
}

const GRID_STEP = 0.2;
const GRID = Array.from({ length: 81 }, (_, index) => -8 + index * GRID_STEP);
const BELOW = GRID.map(normalBelow);
const HEIGHT = GRID.map((z) => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI));

/** Chance that k standard normals lie within a width. */
function rangeOfNormals(width: number, k: number): number {
  let sum = 0;
  for (let index = 0; index < GRID.length; index++) {
    const inside = BELOW[index]! - normalBelow(GRID[index]! - width);
    sum += HEIGHT[index]! * inside ** (k - 1);
  }
  return k * sum * GRID_STEP;
}

/** Chance of a standard normal below z: Marsaglia 2004, J. Stat. Softw. 11(4), series. */
function normalBelow(z: number): number {
  if (z < -8) return 0;
  if (z > 8) return 1;
  let term = z;
  let sum = z;
  for (let i = 3; Math.abs(term) > 1e-17 * Math.abs(sum) && i < 400; i += 2) {
    term *= (z * z) / i;
    sum += term;
  }
  return 0.5 + (sum * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI);
}
