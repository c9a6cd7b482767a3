/** Counts a hill and counts a square metre. */
import type { Quantity } from '../record.ts';
import { type ReadFigure, read } from './reading.ts';
import { nearestTopic, wordOf } from './surroundings.ts';
import type { Topic } from './topics.ts';

const NOT_COUNTED_HERE =
  /^(seedling|seedlings|plant|plants|grains|grain|leaves|leaf|spikelets|panicle|panicles|heads|head|ears|mass|masses)$/;
const A_HILL: ReadonlySet<Topic> = new Set<Topic>(['insects', 'tillers', 'panicles', 'snails', 'predators']);

export const readPerHill: ReadFigure = (around, number, shape) => {
  for (let index = number.last + 1; index < shape.last; index++)
    if (NOT_COUNTED_HERE.test(wordOf(around, index)) && !/^(plant)$/.test(wordOf(around, index))) return [];
  const topic = nearestTopic(around, number.first, shape.last, A_HILL)?.topic;
  if (topic === 'insects') return read('insects_per_hill', number.value, 'insects-a-hill');
  return topic === 'tillers' ? read('tillers_per_hill', number.value, 'tillers-a-hill') : [];
};

const A_SQUARE_METRE: ReadonlySet<Topic> = new Set<Topic>([
  'snails',
  'panicles',
  'tillers',
  'weeds',
  'hills',
  'heading',
  'insects',
  'white-heads',
]);
const QUANTITY: Partial<Record<Topic, Quantity>> = {
  snails: 'snails_per_m2',
  panicles: 'panicles_per_m2',
  heading: 'panicles_per_m2',
  tillers: 'tillers_per_m2',
  weeds: 'weed_density',
  hills: 'hills_per_m2',
};

export const readPerSquareMetre: ReadFigure = (around, number, shape) => {
  if (shape.kind !== 'per-m2') return [];
  const topic = nearestTopic(around, number.first, shape.last, A_SQUARE_METRE)?.topic;
  const quantity = topic && QUANTITY[topic];
  return quantity
    ? read(quantity, Number((number.value * shape.perM2).toPrecision(6)), `${topic}-a-square-metre`)
    : [];
};
