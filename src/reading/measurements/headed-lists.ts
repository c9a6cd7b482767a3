/** Figures of a list whose name stands once in front: `SPAD: N0 28.4, N60 37`, `Height (cm, mean of 12): N0 62, N60 78`. */

import type { Quantity } from '../record.ts';
import { endsHere } from './ends-here.ts';
import type { Figure } from './figure.ts';
import { isPlausible } from './reading.ts';
import { type Surroundings, wordOf } from './surroundings.ts';
import type { Topic } from './topics.ts';

const NAMES: Partial<Record<Topic, Quantity>> = {
  spad: 'spad',
  'leaf-colour': 'leaf_colour',
  tube: 'water_table_depth',
  moisture: 'grain_moisture_pct',
  heading: 'heading_pct',
  height: 'plant_height',
  tillers: 'tillers_per_hill',
  panicles: 'panicles_per_m2',
  yield: 'grain_yield',
  water: 'water_depth',
};
const REACH = 40;
const BETWEEN = /^(,|;|and|&|:|mean|average|avg|is|=|about|only|vs|versus|against|\(|\))$/;

/** Reads each bare figure that stands in a list behind `name:`, with only plots, figures and joining words between. */
export function readHeadedLists(around: Surroundings, figures: readonly Figure[]): void {
  const taken = new Set<number>();
  for (const { number, shape } of figures) for (let at = number.first; at <= shape.last; at++) taken.add(at);
  for (const figure of figures) {
    if (
      figure.out ||
      figure.reads.length > 0 ||
      figure.shape.kind !== 'bare' ||
      !endsHere(around, figure.shape.last + 1)
    )
      continue;
    const colon = colonBefore(around, taken, figure.number.first);
    const quantity = colon === null ? undefined : headOf(around, colon);
    const read = quantity && { quantity, value: figure.number.value, rule: 'listed-under-a-name' };
    if (read && isPlausible(read)) figure.reads = [read];
  }
}

function colonBefore(around: Surroundings, taken: ReadonlySet<number>, first: number): number | null {
  for (let at = first - 1; at >= Math.max(0, first - REACH); at--) {
    if (around.tokens[at]?.sentence !== around.tokens[first]?.sentence) return null;
    if (around.tokens[at]?.text === ':' && !around.isPlot(at - 1)) return at;
    if (!around.isPlot(at) && !taken.has(at) && !BETWEEN.test(wordOf(around, at))) return null;
  }
  return null;
}

/** The first name in the words before the colon. */
function headOf(around: Surroundings, colon: number): Quantity | undefined {
  let start = colon;
  while (
    start > 0 &&
    colon - start < 16 &&
    around.tokens[start - 1]?.sentence === around.tokens[colon]?.sentence &&
    around.tokens[start - 1]?.text !== ';'
  )
    start--;
  const topic = around.topics
    .slice(around.topicFrom[start] ?? 0)
    .find(({ topic: name, last }) => last < colon && NAMES[name]);
  return topic && topic.first < colon ? NAMES[topic.topic] : undefined;
}
