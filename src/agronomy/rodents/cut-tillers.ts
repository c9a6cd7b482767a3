/** Cut tillers from counts, and the mean of a field counted in strata. */
import { above0, between, eachOf, wholeCount } from '../check-number.ts';
import { type Fault, fault, firstFault } from '../fault.ts';

/** Ordinary definition: cut over all, %. */
export function cutTillersPercent(cut: number, uncut: number): number | Fault {
  const wrong = firstFault(
    wholeCount(cut, 'cut tillers'),
    wholeCount(uncut, 'uncut tillers'),
    above0(cut + uncut, 'tillers counted'),
  );
  return wrong ?? (100 * cut) / (cut + uncut);
}

export interface Stratum {
  /** Share of the area, or the area itself: only the proportion counts. */
  weight: number;
  percent: number;
}

/** Mean by area, %: rats cut the interior more than the edge, so a count along the bunds alone is too low. */
export function stratifiedPercent(strata: readonly Stratum[]): number | Fault {
  const wrong = firstFault(
    eachOf(
      strata.map(({ weight }) => weight),
      1,
      'area shares',
      above0,
    ),
    eachOf(
      strata.map(({ percent }) => percent),
      1,
      'percentages',
      (value, what) => between(value, 0, 100, what),
    ),
  );
  if (wrong) return wrong;
  const whole = strata.reduce((sum, { weight }) => sum + weight, 0);
  return strata.reduce((sum, { weight, percent }) => sum + weight * percent, 0) / whole;
}

export interface StratumCount {
  name: string;
  areaM2: number;
  cut: number;
  uncut: number;
}

/** From counts in the strata, %. A field counted in one stratum only is refused. */
export function cutTillersByStrata(counts: readonly StratumCount[]): number | Fault {
  if (counts.length < 2) return fault('count in two strata at least, the edge and the interior');
  const strata: Stratum[] = [];
  for (const { name, areaM2, cut, uncut } of counts) {
    const percent = cutTillersPercent(cut, uncut);
    if (typeof percent !== 'number') return fault(`${name}: ${percent.fault}`);
    strata.push({ weight: areaM2, percent });
  }
  return stratifiedPercent(strata);
}
