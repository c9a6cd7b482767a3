import type { Token } from '../text.ts';
import type { NumberFound } from './number-found.ts';

const UNIT_WORDS = new Set([
  'inch',
  'foot',
  'metre',
  'meter',
  'yard',
  'bag',
  'sack',
  'kilo',
  'kg',
  'litre',
  'liter',
  'pound',
  'gallon',
  'quart',
  'pint',
  'ton',
  'tonne',
  'acre',
  'hectare',
  'finger',
  'hand',
]);
const NOT_ONE = new Set(['per', 'the', '/', 'by', 'each', 'every', 'square', 'sq', 'half', 'quarter', 'on']);

/**
 * Numbers with the ones that only an article says: `an inch`, `a bag of urea`, `inch and a half`. Such a number ends
 * right before its unit. `3 bags a hectare` and `two to an acre` have none.
 */
export function withOneOfAUnit(tokens: Token[], numbers: NumberFound[]): NumberFound[] {
  const taken = new Set<number>();
  for (const { first, last } of numbers) for (let index = first; index <= last; index++) taken.add(index);
  const ones: NumberFound[] = [];
  tokens.forEach((token, index) => {
    if (!UNIT_WORDS.has(token.lower) || taken.has(index) || taken.has(index - 1)) return;
    const article = /^(a|an)$/.test(tokens[index - 1]?.lower ?? '');
    const before = tokens[article ? index - 2 : index - 1]?.lower ?? '';
    const followsFigure =
      taken.has(article ? index - 2 : index - 1) ||
      isUnitOfFigure(tokens, article ? index - 2 : index - 1, taken);
    const toArea = before === 'to' && /^(acre|hectare)$/.test(token.lower);
    if (toArea || NOT_ONE.has(before) || followsFigure || (!article && !isAndAHalf(tokens, index))) return;
    ones.push({ first: article ? index - 1 : index, last: index - 1, value: 1, form: 'cardinal' });
  });
  return ones.length === 0 ? numbers : [...numbers, ...ones].sort((a, b) => a.first - b.first);
}

const isUnitOfFigure = (tokens: Token[], at: number, taken: ReadonlySet<number>): boolean =>
  taken.has(at - 1) &&
  /^(kg|kilo|kilos|bags?|sacks?|lbs?|pounds?|litres?|liters?|ml|tons?|tonnes?|g|gallons?|quarts?|pints?|bushels?|maunds?|hills?|oz)$/.test(
    tokens[at]?.lower ?? '',
  );

const isAndAHalf = (tokens: Token[], at: number): boolean =>
  tokens[at + 1]?.lower === 'and' &&
  (tokens[at + 2]?.lower === 'half' || (tokens[at + 2]?.lower === 'a' && tokens[at + 3]?.lower === 'half'));
