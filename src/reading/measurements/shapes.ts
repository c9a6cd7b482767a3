/** What a number stands with: a unit, `per hill`, a frame, another side, or nothing. */
import type { NumberFound } from '../numbers/find-numbers.ts';
import { ACRE_M2, perUnitAt, type Unit, unitAt } from '../numbers/units.ts';
import { longestAt, phrasesOf, treeOf } from '../numbers/word-tree.ts';
import type { Token } from '../text.ts';

export type Shape =
  | { kind: 'percent'; last: number }
  | { kind: 'share'; last: number }
  | { kind: 'fraction'; last: number }
  | { kind: 'per-hill'; last: number }
  /** `perM2` turns the count into one for a square metre. */
  | { kind: 'per-m2'; last: number; perM2: number }
  | { kind: 'length'; last: number; unit: Unit; value: number }
  | { kind: 'area'; last: number; unit: Unit; value: number }
  | { kind: 'sides'; last: number; a: number; b: number; unit: Unit | null }
  | { kind: 'crop-weight'; last: number; unit: Unit; tPerHa: number }
  | { kind: 'temperature'; last: number; unit: Unit }
  | { kind: 'bare'; last: number }
  | { kind: 'none'; last: number };

const PER_HILL = treeOf<true>(
  phrasesOf(
    'per hill, per hills, / hill, / hills, a hill, each hill, every hill, one hill, on a hill, on one hill, in a hill, in one hill, to a hill, to the hill, par hill, on each hill, on every hill, per stool, per clump, per plant hill, per hil, p / hill, the hill, an hill, by hill, / hl, in each hill, on the hill, in every hill, perhill, for a hill, for each hill, for one hill, on one, hill by hill',
    true,
  ),
);
const COUNTED = new Set(
  (
    'tillers tiller hoppers hopper insects insect bugs bug bph wbph glh brown plant planthoppers planthopper panicles panicle heads head ears stems shoots larvae nymphs adults worms snails snail weeds weed sedges sedge grasses grass hills hill plants ' +
    'barnyard egg masses of live green small rice pieces pcs nos no. leafhoppers folders burrows kuhol average avg on in ave mean culms big adult productive effective seedlings thrips clumps stools'
  ).split(' '),
);

const NEVER_A_READING = new Set(
  (
    'dat das dap days day weeks week wks wk months month years hours hour hrs minutes minute am pm times people persons workers labour labourers laborers women men boys girls pax traps rats sacks plots plot points places spots photos samples ' +
    "readings leaves leaf nodes o th st nd rd mph km trucks rupees pesos dollars taka o'clock oclock clock d a.m p.m hands ladies guys fellas loads trips bundles steps paces rounds passes"
  ).split(' '),
);

export function shapeOf(tokens: Token[], number: NumberFound, next: NumberFound | undefined): Shape {
  const { last, form } = number;
  if (form === 'ordinal') return { kind: 'none', last };
  if (form === 'share') return { kind: 'share', last };
  const perHill = countPer(tokens, last, (at) => longestAt(PER_HILL, tokens, at)?.last ?? null);
  if (perHill !== null && form !== 'percent' && !number.percent) return { kind: 'per-hill', last: perHill };
  if (form === 'percent' || number.percent) return { kind: 'percent', last };
  return (
    frameShape(tokens, number) ??
    sidesShape(tokens, number, next) ??
    unitShape(tokens, number) ??
    (form === 'fraction' ? { kind: 'fraction', last } : bareShape(tokens, number))
  );
}

/** Where a `per …` ends that starts at once or behind up to three counted words (`14 hoppers per hill`). */
function countPer(tokens: Token[], last: number, endOf: (at: number) => number | null): number | null {
  for (let at = last + 1; at <= last + 4; at++) {
    const end = endOf(at);
    if (end !== null) return end;
    if (!COUNTED.has(tokens[at]?.lower ?? '')) return null;
  }
  return null;
}

/** `20 per sq m`, `14 in one sq m`, `62 sedges in a quarter-square-metre frame`, `9 per square foot`. */
function frameShape(tokens: Token[], number: NumberFound): Shape | null {
  let perM2 = 0;
  const end = countPer(tokens, number.last, (at) => {
    const frame = frameAt(tokens, at);
    if (frame) perM2 = 1 / frame.m2;
    return frame?.last ?? null;
  });
  return end === null ? null : { kind: 'per-m2', last: end, perM2 };
}

/** A counted frame: its size in square metres and where its words end. */
export function frameAt(tokens: Token[], at: number): { m2: number; last: number } | null {
  const part = partOfFrame(tokens, at);
  if (part) return part;
  const per = perUnitAt(tokens, at);
  if (per && per.value.dimension === 'area' && per.value.toBase <= 1)
    return { m2: per.value.toBase, last: pastFrame(tokens, per.last) };
  return null;
}

const FRAME_PARTS: ReadonlyMap<string, number> = new Map([
  ['quarter', 0.25],
  ['half', 0.5],
  ['tenth', 0.1],
  ['0.25', 0.25],
  ['0.5', 0.5],
  ['two', 2],
  ['four', 4],
  ['five', 5],
  ['ten', 10],
  ['2', 2],
  ['4', 4],
  ['5', 5],
  ['10', 10],
  ['3', 3],
  ['three', 3],
  ['.25', 0.25],
]);

/** `in a quarter-square-metre frame`, `in half a square metre`, `in a half metre square`, `per 0.25 m2`, `in 4 square metres`. */
function partOfFrame(tokens: Token[], at: number): { m2: number; last: number } | null {
  if (!/^(in|per|inside|from|on|\/)$/.test(tokens[at]?.lower ?? '')) return null;
  let index = at + 1;
  while (/^(a|an|one|the|of|my)$/.test(tokens[index]?.lower ?? '') && index < at + 3) index++;
  const part = FRAME_PARTS.get(tokens[index]?.lower ?? '');
  if (part === undefined) return null;
  index++;
  while (/^(-|a|of|an)$/.test(tokens[index]?.lower ?? '') && index < at + 7) index++;
  const joined = squareWithDash(tokens, index) ?? unitAt(tokens, index);
  return joined && joined.value.dimension === 'area' && joined.value.toBase <= 1
    ? { m2: part * joined.value.toBase, last: pastFrame(tokens, joined.last) }
    : null;
}

const squareWithDash = (tokens: Token[], at: number) => {
  if (tokens[at]?.lower !== 'square' || tokens[at + 1]?.lower !== '-') return null;
  const unit = unitAt(tokens, at + 2);
  return unit?.value.name === 'm'
    ? { value: { name: 'm2', dimension: 'area', toBase: 1 } as Unit, last: unit.last }
    : null;
};

const pastFrame = (tokens: Token[], last: number): number =>
  /^(frame|quadrat|quadrant|square|ring)$/.test(tokens[last + 1]?.lower ?? '') ? last + 1 : last;

/** `25 by 20`, `20 x 15 cm`, `9 inch by 9`, `3 by 4 meter`, `20 feet by 30`. */
function sidesShape(tokens: Token[], number: NumberFound, next: NumberFound | undefined): Shape | null {
  if (next?.form !== 'cardinal' || number.form !== 'cardinal') return null;
  const own = lengthAt(tokens, number.last + 1, false);
  const joinAt = (own?.last ?? number.last) + 1;
  const join = tokens[joinAt]?.lower ?? '';
  const crossed = /^x\d/.test(join) && next.first === joinAt;
  if (!crossed && !(/^(by|x|×|\*)$/.test(join) && next.first === joinAt + 1)) return null;
  const other = lengthAt(tokens, next.last + 1, false);
  const unit = other ?? own;
  return {
    kind: 'sides',
    last: other?.last ?? next.last,
    a: number.value * (own?.value.toBase ?? unit?.value.toBase ?? 1),
    b: next.value * (unit?.value.toBase ?? 1),
    unit: unit?.value ?? null,
  };
}

function unitShape(tokens: Token[], number: NumberFound): Shape | null {
  const at = number.last + 1;
  const start = pastArticle(tokens, at, number.form === 'fraction');
  const found = lengthAt(tokens, start, true) ?? otherUnitAt(tokens, start);
  if (!found) return null;
  const half = addedHalf(tokens, found.last);
  const value = (number.value + (half ? 0.5 : 0)) * found.value.toBase;
  const last = half ?? found.last;
  const rate = perUnitAt(tokens, last + 1);
  if (found.value.dimension === 'mass' || found.value.dimension === 'grain-volume')
    return cropWeight(number, found.value, last, rate);
  if (found.value.dimension === 'length')
    return isPerTime(tokens, last)
      ? { kind: 'none', last }
      : { kind: 'length', last, unit: found.value, value };
  if (found.value.dimension === 'area') return { kind: 'area', last, unit: found.value, value };
  if (found.value.dimension === 'temperature') return { kind: 'temperature', last, unit: found.value };
  return { kind: 'none', last };
}

/** `half a metre`, `a tenth of an acre`, `quarter-inch`, `5-cm flood`. */
function pastArticle(tokens: Token[], at: number, fraction: boolean): number {
  const words = [tokens[at]?.lower ?? '', tokens[at + 1]?.lower ?? ''];
  if (fraction && words[0] === 'of' && /^(a|an|one)$/.test(words[1] ?? '')) return at + 2;
  if (fraction && /^(a|an|of)$/.test(words[0] ?? '')) return at + 1;
  return words[0] === '-' && tokens[at]?.start === tokens[at - 1]?.end ? at + 1 : at;
}

/** `an inch and a half`: the last token of the half. */
function addedHalf(tokens: Token[], last: number): number | null {
  const words = [1, 2, 3].map((step) => tokens[last + step]?.lower ?? '');
  if (words[0] !== 'and') return null;
  if (words[1] === 'a' && words[2] === 'half') return last + 3;
  return words[1] === 'half' ? last + 2 : null;
}

const BEHIND_INCH = new Set([
  'of',
  'deep',
  'tall',
  'high',
  'standing',
  'on',
  'water',
  'rain',
  'above',
  'below',
  'wide',
  'and',
  'apart',
  'down',
  'now',
  'or',
  'today',
  'long',
  'flood',
  'under',
  'rows',
]);

/** Length units; a bare `in`, `m`, `'` or `"` only where it can be nothing else. */
function lengthAt(tokens: Token[], at: number, standing: boolean): { value: Unit; last: number } | null {
  const unit = unitAt(tokens, at);
  if (unit?.value.dimension !== 'length') return null;
  const word = tokens[at]?.lower ?? '';
  const next = tokens[unit.last + 1];
  const touching = tokens[at]?.start === tokens[at - 1]?.end;
  if (word === 'in' && standing)
    return touching || !next || next.kind === 'mark' || BEHIND_INCH.has(next.lower) ? unit : null;
  if (word === 'in')
    return next && /^(by|x|×)$/.test(next.lower) ? unit : !next || next.kind === 'mark' ? unit : null;
  if (/^['"”″]$/.test(word)) return touching ? unit : null;
  if (/^(hand|hands|palm|palms|span|spans)$/.test(word))
    return next && /^(of|deep|high|wide)$/.test(next.lower) ? unit : null;
  return unit;
}

function otherUnitAt(tokens: Token[], at: number): { value: Unit; last: number } | null {
  const unit = unitAt(tokens, at);
  if (!unit || unit.value.dimension === 'length') return null;
  const { dimension } = unit.value;
  if (
    dimension === 'temperature' &&
    /^[cf]$/.test(tokens[at]?.lower ?? '') &&
    tokens[at]?.text !== tokens[at]?.text.toUpperCase()
  )
    return null;
  return unit;
}

const isPerTime = (tokens: Token[], last: number): boolean =>
  /^(\/|per|a|each|every|in)$/.test(tokens[last + 1]?.lower ?? '') &&
  /^(d|day|hour|hr|week|night|wk)$/.test(tokens[last + 2]?.lower ?? '') &&
  tokens[last + 3]?.lower !== 'old';

function cropWeight(
  number: NumberFound,
  unit: Unit,
  last: number,
  per: { value: Unit; last: number } | null,
): Shape {
  // Bushels and barrels are told by the acre, whether it is said or not.
  if (!per && unit.dimension === 'grain-volume')
    return { kind: 'crop-weight', last, unit, tPerHa: (number.value * unit.toBase * 10) / ACRE_M2 };
  if (per?.value.dimension !== 'area' || per.value.toBase < 100) return { kind: 'none', last };
  return {
    kind: 'crop-weight',
    last: per.last,
    unit,
    tPerHa: (number.value * unit.toBase * 10) / per.value.toBase,
  };
}

function bareShape(tokens: Token[], number: NumberFound): Shape {
  const next = tokens[number.last + 1];
  const touching = next && next.start === tokens[number.last]?.end;
  const before = tokens[number.first - 1];
  if (
    before?.text === ':' &&
    before.end === tokens[number.first]?.start &&
    tokens[number.first - 2]?.kind === 'number'
  )
    return { kind: 'none', last: number.last };
  if (touching && next.text === '-' && tokens[number.last + 2]?.start === next.end)
    return { kind: 'none', last: number.last };
  if (
    next &&
    (NEVER_A_READING.has(next.lower) || unitAt(tokens, number.last + 1)?.value.dimension === 'bags')
  )
    return { kind: 'none', last: number.last };
  if (touching && next.kind !== 'mark') return { kind: 'none', last: number.last };
  if (
    touching &&
    (next.text === ':' || next.text === '/') &&
    /^\d/.test(tokens[number.last + 2]?.lower ?? '') &&
    next.text === ':'
  )
    return { kind: 'none', last: number.last };
  return { kind: 'bare', last: number.last };
}
