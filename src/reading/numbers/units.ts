/**
 * Units as growers write and say them. Factors are exact by definition where no other source stands beside them:
 * international yard and pound agreement of 1959 (inch 2.54 cm, pound 0.45359237 kg), international acre
 * 4046.8564224 m2, US gallon 231 cubic inches (NIST Handbook 44, appendix C).
 */

import type { Token } from '../text.ts';
import { longestAt, phrasesOf, treeOf } from './word-tree.ts';

export type Dimension = 'length' | 'area' | 'mass' | 'volume' | 'grain-volume' | 'bags' | 'temperature';

/** `toBase` turns the figure into cm, m2, kg, L, kg of rough rice, bags or degrees Celsius. */
export interface Unit {
  name: string;
  dimension: Dimension;
  toBase: number;
}

const unit = (words: string, name: string, dimension: Dimension, toBase: number): [string, Unit][] =>
  phrasesOf(words, { name, dimension, toBase });

const INCH_CM = 2.54;
const POUND_KG = 0.45359237;
export const ACRE_M2 = 4046.8564224;
const US_GALLON_L = 3.785411784;

const UNITS = treeOf<Unit>([
  ...unit(
    'mm, millimetre, millimetres, millimeter, millimeters, mms, mil, mils, milli, millis, mm.',
    'mm',
    'length',
    0.1,
  ),
  ...unit(
    'cm, cms, centimetre, centimetres, centimeter, centimeters, centi, centis, c m, cents, sentimeter, centimètres, sm',
    'cm',
    'length',
    1,
  ),
  ...unit('m, metre, metres, meter, meters, mtr, mtrs, mt', 'm', 'length', 100),
  ...unit('inch, inches, in, ins, inchs, inche, ", ”, ″', 'inch', 'length', INCH_CM),
  ...unit("foot, feet, ft, fts, '", 'foot', 'length', 12 * INCH_CM),
  ...unit('yard, yards, yd, yds', 'yard', 'length', 36 * INCH_CM),
  // Common practice: a finger laid flat is taken as about 2 cm, a hand's breadth as about 10 cm, a hand span as about 20 cm.
  ...unit('finger, fingers', 'finger', 'length', 2),
  ...unit('hand, hands, palm, palms', 'hand', 'length', 10),
  ...unit('span, spans, dangkal, handspan', 'span', 'length', 20),
  ...unit(
    'm2, m 2, m², m ², sq m, sqm, sq ms, sq metre, sq metres, sq meter, sq meters, square metre, square metres, square meter, square meters, sq . m, metre square, meter square, metres square, metre squared, meter squared, m sq, square m, msq, m^2, m ^ 2, metre carré',
    'm2',
    'area',
    1,
  ),
  ...unit('square foot, square feet, sq ft, sqft, sq feet, sq foot, ft2', 'square foot', 'area', 0.09290304),
  ...unit('square yard, square yards, sq yd, sq yds', 'square yard', 'area', 0.83612736),
  ...unit('acre, acres, ac, acs, acr', 'acre', 'area', ACRE_M2),
  ...unit('hectare, hectares, ha, hec, hect, hecter, hectar, h a', 'ha', 'area', 10000),
  // A kanal is an eighth of an acre where the acre of 4840 square yards is cut so (Punjab, common practice).
  ...unit('kanal, kanals', 'kanal', 'area', ACRE_M2 / 8),
  // 1600 square metres by Thai law (common practice); a bigha or katha differs from district to district and is left alone.
  ...unit('rai', 'rai', 'area', 1600),
  ...unit(
    'kg, kgs, kilo, kilos, kilogram, kilograms, kilogramme, kilogrammes, k g, kilogrammes, kg.',
    'kg',
    'mass',
    1,
  ),
  ...unit('g, gm, gms, gr, gram, grams, gramme, grammes, grm', 'g', 'mass', 0.001),
  ...unit('lb, lbs, pound, pounds, #, lb.', 'lb', 'mass', POUND_KG),
  ...unit(
    'ton, tons, tonne, tonnes, t, tonn, metric ton, metric tons, metric tonne, metric tonnes, mt., tan',
    't',
    'mass',
    1000,
  ),
  ...unit('quintal, quintals, qtl, qtls, q', 'quintal', 'mass', 100),
  ...unit('cavan, cavans', 'cavan', 'mass', 50),
  // Forty kilograms is the maund of grain trade in Pakistan today (common practice); notes mostly say so themselves.
  ...unit('maund, maunds, mound of 40 kg, maund of 40 kg, maunds of 40 kg', 'maund', 'mass', 40),
  ...unit('cwt, hundredweight', 'cwt', 'mass', 100 * POUND_KG),
  // Forty-five pounds of rough rice to the bushel (USDA weights and measures for grain; the annotation guide).
  ...unit('bushel, bushels, bu, bus, bushl', 'bushel', 'grain-volume', 45 * POUND_KG),
  ...unit('barrel, barrels, bbl, bbls', 'barrel', 'grain-volume', 162 * POUND_KG),
  ...unit('l, litre, litres, liter, liters, ltr, ltrs, lit, lits, lt', 'L', 'volume', 1),
  ...unit(
    'ml, mls, millilitre, millilitres, milliliter, milliliters, cc, ccs, c c, m l, ml.',
    'mL',
    'volume',
    0.001,
  ),
  ...unit('gallon, gallons, gal, gals', 'gallon', 'volume', US_GALLON_L),
  ...unit('quart, quarts, qt, qts', 'quart', 'volume', US_GALLON_L / 4),
  ...unit('pint, pints, pt, pts', 'pint', 'volume', US_GALLON_L / 8),
  ...unit('fl oz, fluid ounce, fluid ounces, ounce, ounces, oz', 'fluid ounce', 'volume', US_GALLON_L / 128),
  ...unit('bag, bags, sack, sacks, bagful, bgs, katta, sako', 'bag', 'bags', 1),
  ...unit(
    '° c, °c, degrees c, degree c, deg c, degrees celsius, degree celsius, degrees centigrade, celsius, centigrade, c, ℃, degrees, degree, deg, °',
    'degree',
    'temperature',
    1,
  ),
  ...unit(
    '° f, °f, degrees f, degree f, deg f, degrees fahrenheit, degree fahrenheit, fahrenheit, f, ℉',
    'degree F',
    'temperature',
    1,
  ),
]);

/** The unit whose words start at token `at`. */
export const unitAt = (tokens: Token[], at: number): { value: Unit; last: number } | null =>
  longestAt(UNITS, tokens, at);

const PER = treeOf<true>([
  ...phrasesOf(
    '/, per, a, an, for a, in 1, per 1, per one, / 1, to the, to an, each, every, for one, for each, in one, one, p, par, for, by, on one, on a, in a, on an',
    true as const,
  ),
]);

/** What the figure is for one of: `per hectare`, `to the acre`, `/ha`, `a hectare`, `one hectare`, `ha-1`. */
export function perUnitAt(tokens: Token[], at: number): { value: Unit; last: number } | null {
  const inverse = unitAt(tokens, at);
  if (inverse && tokens[inverse.last + 1]?.lower === '-' && tokens[inverse.last + 2]?.lower === '1')
    return { value: inverse.value, last: inverse.last + 2 };
  const per = longestAt(PER, tokens, at);
  return per ? unitAt(tokens, per.last + 1) : null;
}
