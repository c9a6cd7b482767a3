/** Grain weight at 14 % moisture: W x (100 - M) / 86. Gomez 1972, Techniques for field experiments with rice, Appendix Table 2. */
import { atLeast0, between } from '../check-number.ts';
import { type Fault, isFault } from '../fault.ts';

export const STANDARD_MOISTURE_PERCENT = 14;

/** What a weight is multiplied by. Grain from 5 to 40 %: outside it the meter is wrong (common practice). */
export function moistureFactor(moisturePercent: number): number | Fault {
  return (
    between(moisturePercent, 5, 40, 'grain moisture in %') ??
    (100 - moisturePercent) / (100 - STANDARD_MOISTURE_PERCENT)
  );
}

export function weightAt14(weightKg: number, moisturePercent: number): number | Fault {
  const factor = moistureFactor(moisturePercent);
  if (isFault(factor)) return factor;
  return atLeast0(weightKg, 'weight in kg') ?? weightKg * factor;
}

/** The other way: what grain at 14 % weighs at another moisture. */
export function weightAtMoisture(weightAt14Kg: number, moisturePercent: number): number | Fault {
  const factor = moistureFactor(moisturePercent);
  if (isFault(factor)) return factor;
  return atLeast0(weightAt14Kg, 'weight in kg') ?? weightAt14Kg / factor;
}
