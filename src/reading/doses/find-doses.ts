/** How much was or is to be put on: the figure in one of the vocabulary's units, and of what. */

import type { NumberFound } from '../numbers/find-numbers.ts';
import { withOneOfAUnit } from '../numbers/one-of-a-unit.ts';
import { perUnitAt, type Unit, unitAt } from '../numbers/units.ts';
import type { Dose } from '../record.ts';
import type { Token } from '../text.ts';
import type { DoseFound } from './dose-found.ts';
import { type MaterialFound, materialAt } from './materials.ts';
import { waterLevelDose } from './water-level.ts';

export type { DoseFound } from './dose-found.ts';

/** Doses in the order of the text. A figure of yield or of harvest is none. Linear; never throws. */
export function findDoses(tokens: Token[], numbers: NumberFound[]): DoseFound[] {
  const found: DoseFound[] = [];
  const all = withOneOfAUnit(tokens, numbers);
  for (const [index, number] of all.entries()) {
    const dose = rateDose(tokens, number) ?? unitsOfN(tokens, number) ?? waterLevelDose(tokens, number);
    if (dose && !isCorrected(tokens, dose.last, all, index + 1)) found.push(dose);
  }
  return found;
}

function rateDose(tokens: Token[], number: NumberFound): DoseFound | null {
  if (number.form === 'ordinal' || number.form === 'percent' || number.percent || number.value <= 0)
    return null;
  const amount = amountOf(tokens, number);
  if (!amount) return null;
  const after = materialBehind(tokens, amount.last + 1);
  const rateAt = after ? after.last + 1 : amount.last + 1;
  const rate: Rate | null = perUnitAt(tokens, rateAt) ?? perLitres(tokens, rateAt);
  if (!rate && isPerVessel(tokens, rateAt)) return null;
  const behindRate = rate && !after ? materialBehind(tokens, rate.last + 1) : null;
  const last = behindRate?.last ?? rate?.last ?? after?.last ?? amount.last;
  const material = after ?? behindRate ?? materialBefore(tokens, number.first);
  const dose = inVocabulary(number.value + amount.added, amount.unit, rate?.value ?? null, rate?.count ?? 1);
  if (
    !dose ||
    !isPutOn(
      tokens,
      number,
      amount.unit,
      material,
      rate !== null,
      dose.unit === 'kg/ha' && dose.value >= 2000,
    )
  )
    return null;
  return {
    first: number.first,
    last,
    dose: material ? { ...dose, of: material.of } : dose,
    rule: rate ? 'rate' : 'amount',
  };
}

/** What the dose is for: one hectare, or `count` litres. */
interface Rate {
  value: Unit;
  last: number;
  count?: number;
}

/** `40 units of N`: American growers mean pounds to the acre (common practice). */
function unitsOfN(tokens: Token[], number: NumberFound): DoseFound | null {
  if (number.form !== 'cardinal' || !/^units?$/.test(tokens[number.last + 1]?.lower ?? '')) return null;
  const material = materialBehind(tokens, number.last + 2);
  if (!material || !/^(n|nitrogen)$/i.test(material.of)) return null;
  return {
    first: number.first,
    last: material.last,
    dose: { value: tidy(number.value * KG_PER_HA_OF_LB_PER_ACRE), unit: 'kg/ha', of: material.of },
    rule: 'units-of-n',
  };
}
const KG_PER_HA_OF_LB_PER_ACRE = 1.12085;

interface Amount {
  unit: Unit;
  last: number;
  /** `bag and a half` adds a half behind the unit. */
  added: number;
}

function amountOf(tokens: Token[], number: NumberFound): Amount | null {
  const next = tokens[number.last + 1]?.lower ?? '';
  const skip =
    next === 'a' || next === 'an' || next === 'of' || next === '-' || next === 'full' || next === 'more'
      ? 1
      : 0;
  if (skip && number.form !== 'fraction' && (next === 'a' || next === 'an' || next === 'of')) return null;
  const unit = unitAt(tokens, number.last + 1 + skip);
  if (!unit || !['mass', 'volume', 'bags'].includes(unit.value.dimension)) return null;
  const half = tokens.slice(unit.last + 1, unit.last + 4).map((token) => token.lower);
  if (half.join(' ') === 'and a half') return { unit: unit.value, last: unit.last + 3, added: 0.5 };
  return { unit: unit.value, last: unit.last, added: 0 };
}

/** `… urea`, `… of urea`, `… more of the potash`. */
function materialBehind(tokens: Token[], at: number): MaterialFound | null {
  let index = at;
  while (
    /^(of|the|more|that|each|actual|pure|some|total|bait|only)$/.test(tokens[index]?.lower ?? '') &&
    index < at + 3
  ) {
    const here = materialAt(tokens, index);
    if (here) return here;
    index++;
  }
  return materialAt(tokens, index);
}

const LOOK_BACK = 14;

/** The nearest material named before the figure: `Urea 1 bag per acre`, `put urea, half bag`. */
function materialBefore(tokens: Token[], at: number): MaterialFound | null {
  for (let index = at - 1; index >= Math.max(0, at - LOOK_BACK); index--) {
    if (tokens[index]?.sentence !== tokens[at]?.sentence) return null;
    const found = materialAt(tokens, index);
    if (!found || found.of.toLowerCase() === 'water') continue;
    const longer = materialAt(tokens, index - 1);
    return longer && longer.last >= found.last ? longer : found;
  }
  return null;
}

/** `200 mL per tank`: no unit of the vocabulary fits, as tanks differ. */
const isPerVessel = (tokens: Token[], at: number): boolean =>
  /^(per|a|each|every|\/|in|to)$/.test(tokens[at]?.lower ?? '') &&
  [1, 2].some((step) =>
    /^(tank|tankload|knapsack|pump|sprayer|load|hill|tree|drum|bucket|cap|capful|plot|bed|pot|backpack)$/.test(
      tokens[at + step]?.lower ?? '',
    ),
  );

/** `30 mL in 10 litres of water`, `25 ml per 16 litre tank`: per so many litres. */
function perLitres(tokens: Token[], at: number): Rate | null {
  if (!/^(in|per|\/|to|for)$/.test(tokens[at]?.lower ?? '')) return null;
  const index = tokens[at + 1]?.lower === 'a' || tokens[at + 1]?.lower === 'every' ? at + 2 : at + 1;
  const count = Number(tokens[index]?.lower);
  const unit = unitAt(tokens, tokens[index + 1]?.lower === '-' ? index + 2 : index + 1);
  return count > 0 && unit?.value.dimension === 'volume'
    ? { value: unit.value, last: unit.last, count }
    : null;
}

/** The figure in a unit of the vocabulary, or null where none fits (`200 mL a tank`). */
function inVocabulary(value: number, unit: Unit, per: Unit | null, count: number): Omit<Dose, 'of'> | null {
  const base = value * unit.toBase;
  if (!per) return whole(value, base, unit);
  if (per.dimension === 'volume')
    return unit.dimension === 'volume'
      ? { value: tidy((base * 1000) / (per.toBase * count)), unit: 'mL/L' }
      : null;
  if (per.dimension !== 'area') return null;
  if (unit.dimension === 'mass' && per.name === 'm2' && unit.name === 'g')
    return { value: tidy(value), unit: 'g/m2' };
  const perHectare = (base * 10000) / per.toBase;
  if (unit.dimension === 'mass') return { value: tidy(perHectare), unit: 'kg/ha' };
  if (unit.dimension === 'bags') return { value: tidy(perHectare), unit: 'bags/ha' };
  return unit.dimension === 'volume' ? { value: tidy(perHectare), unit: 'L/ha' } : null;
}

function whole(value: number, base: number, unit: Unit): Omit<Dose, 'of'> {
  if (unit.dimension === 'bags') return { value: tidy(value), unit: 'bags' };
  if (unit.dimension === 'volume') return { value: tidy(base), unit: 'L' };
  return unit.name === 'g' ? { value: tidy(value), unit: 'g' } : { value: tidy(base), unit: 'kg' };
}

/** Four figures are more than any spreader holds to. */
const tidy = (value: number): number => Number(value.toPrecision(4));

const YIELD_WORDS =
  /^(yield|yields|yielded|harvest|harvested|moisture|grain|ran|made|threshed|combine|wagon|bin|cut|gave|weighed|crop|cutting|paddy)$/;
const NOT_PUT_ON = /^(pay|paid|pays|price|cost|costs|sold|sell|bought|buy|weighs|wage|wages|rupees|dollars)$/;

/** Mass per area may be a harvest, and bags may be what came off: a dose wants a material, or a rate without a harvest near. */
function isPutOn(
  tokens: Token[],
  number: NumberFound,
  unit: Unit,
  material: MaterialFound | null,
  rated: boolean,
  isCropWeight: boolean,
): boolean {
  if (unit.dimension === 'grain-volume' || /^(t|maund|quintal|cwt|cavan)$/.test(unit.name)) return false;
  const unitBefore = tokens[number.first - 1]?.lower === 'of' && unitAt(tokens, number.first - 2) !== null;
  if (unitBefore || (!material && rated && unit.dimension === 'mass' && isCropWeight)) return false;
  let harvest = false;
  for (let index = Math.max(0, number.first - 8); index < Math.min(tokens.length, number.last + 6); index++) {
    const token = tokens[index];
    if (token?.sentence !== tokens[number.first]?.sentence) continue;
    if (NOT_PUT_ON.test(token?.lower ?? '')) return false;
    if (index < number.first && YIELD_WORDS.test(token?.lower ?? '')) harvest = true;
  }
  if (/^(per|by|a)$/.test(tokens[number.first - 1]?.lower ?? '') && !rated && !material) return false;
  return material !== null || (rated && !harvest) || unit.dimension === 'volume';
}

/** `60 lb of N, no, make it 45`: the later figure stands. */
function isCorrected(tokens: Token[], last: number, numbers: NumberFound[], from: number): boolean {
  let index = from;
  while ((numbers[index]?.first ?? last + 1) <= last) index++;
  const next = numbers[index];
  if (!next || next.first - last > 14) return false;
  const between = tokens
    .slice(last + 1, next.first)
    .map((token) => token.lower)
    .join(' ');
  const unit = unitAt(tokens, next.last + 1);
  return (
    unit !== null &&
    /(^| )(no|no wait|sorry|i mean|make it|make that|scratch that|rather|correction)( make it| make that| ,| it's| its)*$/.test(
      between,
    )
  );
}
