/** Words that name a place within a plot: `along the north bund`, `SE corner`, `near the tree`, `the eastern half`. */
import type { Passage } from '../engine/passage.ts';
import { phrasesAt } from '../engine/phrase-tree.ts';
import { FAMILIES } from '../lexicon/families.ts';

export interface PlaceFound {
  first: number;
  last: number;
  preposed: boolean;
}

const PREPOSITIONS = new Set(
  'at in on along near by beside besides around under over across behind within inside outside toward towards next down up above below round throughout against beyond alongside between opposite buy from just right off through to'.split(
    ' ',
  ),
);
const MODIFIERS = new Set(
  `the a an this that its our their his her one two three few some every lower upper left right far near north south east west northern southern eastern western n s e w ne nw se sw
   top bottom low high deep shallow inner outer middle whole other same opposite first last back front wet dry sandy shaded sunny grassy main old new big small little corner canal road tank channel
   windward leeward downhill uphill neighbour's neighbor's pump inlet outlet drain bar ditch bund levee dike water tree river house field edge border turn tile fence wheel tractor mango banana palm bamboo
   entire both most all outside inside farthest nearest furthest closest rd head tail end side gate boundary western-most bayou cassava seed planting combine power light open wet muddy rocky lower-most north-east south-east north-west south-west northeast southeast northwest southwest tule county highway`.split(
    /\s+/,
  ),
);
const LINKS = new Set(
  'of by near with beside where to along next at from in between facing behind under'.split(' '),
);
const NOT_PLACES_ALONE = new Set(
  'head top bottom north south east west row line third half quarter part turn toe foot spot area patch gate drain tube pipe tree road pump track box sign flag tank water bund levee dike bank well gap neighbour neighbor nursery seedbed fence ditch canal house yard mill barn school church path inlet outlet pond river border wall lane slope landing front back crest highway tail mouth post pole stake peg marker s n'.split(
    ' ',
  ),
);
const ALONE = new Set('elsewhere inside outside rest'.split(' '));

export function findPlaces(passage: Passage): PlaceFound[] {
  const found: PlaceFound[] = [];
  for (let at = 0; at < passage.tokens.length; at++) {
    const place = placeAt(passage, at, found.at(-1)?.last ?? -1);
    if (!place) continue;
    found.push(place);
    at = place.last;
  }
  return found;
}

function placeAt(passage: Passage, at: number, after: number): PlaceFound | null {
  const word = passage.tokens[at]!.lower;
  if (passage.plotOver[at]) return null;
  if (ALONE.has(word) && isAlonePlace(passage, at))
    return { first: withPreposition(passage, at, after), last: at, preposed: true };
  if (word === 'other' && /^(place|places|side|half|end)$/.test(passage.tokens[at + 1]?.lower ?? ''))
    return { first: withPreposition(passage, at, after), last: at + 1, preposed: true };
  if ((word === 'up' || word === 'down') && /^(top|low|high)$/.test(passage.tokens[at + 1]?.lower ?? ''))
    return { first: at, last: extend(passage, at + 1), preposed: true };
  const end = placeNounAt(passage, at);
  if (end < 0) return null;
  const start = startOf(passage, at, after);
  const first = withPreposition(passage, start, after);
  const preposed = first < start;
  if (!preposed && !mayStandAlone(passage, start, end)) return null;
  return { first, last: extend(passage, end), preposed };
}

const isAlonePlace = (passage: Passage, at: number): boolean => {
  const word = passage.tokens[at]!.lower;
  if (word === 'rest') return passage.tokens[at - 1]?.lower === 'the' || passage.walls[at]! >= 1;
  return word === 'elsewhere' || passage.tokens[at + 1]?.lower !== 'the' || true;
};

function placeNounAt(passage: Passage, at: number): number {
  const hit = phrasesAt(FAMILIES.place, passage, at)[0];
  if (!hit || passage.plotOver[hit.last]) return -1;
  const next = passage.following[hit.last]!;
  const onward =
    passage.tokens[next] && !passage.plotOver[next] && passage.walls[next] === 0
      ? placeNounAt(passage, next)
      : -1;
  return onward >= 0 ? onward : hit.last;
}

function startOf(passage: Passage, at: number, after: number): number {
  let start = at;
  while (start - 1 > after && at - start < 4 && isModifier(passage, start - 1) && passage.walls[start]! === 0)
    start--;
  return start;
}

const isModifier = (passage: Passage, at: number): boolean => {
  const { lower, kind, text } = passage.tokens[at]!;
  if (passage.plotOver[at]) return false;
  if (kind === 'mark') return text === '-';
  return (
    MODIFIERS.has(lower) ||
    /(ern|side|'s)$/.test(lower) ||
    (kind === 'number' && passage.numberAt[at] === undefined)
  );
};

function withPreposition(passage: Passage, start: number, after: number): number {
  let first = start;
  for (let steps = 0; steps < 3; steps++) {
    const before = first - 1;
    if (
      before <= after ||
      before < 0 ||
      !PREPOSITIONS.has(passage.tokens[before]!.lower) ||
      passage.walls[first]! >= 2
    )
      break;
    first = before;
  }
  return first;
}

/** `SE corner flat`, `canal side`, `the low end`; but `the road` alone is no place of the plot. */
function mayStandAlone(passage: Passage, start: number, end: number): boolean {
  const last = passage.tokens[end]!.lower.replace(/s$/, '');
  if (NOT_PLACES_ALONE.has(last) || NOT_PLACES_ALONE.has(passage.tokens[end]!.lower)) {
    return (
      end > start &&
      /^(half|third|quarter|part|row|strip|patch|spot|area|end|bund|levee|dike|bank|line|border|boundary|edge)$/.test(
        last,
      ) &&
      start < end &&
      hasPointer(passage, start, end)
    );
  }
  return (
    start < end ||
    /^(corner|edge|margin|middle|center|centre|headland|border)s?$/.test(passage.tokens[end]!.lower)
  );
}

const hasPointer = (passage: Passage, start: number, end: number): boolean => {
  for (let at = start; at < end; at++)
    if (
      /^(n|s|e|w|ne|nw|se|sw|north|south|east|west|lower|upper|low|high|far|top|bottom|left|right|first|last|outside|middle|canal|road|two|three|.*ern)$/.test(
        passage.tokens[at]!.lower,
      )
    )
      return true;
  return false;
};

/** `in the corner by the road`, `at the end of the third row`. */
function extend(passage: Passage, last: number): number {
  const next = passage.following[last]!;
  if (!passage.tokens[next] || passage.walls[next]! > 0 || !LINKS.has(passage.tokens[next]!.lower))
    return last;
  for (
    let at = passage.following[next]!, steps = 0;
    at < passage.tokens.length && steps < 4;
    at = passage.following[at]!, steps++
  ) {
    if (passage.walls[at]! > 0 || passage.plotOver[at]) return last;
    const end = placeNounAt(passage, at);
    if (end >= 0) return extend(passage, end);
    if (!isModifier(passage, at) && steps > 1) return last;
  }
  return last;
}
