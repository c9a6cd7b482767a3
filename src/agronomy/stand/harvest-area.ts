import { between } from '../check-number.ts';
import type { Fault } from '../fault.ts';
import type { Sourced } from '../source.ts';

/** From this share of missing hills on, an area is left out of the yield. */
export const HARVEST_STAND_RULE = {
  missingPercent: 20,
  source: 'field plot techniques after Gomez 1972, Techniques for field experiments with rice, IRRI',
} as const;

export interface HarvestAreaVerdict extends Sourced {
  harvest: boolean;
  words: string;
}

/** Replanted hills lag behind: leave them out of samples for yield components (memory). */
export function harvestAreaVerdict(missingPercent: number): HarvestAreaVerdict | Fault {
  const wrong = between(missingPercent, 0, 100, 'missing hills in %');
  if (wrong) return wrong;
  const harvest = missingPercent < HARVEST_STAND_RULE.missingPercent;
  const words = harvest ? 'enough hills stand for a yield figure' : 'do not harvest that area';
  return { harvest, words, source: HARVEST_STAND_RULE.source };
}
