/** What a kg of nutrient gave. Dobermann 2007; IPNI NUGAPS-3. All amounts kg/ha, grain at one moisture on both sides. */
import { above0, atLeast0 } from '../check-number.ts';
import { type Fault, firstFault } from '../fault.ts';

/** Often printed range for N (IPNI NUGAPS-3). */
export const USUAL_PARTIAL_PRODUCTIVITY_N = { from: 40, to: 80, source: 'IPNI NUGAPS-3' } as const;

/** Agronomic efficiency: kg more grain a kg nutrient. Below 0 where the fertilised plot gave less. */
export function agronomicEfficiency(
  yieldKgPerHa: number,
  zeroYieldKgPerHa: number,
  rateKgPerHa: number,
): number | Fault {
  return (
    checked(yieldKgPerHa, zeroYieldKgPerHa, rateKgPerHa, 'yield') ??
    (yieldKgPerHa - zeroYieldKgPerHa) / rateKgPerHa
  );
}

/** Partial factor productivity: kg grain a kg nutrient. */
export function partialProductivity(yieldKgPerHa: number, rateKgPerHa: number): number | Fault {
  return checked(yieldKgPerHa, 0, rateKgPerHa, 'yield') ?? yieldKgPerHa / rateKgPerHa;
}

/** Recovery: nutrient taken up of the nutrient given, %. */
export function recoveryPercent(
  uptakeKgPerHa: number,
  zeroUptakeKgPerHa: number,
  rateKgPerHa: number,
): number | Fault {
  return (
    checked(uptakeKgPerHa, zeroUptakeKgPerHa, rateKgPerHa, 'uptake') ??
    (100 * (uptakeKgPerHa - zeroUptakeKgPerHa)) / rateKgPerHa
  );
}

function checked(fed: number, without: number, rate: number, what: string): Fault | null {
  return firstFault(
    atLeast0(fed, `${what} in kg/ha`),
    atLeast0(without, `${what} without the nutrient in kg/ha`),
    above0(rate, 'nutrient given in kg/ha'),
  );
}
