/** Areas that something has befallen, and two sides: a spacing or a patch. */
import type { NumberFound } from '../numbers/find-numbers.ts';
import { unitAt } from '../numbers/units.ts';
import { type ReadFigure, read } from './reading.ts';
import { nearestTopic, type Surroundings, speaksOf, wordOf } from './surroundings.ts';
import type { Topic } from './topics.ts';

const tidy = (value: number): number => Number(value.toPrecision(6));

/** `25 by 20`: a spacing, the row first, or the sides of a patch. */
export const readSides: ReadFigure = (around, number, shape) => {
  if (shape.kind !== 'sides') return [];
  const { a, b, unit } = shape;
  const patch = nearestTopic(around, number.first, shape.last, PATCHES)?.topic;
  const spacing =
    speaksOf(around, number.first, 'spacing', 'sentence') ||
    speaksOf(around, number.first, 'rows', 'stretch');
  const asMetres = unit && /^(m|foot|yard)$/.test(unit.name);
  if (spacing && !asMetres)
    return [...read('row_spacing', tidy(a), 'spacing'), ...read('hill_spacing', tidy(b), 'spacing')];
  if (asMetres)
    return patch ? read('affected_area', Number(((a * b) / 10000).toPrecision(4)), 'sides-of-a-patch') : [];
  const fits = a >= 5 && a <= 60 && b >= 5 && b <= 60;
  return fits && (unit?.name === 'cm' || unit?.name === 'inch' || !unit)
    ? [...read('row_spacing', tidy(a), 'spacing'), ...read('hill_spacing', tidy(b), 'spacing')]
    : [];
};

const PATCHES: ReadonlySet<Topic> = new Set<Topic>([
  'patch',
  'problem',
  'lodged',
  'disease',
  'insects',
  'weeds',
  'rats',
  'gap',
  'missing',
  'snails',
]);

/** `one patch forty square metre`, `two acres gone`, `about a tenth of an acre`. */
export const readArea: ReadFigure = (around, number, shape) => {
  if (
    shape.kind !== 'area' ||
    /^(per|the|back|every|each|of|in|one|to|for)$/.test(wordOf(around, number.first - 1))
  )
    return [];
  if (isOneOf(around, number, shape.value)) return [];
  if (/^(plot|field|block|farm|check|lot|nursery|bay|piece)$/.test(wordOf(around, shape.last + 1))) return [];
  const topic = nearestTopic(around, number.first, shape.last, PATCHES);
  return topic ? read('affected_area', Number(shape.value.toPrecision(4)), 'area-affected') : [];
};

/** `three in one square metre`, `forty kilo one hectare`: what a count or a dose is for. */
function isOneOf(around: Surroundings, number: NumberFound, squareMetres: number): boolean {
  if (number.value !== 1) return false;
  const unitBefore = [1, 2].some((back) => unitAt(around.tokens, number.first - back) !== null);
  return squareMetres <= 1 || unitBefore;
}
