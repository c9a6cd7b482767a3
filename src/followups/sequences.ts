/** Pieces of work that belong together, each due from the one before. */
import type { ActionKind } from '../reading/record.ts';

export interface Gap {
  first: ActionKind;
  next: ActionKind;
  fromDays: number;
  toDays: number;
  source: string;
}

/** Orders that make one plan when a note decides on at least two neighbours of them for one plot. */
export const SEQUENCES: readonly ActionKind[][] = [
  ['drain', 'fertilise', 'irrigate'],
  ['drain', 'spray', 'irrigate'],
  ['drain', 'replant', 'irrigate'],
];

export const GAPS: readonly Gap[] = [
  {
    first: 'drain',
    next: 'fertilise',
    fromDays: 0,
    toDays: 3,
    source: 'drained or nearly dry soil, 2-3 days: common practice',
  },
  {
    first: 'fertilise',
    next: 'irrigate',
    fromDays: 0,
    toDays: 2,
    source: 'reflood in 2-3 days: common practice; Rice Farming (loam)',
  },
  { first: 'drain', next: 'spray', fromDays: 0, toDays: 3, source: 'common practice' },
  { first: 'spray', next: 'irrigate', fromDays: 1, toDays: 3, source: 'common practice; the label rules' },
  { first: 'drain', next: 'replant', fromDays: 0, toDays: 2, source: 'common practice' },
  { first: 'replant', next: 'irrigate', fromDays: 1, toDays: 3, source: 'common practice' },
];

const ANY_GAP = { fromDays: 0, toDays: 2 };

export const gapBetween = (first: ActionKind, next: ActionKind): { fromDays: number; toDays: number } =>
  GAPS.find((gap) => gap.first === first && gap.next === next) ?? ANY_GAP;

/** `[first, then]` pairs of neighbours among the kinds that a note decides on. */
export function neighboursIn(kinds: ReadonlySet<ActionKind>): [ActionKind, ActionKind][] {
  return SEQUENCES.flatMap((order) =>
    order.slice(1).flatMap((then, i): [ActionKind, ActionKind][] => {
      const first = order[i]!;
      return kinds.has(first) && kinds.has(then) ? [[first, then]] : [];
    }),
  );
}
