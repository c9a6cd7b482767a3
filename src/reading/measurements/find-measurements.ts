/** Figures about the crop, the field and the weather, each in the vocabulary's unit. */
import { waterLevelDose } from '../doses/water-level.ts';
import type { NumberFound } from '../numbers/find-numbers.ts';
import { withOneOfAUnit } from '../numbers/one-of-a-unit.ts';
import type { Quantity } from '../record.ts';
import type { Token } from '../text.ts';
import { readArea, readSides } from './areas.ts';
import { readBare } from './bare.ts';
import { carryOn } from './carry-on.ts';
import { isTakenBack } from './corrections.ts';
import { readCropWeight } from './crop-weights.ts';
import { readPerHill, readPerSquareMetre } from './densities.ts';
import type { Figure } from './figure.ts';
import { ruledOut } from './guards.ts';
import { readHeadedLists } from './headed-lists.ts';
import { readLength } from './lengths.ts';
import { readProportion } from './proportions.ts';
import { isPlausible, type ReadFigure } from './reading.ts';
import { type Shape, shapeOf } from './shapes.ts';
import { type Surroundings, surroundingsOf } from './surroundings.ts';
import { readTemperature } from './temperatures.ts';

/** `value` is in the vocabulary's unit; `first` and `last` are token indexes, both included, of the number and its unit. */
export interface MeasurementFound {
  first: number;
  last: number;
  quantity: Quantity;
  value: number;
  rule: string;
  /** Token of the plot that leads to the figure (`B1 4, B2 3.5`), where only joining words stand between. */
  plotAt?: number;
}

const READERS: Readonly<Record<Shape['kind'], ReadFigure>> = {
  percent: readProportion,
  share: readProportion,
  fraction: readProportion,
  'per-hill': readPerHill,
  'per-m2': readPerSquareMetre,
  length: readLength,
  area: readArea,
  sides: readSides,
  'crop-weight': readCropWeight,
  temperature: readTemperature,
  bare: readBare,
  none: () => [],
};

/**
 * In the order of the text. `isPlot` says whether a token belongs to the name of a plot; it keeps codes from being
 * read as figures and tells lists by plot (`LCC: B1 4, B2 3.5`) apart. Linear in length; never throws.
 */
export function findMeasurements(
  tokens: Token[],
  numbers: NumberFound[],
  isPlot: (index: number) => boolean = () => false,
): MeasurementFound[] {
  const around = surroundingsOf(tokens, isPlot);
  const own = withOneOfAUnit(tokens, numbers).filter((number) => !isPlot(number.first));
  const read = figuresOf(around, own);
  readHeadedLists(around, read);
  const figures = carryOn(around, read);
  const found: MeasurementFound[] = [];
  figures.forEach((figure, index) => {
    if (figure.out || isTakenBack(around, figures, index)) return;
    const plotAt = plotLeadingTo(around, figure.number.first);
    for (const { quantity, value, rule } of figure.reads) {
      const place = { first: figure.number.first, last: figure.shape.last };
      found.push({ ...place, quantity, value, rule, ...(plotAt !== null && { plotAt }) });
    }
  });
  return found;
}

function figuresOf(around: Surroundings, numbers: NumberFound[]): Figure[] {
  const figures: Figure[] = [];
  for (let index = 0; index < numbers.length; index++) {
    const number = numbers[index] as NumberFound;
    const lastFigure = figures.at(-1);
    if (lastFigure && lastFigure.shape.kind === 'per-m2' && number.first <= lastFigure.shape.last) continue;
    const figure = settle(around, number, shapeOf(around.tokens, number, numbers[index + 1]));
    const isPair = figure.shape.kind === 'sides' && figure.reads.length > 0;
    figures.push(
      figure.shape.kind === 'sides' && !isPair
        ? settle(around, number, shapeOf(around.tokens, number, undefined))
        : figure,
    );
    if (isPair) index++;
  }
  return figures;
}

function settle(around: Surroundings, number: NumberFound, shape: Shape): Figure {
  const reads = READERS[shape.kind](around, number, shape).filter(isPlausible);
  const dose =
    shape.kind === 'length' || shape.kind === 'bare' ? waterLevelDose(around.tokens, number) : null;
  const out =
    dose !== null ||
    shape.kind === 'none' ||
    (reads[0] !== undefined && ruledOut(around, number, shape.last, reads[0].quantity) !== null);
  return { number, shape, reads, out };
}

const LEADS = new Set(
  'is are was at about around only also ahead , : has having got now say maybe gave which the reading reads shows showing average averages i count of in today up nearly roughly , per'.split(
    ' ',
  ),
);
const LEAD_REACH = 8;

/** The last token of the plot named right before a figure, past its quantity's own words: `B-1 heading is 80 %`. */
function plotLeadingTo(around: Surroundings, first: number): number | null {
  for (let index = first - 1; index >= Math.max(0, first - LEAD_REACH); index--) {
    if (around.tokens[index]?.sentence !== around.tokens[first]?.sentence) return null;
    if (around.isPlot(index)) return index;
    const from = around.topicFrom[Math.max(0, index - 3)] ?? 0;
    const named = around.topics
      .slice(from, from + 4)
      .some((topic) => topic.first <= index && index <= topic.last);
    if (!named && !LEADS.has(around.tokens[index]?.lower ?? '')) return null;
  }
  return null;
}
