import { type ReadFigure, read } from './reading.ts';
import { nearestTopic, wordOf } from './surroundings.ts';
import type { Topic } from './topics.ts';

/** Nobody puts two tonnes of anything but manure or lime on a hectare (common practice). */
const MORE_THAN_ANY_DOSE = 2;
const HARVEST: ReadonlySet<Topic> = new Set<Topic>(['yield', 'moisture']);

/** Bushels, tonnes and maunds to an area are a harvest; pounds and kilos only where one is spoken of. */
export const readCropWeight: ReadFigure = (around, number, shape) => {
  if (shape.kind !== 'crop-weight') return [];
  const grainOnly = /^(t|bushel|barrel|maund|quintal|cwt|cavan)$/.test(shape.unit.name);
  const harvest = nearestTopic(around, number.first, shape.last, HARVEST, 'sentence');
  const isMaterial = /^(manure|compost|straw|lime|gypsum|fym|dung|of|n|seed)$/.test(
    wordOf(around, shape.last + 1),
  );
  const heavy = shape.tPerHa >= MORE_THAN_ANY_DOSE;
  if ((!grainOnly && !harvest && !heavy) || isMaterial || shape.tPerHa < (grainOnly ? 0.2 : 0.8)) return [];
  return read('grain_yield', Number(shape.tPerHa.toPrecision(4)), 'weight-from-an-area');
};
