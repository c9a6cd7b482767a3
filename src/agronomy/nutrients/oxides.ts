/**
 * Labels speak of oxides, plants of elements. Factors from atomic weights: 0.43643 and 0.83015; printed as 0.4364 and 0.8302
 * (International Fertilizer Association) and 0.4365 and 0.8301 (Virginia Tech SPES-201NP).
 */
import { atLeast0 } from '../check-number.ts';
import type { Fault } from '../fault.ts';

export const P_OF_P2O5 = 0.43643;
export const K_OF_K2O = 0.83015;

export function pFromP2o5Kg(kg: number): number | Fault {
  return atLeast0(kg, 'P2O5 in kg') ?? kg * P_OF_P2O5;
}
export function p2o5FromPKg(kg: number): number | Fault {
  return atLeast0(kg, 'P in kg') ?? kg / P_OF_P2O5;
}
export function kFromK2oKg(kg: number): number | Fault {
  return atLeast0(kg, 'K2O in kg') ?? kg * K_OF_K2O;
}
export function k2oFromKKg(kg: number): number | Fault {
  return atLeast0(kg, 'K in kg') ?? kg / K_OF_K2O;
}
