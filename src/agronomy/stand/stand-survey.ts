/** Stand from counts in frames: three of 1 m x 1 m on a diagonal, 1 m or more from the edge, about 10 days after planting (PalayCheck). */
import { above0, atLeast0, eachOf } from '../check-number.ts';
import { type Fault, firstFault, isFault } from '../fault.ts';
import { type Described, describe } from '../statistics/describe.ts';

export const SURVEY_FRAMES = {
  frames: 3,
  frameM2: 1,
  fromEdgeM: 1,
  daysAfterPlanting: 10,
  source: 'PalayCheck',
} as const;

export interface StandSurvey extends Described {
  /** Fewer frames than the source asks for. */
  tooFew: boolean;
}

/** Plants, hills or panicles per m2: mean, and its spread from two frames up. */
export function standSurvey(counts: readonly number[], frameM2 = 1): StandSurvey | Fault {
  const wrong = firstFault(above0(frameM2, 'frame in m2'), eachOf(counts, 1, 'counts', atLeast0));
  if (wrong) return wrong;
  const described = describe(counts.map((count) => count / frameM2));
  return isFault(described) ? described : { ...described, tooFew: counts.length < SURVEY_FRAMES.frames };
}
