/**
 * What a count of cut tillers says. Singleton et al. 2005, Agric. Ecosyst. Environ. 107:75-82 (abstract), West Java. The figures
 * answer different questions: one counts tillers cut over the season, the others grain.
 */
import { between } from '../check-number.ts';
import type { Fault } from '../fault.ts';
import type { Sourced } from '../source.ts';

const SOURCE = 'Singleton et al. 2005, Agric. Ecosyst. Environ. 107:75-82, West Java';
const percent = (value: number): Fault | null => between(value, 0, 100, 'cut tillers in %');

/** Tillers cut over the whole season, %, from the share cut at ripening: x 6.5. Not a loss of grain. */
export function seasonDamageFromRipeningCount(cutAtRipeningPercent: number): number | Fault {
  return percent(cutAtRipeningPercent) ?? Math.min(100, cutAtRipeningPercent * 6.5);
}

export interface YieldLoss extends Sourced {
  lossPercent: number;
  /** 95 % limits. */
  fromPercent: number;
  toPercent: number;
}

/** Grain lost, %, from the share cut at ripening: x 4.2 (2.9-7.8). Counts at tillering do not foretell it. */
export function yieldLossFromRipeningCount(cutAtRipeningPercent: number): YieldLoss | Fault {
  const wrong = percent(cutAtRipeningPercent);
  if (wrong) return wrong;
  const loss = (factor: number): number => Math.min(100, cutAtRipeningPercent * factor);
  return { lossPercent: loss(4.2), fromPercent: loss(2.9), toPercent: loss(7.8), source: SOURCE };
}

/** Grain lost, kg/ha, from cut tillers over the season: 58 kg/ha for each 1 %, wet and dry season alike. */
export function yieldLossKgPerHaFromCutTillers(cutPercent: number): number | Fault {
  return percent(cutPercent) ?? cutPercent * 58;
}

/** Share of the dry season's damage by stage, %, as printed: they add up to 102. */
export const DAMAGE_BY_STAGE = { primordium: 54, booting: 32, ripening: 16, source: SOURCE } as const;
