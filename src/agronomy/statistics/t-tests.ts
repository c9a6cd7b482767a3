/** Two samples held against each other. Difference is first minus second; p counts both sides. */
import { eachOf, finite } from '../check-number.ts';
import { type Fault, fault, firstFault, isFault, sure } from '../fault.ts';
import { describe, meanOf } from './describe.ts';
import { tCritical, tTwoSidedP } from './distributions.ts';

export interface TTest {
  test: 'paired' | 'Welch' | 'pooled';
  t: number;
  df: number;
  p: number;
  meanDifference: number;
  /** Of the difference. */
  se: number;
  interval95: [low: number, high: number];
}

/** Values that belong together two by two: plots side by side, the same spot twice. */
export function pairedTTest(first: readonly number[], second: readonly number[]): TTest | Fault {
  if (first.length !== second.length)
    return fault(`pairs need as many values on both sides, not ${first.length} and ${second.length}`);
  const wrong = samples(first, second);
  if (wrong) return wrong;
  const { mean, se, n } = sure(describe(first.map((value, index) => value - second[index]!)));
  return finished('paired', mean, se!, n - 1);
}

/** Independent samples; spreads may differ. The one to take unless there is a reason. */
export function welchTTest(first: readonly number[], second: readonly number[]): TTest | Fault {
  const wrong = samples(first, second);
  if (wrong) return wrong;
  const a = varianceOfMean(first);
  const b = varianceOfMean(second);
  const df = (a + b) ** 2 / (a ** 2 / (first.length - 1) + b ** 2 / (second.length - 1));
  return finished('Welch', meanOf(first) - meanOf(second), Math.sqrt(a + b), df);
}

/** Independent samples taken to have one spread: Student's. */
export function pooledTTest(first: readonly number[], second: readonly number[]): TTest | Fault {
  const wrong = samples(first, second);
  if (wrong) return wrong;
  const [n, m] = [first.length, second.length];
  const squares = varianceOfMean(first) * n * (n - 1) + varianceOfMean(second) * m * (m - 1);
  const variance = squares / (n + m - 2);
  const se = Math.sqrt(variance * (1 / n + 1 / m));
  return finished('pooled', meanOf(first) - meanOf(second), se, n + m - 2);
}

function finished(test: TTest['test'], meanDifference: number, se: number, df: number): TTest | Fault {
  if (!(se > 1e-12 * Math.abs(meanDifference)))
    return fault('the values do not vary, so there is nothing to test against');
  const t = meanDifference / se;
  const critical = tCritical(0.05, df);
  const p = tTwoSidedP(t, df);
  if (isFault(critical)) return critical;
  if (isFault(p)) return p;
  const half = critical * se;
  return { test, t, df, p, meanDifference, se, interval95: [meanDifference - half, meanDifference + half] };
}

function samples(first: readonly number[], second: readonly number[]): Fault | null {
  return firstFault(
    eachOf(first, 2, 'values of the first sample', finite),
    eachOf(second, 2, 'values of the second sample', finite),
  );
}

const varianceOfMean = (values: readonly number[]): number => sure(describe(values)).se! ** 2;
