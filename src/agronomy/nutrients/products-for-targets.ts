/** Which products meet N, P2O5 and K2O: phosphorus first, its nitrogen counted, the rest of the nitrogen after it. */
import { above0, atLeast0 } from '../check-number.ts';
import { type Fault, fault, firstFault } from '../fault.ts';
import type { Fertiliser } from './products.ts';

export interface NutrientTargets {
  nKgPerHa: number;
  p2o5KgPerHa: number;
  k2oKgPerHa: number;
}

export interface ProductShares {
  phosphorusProductKgPerHa: number;
  nFromPhosphorusProductKgPerHa: number;
  nitrogenProductKgPerHa: number;
  potassiumProductKgPerHa: number;
  /** Nitrogen that comes along with phosphorus beyond the target; 0 when all fits. */
  nOverKgPerHa: number;
}

export function productsForTargets(
  targets: NutrientTargets,
  products: { nitrogen: Fertiliser; phosphorus: Fertiliser; potassium: Fertiliser },
): ProductShares | Fault {
  const { nitrogen, phosphorus, potassium } = products;
  const wrong = firstFault(
    atLeast0(targets.nKgPerHa, 'N in kg/ha'),
    atLeast0(targets.p2o5KgPerHa, 'P2O5 in kg/ha'),
    atLeast0(targets.k2oKgPerHa, 'K2O in kg/ha'),
    above0(nitrogen.nPercent, `N in ${nitrogen.name} in %`),
    above0(phosphorus.p2o5Percent, `P2O5 in ${phosphorus.name} in %`),
    above0(potassium.k2oPercent, `K2O in ${potassium.name} in %`),
  );
  if (wrong) return wrong;
  if (nitrogen.p2o5Percent > 0 || potassium.nPercent > 0)
    return fault('the nitrogen and the potassium product must be straight ones');
  const phosphorusProductKgPerHa = (100 * targets.p2o5KgPerHa) / phosphorus.p2o5Percent;
  const nFromPhosphorusProductKgPerHa = (phosphorusProductKgPerHa * phosphorus.nPercent) / 100;
  const nLeft = targets.nKgPerHa - nFromPhosphorusProductKgPerHa;
  return {
    phosphorusProductKgPerHa,
    nFromPhosphorusProductKgPerHa,
    nitrogenProductKgPerHa: (100 * Math.max(0, nLeft)) / nitrogen.nPercent,
    potassiumProductKgPerHa: (100 * targets.k2oKgPerHa) / potassium.k2oPercent,
    nOverKgPerHa: Math.max(0, -nLeft),
  };
}
