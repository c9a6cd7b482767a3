/** Yield from areas cut and weighed. */
import { above0 } from '../check-number.ts';
import { type Fault, fault, isFault } from '../fault.ts';
import { type Described, describe } from '../statistics/describe.ts';
import { weightAt14 } from './moisture.ts';

export interface CropCut {
  grainKg: number;
  moisturePercent: number;
  areaM2: number;
}

/** Rules for a cut: SES:12 in CO_320. */
export const CROP_CUT_RULES = {
  leastM2: 5,
  borderRows: 3,
  source: 'IRRI SES:12, in the rice trait dictionary CO_320',
} as const;

export interface CropCutYield {
  kgAt14: number;
  tPerHa: number;
  /** What speaks against the figure, in words. */
  remarks: string[];
}

/** t/ha at 14 % moisture: kg/m2 times 10. */
export function cropCutYield({ grainKg, moisturePercent, areaM2 }: CropCut): CropCutYield | Fault {
  const kgAt14 = weightAt14(grainKg, moisturePercent);
  if (isFault(kgAt14)) return kgAt14;
  const wrong = above0(areaM2, 'area cut in m2');
  if (wrong) return wrong;
  const tPerHa = (10 * kgAt14) / areaM2;
  const { leastM2 } = CROP_CUT_RULES;
  const remarks = [
    ...(areaM2 < leastM2 ? [`less than ${leastM2} m2 was cut`] : []),
    ...(tPerHa > 20 ? ['more than rice has ever yielded: look at weight and area'] : []),
  ];
  return { kgAt14, tPerHa, remarks };
}

/** Several cuts of one plot or field: mean t/ha and its spread. */
export function meanCropCutYield(cuts: readonly CropCut[]): Described | Fault {
  const yields: number[] = [];
  for (const [index, cut] of cuts.entries()) {
    const one = cropCutYield(cut);
    if (isFault(one)) return fault(`cut ${index + 1}: ${one.fault}`);
    yields.push(one.tPerHa);
  }
  return describe(yields);
}
