/** A rate brought to what is weighed out: plots, strips, bags. */
import { above0, atLeast0 } from '../check-number.ts';
import { type Fault, firstFault, isFault } from '../fault.ts';

/** Grams of product for a plot: 1 kg/ha is 0.1 g/m2. */
export function portionG(rateKgPerHa: number, areaM2: number): number | Fault {
  return (
    firstFault(atLeast0(rateKgPerHa, 'rate in kg/ha'), above0(areaM2, 'area in m2')) ??
    (rateKgPerHa * areaM2) / 10
  );
}

export interface StripPortions {
  /** For each strip of the plot. */
  eachG: number;
  totalG: number;
}

/** Even spreading by hand: the plot in strips, a bag weighed for each. */
export function stripPortions(rateKgPerHa: number, areaM2: number, strips: number): StripPortions | Fault {
  const totalG = portionG(rateKgPerHa, areaM2);
  if (isFault(totalG)) return totalG;
  return above0(strips, 'strips') ?? { eachG: totalG / strips, totalG };
}

export interface Bags {
  productKg: number;
  full: number;
  /** From an opened bag, kg. */
  restKg: number;
}

export function bagsFor(rateKgPerHa: number, areaM2: number, bagKg: number): Bags | Fault {
  const grams = portionG(rateKgPerHa, areaM2);
  if (isFault(grams)) return grams;
  const wrong = above0(bagKg, 'weight of a bag in kg');
  if (wrong) return wrong;
  const productKg = grams / 1000;
  const full = Math.floor(productKg / bagKg + 1e-9);
  return { productKg, full, restKg: Math.max(0, productKg - full * bagKg) };
}

/** Rate that was really given, kg/ha, from what was weighed: to hold against the plan. */
export function rateFromPortionKgPerHa(grams: number, areaM2: number): number | Fault {
  return firstFault(atLeast0(grams, 'weight in g'), above0(areaM2, 'area in m2')) ?? (grams * 10) / areaM2;
}
