/** Strength of a stem against its own load. Form after Ookawa & Ishihara 1992, from memory: unconfirmed. */
import { above0, between } from '../check-number.ts';
import { type Fault, firstFault } from '../fault.ts';
import type { Sourced } from '../source.ts';

export interface Stem {
  /** From the break to the tip of the panicle. */
  lengthCm: number;
  freshWeightG: number;
  /** Load at the break in a three-point test. */
  breakingLoadG: number;
  fulcrumCm: number;
}

export interface LodgingIndex extends Sourced {
  bendingMomentGCm: number;
  breakingMomentGCm: number;
  /** High is weak. Does not tell bending from breaking (Sci. Rep. 2023, s41598-023-37992-3). */
  indexPercent: number;
}

export function lodgingIndex(stem: Stem): LodgingIndex | Fault {
  const wrong = firstFault(
    above0(stem.lengthCm, 'length in cm'),
    above0(stem.freshWeightG, 'fresh weight in g'),
    above0(stem.breakingLoadG, 'breaking load in g'),
    above0(stem.fulcrumCm, 'fulcrum distance in cm'),
  );
  if (wrong) return wrong;
  const bendingMomentGCm = stem.lengthCm * stem.freshWeightG;
  const breakingMomentGCm = (stem.breakingLoadG * stem.fulcrumCm) / 4;
  return {
    bendingMomentGCm,
    breakingMomentGCm,
    indexPercent: (100 * bendingMomentGCm) / breakingMomentGCm,
    source: 'Ookawa & Ishihara 1992, from memory',
    unconfirmed: true,
  };
}

/** Part of stem lodging, %, from the axes of the ellipse that plants lie in: 0.64 : 1 is stem lodging alone (Chang et al. 2006). */
export function stemLodgingSharePercent(shortAxis: number, longAxis: number): number | Fault {
  const wrong = firstFault(above0(longAxis, 'long axis'), between(shortAxis, 0, longAxis, 'short axis'));
  if (wrong) return wrong;
  const eccentricity = Math.sqrt(1 - (shortAxis / longAxis) ** 2);
  return Math.min(100, (100 * eccentricity) / Math.sqrt(1 - 0.64 ** 2));
}
