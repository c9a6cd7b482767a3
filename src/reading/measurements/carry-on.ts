/** A figure that stands in a row with one already read is another of its kind: `tillers 17, 19, 15`, `LCC: B1 4, B2 3.5`, `58 against 71 cm`. */

import { endsHere } from './ends-here.ts';
import type { Figure } from './figure.ts';
import { ruledOut } from './guards.ts';
import { readPercentWidely } from './proportions.ts';
import { isPlausible, type Read } from './reading.ts';
import { type Surroundings, wordOf } from './surroundings.ts';
import { celsius } from './temperatures.ts';

/** Words that join figures of one kind, or lead from one plot or place to the next figure. */
const JOINS = new Set([
  '(',
  ')',
  ',',
  'and',
  'or',
  'against',
  'versus',
  'vs',
  'v',
  'then',
  'um',
  'uh',
  '/',
  '&',
  'also',
  'is',
  'has',
  'at',
  'now',
  'about',
  'around',
  'maybe',
  'only',
  'ahead',
  'today',
  'only',
  'just',
  'still',
  'same',
  'reading',
  'gave',
  'made',
  'ran',
  'yielded',
  'showed',
  'measured',
  'tested',
  'did',
  'stood',
  'which',
  'the',
  'control',
  ';',
  'got',
  'say',
  'like',
  'of',
  'in',
  'roughly',
  'nearly',
  'again',
  '=',
  ':',
  'it',
  'reads',
  'too',
  'to',
  'er',
  'after',
  'that',
  'average',
  'averages',
  'last',
  'next',
  'one',
  'dense',
  'other',
  'another',
  'was',
  'here',
  'there',
  'inside',
  'elsewhere',
  'ditto',
  'from',
  'for',
  'both',
  'two',
  'plot',
  'far',
  'near',
  'middle',
  'end',
  'inlet',
  'outlet',
  'side',
  'edge',
  'fish',
  'ditch',
  'this',
  'drain',
  'down',
  'up',
  'head',
  'tail',
  'no',
  'wait',
  'sorry',
  'yeah',
  'yes',
  'i',
  'mean',
  'counted',
  'while',
  'but',
  'with',
  'on',
  'field',
  'north',
  'south',
  'east',
  'west',
  'road',
  'corner',
  'vs.',
  'than',
  'green',
  'very',
  'low',
  'high',
  'close',
  'far',
  'farther',
  's',
  'n',
  'e',
  'w',
  'rest',
  'half',
]);
const REACH_IN_SENTENCE = 16;
const REACH_BEYOND = 12;

export function carryOn(around: Surroundings, figures: Figure[]): Figure[] {
  forward(around, figures);
  backward(around, figures);
  return figures;
}

/** The model is the last figure that was read; figures of no quantity (`at 76 DAT`) stand aside. */
function forward(around: Surroundings, figures: Figure[]): void {
  const starts = new Set(figures.map(({ number }) => number.first));
  let before: Figure | null = null;
  for (const figure of figures) {
    if (before && isOpen(figure) && isMoistureOf(around, before, figure)) {
      figure.reads = [
        { quantity: 'grain_moisture_pct', value: figure.number.value, rule: 'beside-the-weight' },
      ];
      continue;
    }
    const model = before && modelOf(before, figure);
    if (before && model && isOpen(figure) && joins(around, before, figure, starts))
      take(around, figure, model);
    if (isOpen(figure) && figure.shape.kind === 'percent')
      figure.reads = readPercentWidely(around, figure.number).filter(
        (read) =>
          isPlausible(read) && ruledOut(around, figure.number, figure.shape.last, read.quantity) === null,
      );
    if (figure.reads.length > 0) before = figure;
  }
}

/** `6.4 t/ha @ 21%`, `5.9 at 22.5`: grain is weighed with its moisture. */
const isMoistureOf = (around: Surroundings, before: Figure, figure: Figure): boolean =>
  before.reads[0]?.quantity === 'grain_yield' &&
  figure.number.first - before.shape.last <= 4 &&
  /^(at|@)$/.test(wordOf(around, figure.number.first - 1)) &&
  (figure.shape.kind === 'percent' || figure.shape.kind === 'bare') &&
  figure.number.value >= 10 &&
  figure.number.value <= 40;

/** `4.1, 5.3 and 4.6 t/ha`, `58 against 71 cm`: the unit stands behind the last. */
function backward(around: Surroundings, figures: Figure[]): void {
  for (let index = figures.length - 2; index >= 0; index--) {
    const figure = figures[index] as Figure;
    const after = figures[index + 1] as Figure;
    if (
      !isOpen(figure) ||
      after.out ||
      after.reads.length !== 1 ||
      figure.shape.kind !== 'bare' ||
      after.shape.kind === 'share' ||
      after.shape.kind === 'percent'
    )
      continue;
    if (/^(by|at|on|from)$/.test(wordOf(around, figure.number.first - 1))) continue;
    if (!isTight(around, figure.shape.last + 1, after.number.first)) continue;
    take(around, figure, after);
  }
}

const isOpen = (figure: Figure): boolean => !figure.out && figure.reads.length === 0;

/** The figure whose quantity the next may share, where their units allow it. */
function modelOf(before: Figure, figure: Figure): Figure | null {
  if (before.reads.length !== 1 || (before.out && figure.shape.kind !== 'bare')) return null;
  const kind = figure.shape.kind;
  if (kind === 'bare') return before;
  return kind === before.shape.kind && (kind === 'length' || kind === 'percent') ? before : null;
}

/** Everything between the two, or from the last plot on, only joins; a sentence may end between where a plot leads on. */
function joins(around: Surroundings, before: Figure, figure: Figure, starts: ReadonlySet<number>): boolean {
  const from = before.shape.last + 1;
  const to = figure.number.first;
  const apart = (around.tokens[to]?.sentence ?? 0) - (around.tokens[from - 1]?.sentence ?? 0);
  if (
    apart > 1 ||
    to - from > (apart === 0 ? REACH_IN_SENTENCE : REACH_BEYOND) ||
    /^(by|at)$/.test(wordOf(around, to - 1))
  )
    return false;
  if (!endsHere(around, figure.shape.last + 1) && !starts.has(figure.shape.last + 1))
    return isLed(around, before, figure, to - from);
  for (let index = to - 1; index >= from; index--) {
    if (around.isPlot(index)) return true;
    if (starts.has(index)) continue;
    if (!JOINS.has(wordOf(around, index)) && wordOf(around, index) !== '.')
      return isLed(around, before, figure, to - from);
  }
  return apart === 0;
}

/** `BPH was 15 a hill Tue, now 22 near the drain`, `T1R1 ahead, 30`, `the fish ditch 55`: led to by its plot or a word of now. */
function isLed(around: Surroundings, before: Figure, figure: Figure, gap: number): boolean {
  if (
    gap > REACH_IN_SENTENCE ||
    around.tokens[before.number.first]?.sentence !== around.tokens[figure.number.first]?.sentence
  )
    return false;
  const lead = wordOf(around, figure.number.first - 1);
  const led =
    around.isPlot(figure.number.first - 1) ||
    /^(now|today|versus|vs|against|is|maybe|and)$/.test(lead) ||
    (lead === 'reading' && wordOf(around, figure.number.first - 2) === 'same');
  return led && (endsHere(around, figure.shape.last + 1) || lead === 'reading');
}

const isTight = (around: Surroundings, from: number, to: number): boolean => {
  if (to - from > 6) return false;
  for (let index = from; index < to; index++)
    if (
      !/^(,|and|n|or|against|versus|vs|v|&|then|\/|the|um|uh)$/.test(wordOf(around, index)) &&
      !around.isPlot(index)
    )
      return false;
  return to > from;
};

/** Reads the figure as the model was read, scaled to the model's unit. */
function take(around: Surroundings, figure: Figure, model: Figure): void {
  const [first] = model.reads;
  if (!first) return;
  const value = scaled(figure, model, first);
  const read: Read = { quantity: first.quantity, value, rule: `${first.rule}, in a row` };
  if (!isPlausible(read) || ruledOut(around, figure.number, figure.shape.last, read.quantity) !== null)
    return;
  figure.reads = [read];
}

function scaled(figure: Figure, model: Figure, read: Read): number {
  const { value } = figure.number;
  if (figure.shape.kind === 'length') return Number(figure.shape.value.toPrecision(6));
  if (read.quantity === 'air_temperature')
    return celsius(value, model.shape.kind === 'temperature' && model.shape.unit.name === 'degree F');
  if (model.shape.kind === 'length')
    return Number((value * model.shape.unit.toBase * (read.quantity === 'rainfall' ? 10 : 1)).toPrecision(6));
  if (model.shape.kind === 'crop-weight')
    return Number(((value * model.shape.tPerHa) / model.number.value).toPrecision(4));
  return model.shape.kind === 'per-m2' ? Number((value * model.shape.perM2).toPrecision(6)) : value;
}
