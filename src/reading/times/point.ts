import type { NumberFound } from '../numbers/find-numbers.ts';
import type { Token } from '../text.ts';
import type { Days } from './reckon.ts';

/** What the readers of a time look at. `base` is the day that relative words count from, mostly the note's own. */
export interface TimeContext {
  tokens: Token[];
  numberAt: ReadonlyMap<number, NumberFound>;
  day: number;
  /** Which part of `3/4` is the month, where the note's other dates settle it. */
  monthFirst: boolean;
}

/** Days that words name, ending at token `last`, as work to come and as work done. */
export interface Point {
  last: number;
  rule: string;
  toCome: Days | null;
  done: Days | null;
}

export type ReadPoint = (context: TimeContext, at: number) => Point | null;

export const wordAt = (context: TimeContext, at: number): string => context.tokens[at]?.lower ?? '';

const PART_OF_DAY = new Set(
  'morning mornin mornings afternoon evening eve night nite am pm arvo noon forenoon dawn midday itself only early late lunchtime first'.split(
    ' ',
  ),
);
const AFTER_IN_THE = new Set(['morning', 'afternoon', 'evening']);

/** Index of the last token of a part of the day behind a day: `Monday morning`, `tomorrow in the evening`, `today itself`. */
export function pastPartOfDay(context: TimeContext, last: number): number {
  let end = last;
  for (let more = true; more; ) {
    const next = wordAt(context, end + 1);
    more = true;
    if (next === 'first' && /^(thing|light)$/.test(wordAt(context, end + 2))) end += 2;
    else if (next !== 'first' && PART_OF_DAY.has(next)) end += 1;
    else if (
      next === 'in' &&
      wordAt(context, end + 2) === 'the' &&
      AFTER_IN_THE.has(wordAt(context, end + 3))
    )
      end += 3;
    else if (next === 'at' && /^(noon|night|dawn|midday|dusk)$/.test(wordAt(context, end + 2))) end += 2;
    else more = false;
  }
  return end;
}
