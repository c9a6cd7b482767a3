/** Weeds from frames: cover and density. Direct percent is as quick as classes and errs less (Dengler & Dembicz, Vegetation Classification and Survey, article 98379). */
import { above0, between, eachOf, wholeCount } from '../check-number.ts';
import { type Fault, fault, firstFault, isFault } from '../fault.ts';
import type { Sourced } from '../source.ts';
import { type Described, describe } from '../statistics/describe.ts';

/** Mean cover of frames, %. */
export function weedCover(coverPercents: readonly number[]): Described | Fault {
  return (
    eachOf(coverPercents, 1, 'covers in %', (value, what) => between(value, 0, 100, what)) ??
    describe(coverPercents)
  );
}

/** Plants per m2 from counts in frames of one size. */
export function weedDensity(counts: readonly number[], frameM2: number): Described | Fault {
  const wrong = firstFault(above0(frameM2, 'frame in m2'), eachOf(counts, 1, 'counts', wholeCount));
  return wrong ?? describe(counts.map((count) => count / frameM2));
}

/** How much less weed there is than before, or than in the untreated plot, %. Below 0 where it is more. */
export function weedControlPercent(untreated: number, treated: number): number | Fault {
  const wrong = firstFault(
    above0(untreated, 'weeds without treatment'),
    between(treated, 0, 1e9, 'weeds with treatment'),
  );
  return wrong ?? (100 * (untreated - treated)) / untreated;
}

export interface CoverClass extends Sourced {
  sign: string;
  /** Above this, up to and with `toPercent`. */
  abovePercent: number;
  toPercent: number;
}

const FROM_MEMORY = 'Braun-Blanquet scale; class 5 was read, the rest is from memory';
const classRow = (sign: string, abovePercent: number, toPercent: number): CoverClass => ({
  sign,
  abovePercent,
  toPercent,
  source: FROM_MEMORY,
  unconfirmed: true,
});

/** Without `r`, which counts single plants. */
export const COVER_CLASSES: readonly CoverClass[] = [
  classRow('+', 0, 1),
  classRow('1', 1, 5),
  classRow('2', 5, 25),
  classRow('3', 25, 50),
  classRow('4', 50, 75),
  classRow('5', 75, 100),
];

export function coverClass(coverPercent: number): CoverClass | Fault {
  const wrong = between(coverPercent, 0, 100, 'cover in %');
  if (wrong) return wrong;
  const found = COVER_CLASSES.find(
    ({ abovePercent, toPercent }) => coverPercent > abovePercent && coverPercent <= toPercent,
  );
  return found ?? fault('no weed, no class');
}

/** Mean of several plots with unlike areas, %. */
export function coverOverAreas(parts: readonly { areaM2: number; coverPercent: number }[]): number | Fault {
  const covers = weedCover(parts.map(({ coverPercent }) => coverPercent));
  if (isFault(covers)) return covers;
  const wrong = eachOf(
    parts.map(({ areaM2 }) => areaM2),
    1,
    'areas in m2',
    above0,
  );
  if (wrong) return wrong;
  const area = parts.reduce((sum, { areaM2 }) => sum + areaM2, 0);
  return parts.reduce((sum, { areaM2, coverPercent }) => sum + areaM2 * coverPercent, 0) / area;
}
