/** From nutrient to product and back: kg/ha, or kg, on both sides alike. */
import { above0, atLeast0, between } from '../check-number.ts';
import { type Fault, firstFault } from '../fault.ts';

export function productFromNutrientKg(nutrientKg: number, percent: number): number | Fault {
  return checked(nutrientKg, 'nutrient in kg', percent) ?? (100 * nutrientKg) / percent;
}

export function nutrientFromProductKg(productKg: number, percent: number): number | Fault {
  return checked(productKg, 'product in kg', percent) ?? (productKg * percent) / 100;
}

function checked(kg: number, what: string, percent: number): Fault | null {
  return firstFault(
    atLeast0(kg, what),
    above0(percent, 'content of the product in %'),
    between(percent, 0, 100, 'content of the product in %'),
  );
}
