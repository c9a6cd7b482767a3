/** Grain for water: say of which water (all of it, or irrigation alone), for the two differ several fold. */
import { above0 } from '../check-number.ts';
import { type Fault, firstFault } from '../fault.ts';

export interface WaterProductivity {
  kgPerM3: number;
  /** Null where nothing was harvested. */
  litresPerKg: number | null;
}

/** kg/ha over 10 x mm. */
export function waterProductivity(yieldKgPerHa: number, waterMm: number): WaterProductivity | Fault {
  const wrong = firstFault(
    yieldKgPerHa === 0 ? null : above0(yieldKgPerHa, 'yield in kg/ha'),
    above0(waterMm, 'water in mm'),
  );
  if (wrong) return wrong;
  const kgPerM3 = yieldKgPerHa / (10 * waterMm);
  return { kgPerM3, litresPerKg: yieldKgPerHa === 0 ? null : 1000 / kgPerM3 };
}

/** Published, kg/m3, at two depths of irrigation. */
export const PUBLISHED_WATER_PRODUCTIVITY = {
  treatments: ['2 cm', '4 cm'],
  totalKgPerM3: [0.52, 0.44],
  irrigationKgPerM3: [1.88, 1.14],
  source: 'Pascual & Wang 2016, Int. J. Sci. Technol. Res. 5(11)',
} as const;
