import { atLeast0 } from '../check-number.ts';
import { type Fault, fault } from '../fault.ts';
import { ACTION_THRESHOLDS, type ActionThreshold, type PestStage } from './action-thresholds.ts';

/** Every row for a pest, all regions side by side: which one holds is the station's to say. */
export function thresholdsFor(pest: string, stage?: PestStage): ActionThreshold[] {
  return ACTION_THRESHOLDS.filter((row) => row.pest === pest && (!stage || row.stages.includes(stage)));
}

export interface AgainstThreshold {
  stands: 'below' | 'within the printed range' | 'at or above';
  words: string;
  threshold: ActionThreshold;
}

/** A count in the row's own measure held against it. Information, not an order to spray. */
export function againstThreshold(
  counted: number,
  measure: string,
  threshold: ActionThreshold,
): AgainstThreshold | Fault {
  const wrong = atLeast0(counted, `count, ${measure},`);
  if (wrong) return wrong;
  if (measure !== threshold.measure)
    return fault(`counted ${measure}, but the threshold is in ${threshold.measure}: they cannot be compared`);
  const { from, to, printed, region } = threshold;
  const stands = counted < from ? 'below' : counted < to ? 'within the printed range' : 'at or above';
  const words = `${stands} ${printed} (${region}); look at natural enemies before acting`;
  return { stands, words, threshold };
}
