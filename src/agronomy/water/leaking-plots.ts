/** Which of several plots loses more than its sisters under the same sky. */
import { above0, atLeast0, eachOf, finite } from '../check-number.ts';
import { type Fault, firstFault } from '../fault.ts';

export interface PlotLoss {
  plot: string;
  lossMmPerDay: number;
}

export interface LeakVerdict extends PlotLoss {
  /** Against the middle plot of them all. */
  overMiddleMmPerDay: number;
  leaks: boolean;
}

/**
 * Largest loss first. A plot leaks when it stands above the middle one by more than two readings can be wrong: each of the four
 * readings (two plots, start and end) is off by up to `readingErrorMm` (5 mm by ruler, common practice), so 2 x error x
 * root 4 over the days. Calm water is read; wind piles it up.
 */
export function leakingPlots(
  plots: readonly PlotLoss[],
  days: number,
  readingErrorMm = 5,
): LeakVerdict[] | Fault {
  const losses = plots.map(({ lossMmPerDay }) => lossMmPerDay);
  const wrong = firstFault(
    eachOf(losses, 3, 'plots to compare', finite),
    above0(days, 'days between the readings'),
    atLeast0(readingErrorMm, 'reading error in mm'),
  );
  if (wrong) return wrong;
  const middle = median(losses);
  const marginMmPerDay = (2 * readingErrorMm * 2) / days;
  return plots
    .map((plot) => {
      const overMiddleMmPerDay = plot.lossMmPerDay - middle;
      return { ...plot, overMiddleMmPerDay, leaks: overMiddleMmPerDay > marginMmPerDay };
    })
    .sort((a, b) => b.lossMmPerDay - a.lossMmPerDay);
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}
