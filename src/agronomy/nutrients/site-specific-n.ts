/**
 * Nitrogen for a yield response: the response over the agronomic efficiency that the site can reach. IRRI, site-specific
 * nutrient management, FAQ table. The printed cells are rounded down to 5 kg, and one (3 t at 15) is 195 where the
 * quotient is 200: the quotient is what is calculated.
 */
import { above0, atLeast0, between } from '../check-number.ts';
import { type Fault, firstFault } from '../fault.ts';

export const SITE_SPECIFIC_N_SOURCE = 'IRRI, site-specific nutrient management, FAQ table';

/** kg N/ha for a response in t/ha and an efficiency in kg/kg. */
export function siteSpecificNKgPerHa(responseTPerHa: number, efficiencyKgPerKg: number): number | Fault {
  const wrong = firstFault(
    atLeast0(responseTPerHa, 'yield response in t/ha'),
    between(responseTPerHa, 0, 15, 'yield response in t/ha'),
    above0(efficiencyKgPerKg, 'agronomic efficiency in kg/kg'),
    between(efficiencyKgPerKg, 1, 60, 'agronomic efficiency in kg/kg'),
  );
  return wrong ?? (1000 * responseTPerHa) / efficiencyKgPerKg;
}

const EFFICIENCIES: readonly number[] = [15, 18, 20, 25];

/** As printed, kg N/ha; null where the table leaves the cell empty. */
export const PRINTED_N_KG_PER_HA: Readonly<Record<number, readonly (number | null)[]>> = {
  1: [65, 55, 50, 40],
  2: [130, 110, 100, 80],
  3: [195, 165, 150, 120],
  4: [null, 220, 200, 160],
  5: [null, null, 250, 200],
};

/** The printed cell; null where there is none. */
export function printedSiteSpecificN(responseTPerHa: number, efficiencyKgPerKg: number): number | null {
  const column = EFFICIENCIES.indexOf(efficiencyKgPerKg);
  return PRINTED_N_KG_PER_HA[responseTPerHa]?.[column] ?? null;
}

/** Efficiencies that the source calls within reach, kg grain a kg N. */
export const REACHABLE_EFFICIENCY = [
  { kgPerKg: 25, where: 'high-yielding season' },
  { kgPerKg: 20, where: 'low-yielding season, upper end' },
  { kgPerKg: 18, where: 'low-yielding season, lower end' },
  { kgPerKg: 15, where: 'where farmers get 10 or less' },
] as const;
