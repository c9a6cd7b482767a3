/**
 * Safe alternate wetting and drying: water goes back on when it stands 15 cm under the surface in the field tube; never around
 * flowering. Levels in cm from the soil surface, below it negative: `tube reads minus twelve` is -12.
 */
import { between } from '../check-number.ts';
import { daysAfter } from '../crop-day.ts';
import { type Fault, fault, firstFault, isFault } from '../fault.ts';
import type { Sourced } from '../source.ts';

export interface WettingDryingRule extends Sourced {
  /** Level at which to irrigate. */
  refillAtCm: number;
  /** Level to fill to. */
  fillToCm: number;
  startDaysAfterTransplanting: number;
  /** Kept ponded this many days before and after flowering. */
  floweringDays: number;
  /** Which of these figures were not read in a source. */
  unread: string;
}

export const SAFE_RULE: WettingDryingRule = {
  refillAtCm: -15,
  fillToCm: 5,
  startDaysAfterTransplanting: 14,
  floweringDays: 7,
  source:
    'safe alternate wetting and drying, encyclopaedia entry citing IRRI: 15 cm, start 1-2 weeks after transplanting',
  unread: 'filling to 5 cm and the week either side of flowering are from memory',
  unconfirmed: true,
};

export interface TubeReading {
  on: string;
  levelCm: number;
}

export interface WettingDryingAdvice extends Sourced {
  act: 'keep ponded' | 'wait' | 'irrigate';
  why: string;
  /** Depth of water to bring above the soil, where it is time; what the soil takes up comes on top. */
  fillToCm?: number;
  unread: string;
}

/** The trial's protocol goes before this advice, which the caller sees to. `floweringOn`: seen or expected. */
export function wettingDryingAdvice(
  crop: { plantedOn: string; floweringOn?: string },
  reading: TubeReading,
  rule: WettingDryingRule = SAFE_RULE,
): WettingDryingAdvice | Fault {
  const age = daysAfter(crop.plantedOn, reading.on, 'planting');
  if (isFault(age)) return age;
  const near = crop.floweringOn ? daysApart(crop.floweringOn, reading.on) : null;
  if (isFault(near)) return near;
  const wrong = firstFault(
    between(reading.levelCm, -60, 40, 'level in the tube in cm'),
    between(rule.refillAtCm, -40, -1, 'level to irrigate at in cm'),
    between(rule.fillToCm, 0, 20, 'level to fill to in cm'),
  );
  if (wrong) return wrong;
  const { source, unconfirmed, unread, fillToCm } = rule;
  const about = { source, unconfirmed, unread };
  const { levelCm } = reading;
  if (age < rule.startDaysAfterTransplanting)
    return ponded(
      levelCm,
      `${age} days after planting, drying starts at ${rule.startDaysAfterTransplanting}`,
    );
  if (near !== null && near <= rule.floweringDays)
    return ponded(levelCm, `${near} days from flowering: no drying within ${rule.floweringDays} days of it`);
  if (levelCm <= rule.refillAtCm)
    return {
      act: 'irrigate',
      why: `the tube reads ${levelCm} cm, the limit is ${rule.refillAtCm} cm`,
      fillToCm,
      ...about,
    };
  return {
    act: 'wait',
    why: `the tube reads ${levelCm} cm, above the limit of ${rule.refillAtCm} cm`,
    ...about,
  };

  function ponded(level: number, why: string): WettingDryingAdvice {
    return level > 0 ? { act: 'keep ponded', why, ...about } : { act: 'irrigate', why, fillToCm, ...about };
  }
}

export interface TubeFall {
  cmPerDay: number;
  /** Days from the last reading until the limit if it falls on at this pace; null while it rises. */
  daysToLimit: number | null;
  words: string;
}

/**
 * The tube's own pace between two readings below the surface. Evaporation and percolation cannot give it: below ground the
 * level falls several times faster than the mm lost (memory).
 */
export function tubeFall(
  earlier: TubeReading,
  later: TubeReading,
  limitCm = SAFE_RULE.refillAtCm,
): TubeFall | Fault {
  const days = daysAfter(earlier.on, later.on, 'the first reading');
  if (isFault(days)) return days;
  const wrong = firstFault(
    between(earlier.levelCm, -60, 40, 'level in the tube in cm'),
    between(later.levelCm, -60, 40, 'level in the tube in cm'),
    between(limitCm, -60, 0, 'limit in cm'),
  );
  if (wrong) return wrong;
  if (days === 0) return fault('two readings of one day give no pace');
  const cmPerDay = (earlier.levelCm - later.levelCm) / days;
  const left = Math.max(0, later.levelCm - limitCm);
  const daysToLimit = cmPerDay > 0 ? left / cmPerDay : null;
  return { cmPerDay, daysToLimit, words: 'drawn on from two readings, without rain or irrigation' };
}

function daysApart(a: string, b: string): number | Fault {
  return a <= b ? daysAfter(a, b) : daysAfter(b, a);
}
