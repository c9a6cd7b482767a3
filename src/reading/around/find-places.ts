/** Words that name a place within a plot: `along the north bund`, `SE corner`, `near the cane brake`, `the eastern half`. */
import type { Passage } from '../engine/passage.ts';
import { addPhrases, emptyTree, phrasesAt } from '../engine/phrase-tree.ts';
import {
  AMBIGUOUS_NOUNS,
  DEGREES,
  DETERMINERS,
  NO_PLACE_WORDS,
  PLACE_NOUNS,
  PLAIN_POINTERS,
  PLANT_AND_TIME,
  POINTERS,
  PREPOSITIONS,
  SURE_PREPOSITIONS,
  WHOLE_PHRASES,
} from '../lexicon/places.ts';

export interface PlaceFound {
  first: number;
  last: number;
  preposed: boolean;
}

type Lead = 'sure' | 'plain' | 'from' | 'none';

const LEADS = emptyTree<Lead>();
addPhrases(LEADS, SURE_PREPOSITIONS, 'sure');
addPhrases(LEADS, PREPOSITIONS, 'plain');
const NOUNS = emptyTree<true>();
addPhrases(NOUNS, PLACE_NOUNS, true);
const WHOLE = emptyTree<true>();
addPhrases(WHOLE, WHOLE_PHRASES, true);

export function findPlaces(passage: Passage): PlaceFound[] {
  const found: PlaceFound[] = [];
  for (let at = 0; at < passage.tokens.length; at++) {
    const place = passage.plotOver[at] ? null : placeAt(passage, at);
    if (!place) continue;
    found.push(place);
    at = place.last;
  }
  return found;
}

function placeAt(passage: Passage, at: number): PlaceFound | null {
  const { lead, next } = leadAt(passage, at);
  const whole = wholeEnd(passage, at);
  const withThe =
    passage.tokens[at]!.lower === 'rest' && passage.tokens[at - 1]?.lower === 'the' ? at - 1 : at;
  if (whole >= 0) return { first: withThe, last: extend(passage, whole), preposed: true };
  const end = nounPhraseEnd(passage, next, lead);
  return end < 0 ? null : { first: at, last: extend(passage, end), preposed: lead !== 'none' };
}

/** Prepositions in a row, degrees before them included: `way down by`, `right beside`. */
function leadAt(passage: Passage, at: number): { lead: Lead; next: number } {
  let lead: Lead = 'none';
  let next = at;
  for (
    let steps = 0;
    steps < 4 && next < passage.tokens.length && (next === at || passage.walls[next]! === 0);
    steps++
  ) {
    const hit = phrasesAt(LEADS, passage, next)[0];
    if (hit) {
      lead = hit.meanings[0]! === 'sure' ? 'sure' : passage.tokens[next]!.lower === 'from' ? 'from' : 'plain';
      next = passage.following[hit.last]!;
    } else if (DEGREES.has(passage.tokens[next]!.lower) && phrasesAt(LEADS, passage, next + 1).length > 0)
      next++;
    else break;
  }
  return { lead, next };
}

interface Walk {
  determined: boolean;
  pointed: boolean;
  /** Last token of the last noun of place, -1 where none was met. */
  noun: number;
}

const MOST_WORDS = 6;

/** The last token of a noun phrase that names a place, or -1. */
function nounPhraseEnd(passage: Passage, at: number, lead: Lead): number {
  const whole = lead === 'none' ? -1 : wholeEnd(passage, at);
  if (whole >= 0) return whole;
  const walk = walkNouns(passage, at);
  if (walk.noun < 0) return lead === 'none' ? -1 : unknownNounEnd(passage, at, lead);
  if (PLANT_AND_TIME.has(passage.tokens[at - 1]?.lower ?? '')) return -1;
  if (
    isOfPlantOrTime(passage, walk.noun) ||
    passage.timeAt[at] ||
    NOT_HEADS.test(passage.tokens[walk.noun + 1]?.lower ?? '')
  )
    return -1;
  const noun = passage.tokens[walk.noun]!.lower;
  const ambiguous = AMBIGUOUS_NOUNS.has(noun) || AMBIGUOUS_NOUNS.has(noun.replace(/s$/, ''));
  if (/^(half|third|quarter)s?$/.test(noun)) return walk.pointed ? walk.noun : -1;
  if (lead === 'from') return /(side|end|corner|edge|bund|levee|bank)s?$/.test(noun) ? walk.noun : -1;
  if (lead === 'sure') return walk.noun;
  if (lead === 'plain') return !ambiguous || walk.determined || walk.pointed ? walk.noun : -1;
  if (noun === 'turn') return -1;
  return walk.pointed || /^(corner|edge|margin|middle|center|centre|headland|border)s?$/.test(noun)
    ? walk.noun
    : -1;
}

function wholeEnd(passage: Passage, at: number): number {
  const whole = phrasesAt(WHOLE, passage, at)[0];
  if (!whole || passage.plotOver[whole.last] || isOfPlantOrTime(passage, whole.last)) return -1;
  return passage.tokens[at]!.lower !== 'rest' || isRestOfPlot(passage, at) ? whole.last : -1;
}

/** `the rest is clean`, `in the rest`; not `the rest we pull by Friday`, `taller than the rest`. */
const isRestOfPlot = (passage: Passage, at: number): boolean =>
  passage.tokens[at - 1]?.lower === 'the' &&
  (/^(in|on|through|over)$/.test(passage.tokens[at - 2]?.lower ?? '') ||
    /^(is|are|has|looks?|of|,|clean|fine|ok|okay|good)$/.test(passage.tokens[at + 1]?.lower ?? ''));

/** `the gate is leaking`: fine; `the drain cleaning`, `the pump driver`: another noun takes over. */
const NOT_HEADS = /^(spacing|driver|operator|repair|repairs|cleaning|count|oil|motor|battery)$/;

function isOfPlantOrTime(passage: Passage, last: number): boolean {
  let at = last + 1;
  if (!/^(of|in)$/.test(passage.tokens[at]?.lower ?? '')) return false;
  while (/^(of|in|the|a|an|this|that|each|old|older|lower|upper)$/.test(passage.tokens[at]?.lower ?? ''))
    at++;
  return PLANT_AND_TIME.has(passage.tokens[at]?.lower ?? '');
}

/** Determiners, pointers, at most two other words, and nouns of place, as far as nothing divides. */
function walkNouns(passage: Passage, start: number): Walk {
  const walk: Walk = { determined: false, pointed: false, noun: -1 };
  let other = 0;
  let at = start;
  for (let steps = 0; steps < MOST_WORDS && at < passage.tokens.length; steps++) {
    if (passage.plotOver[at] || (at > start && passage.walls[at]! > 0)) break;
    const { lower, kind } = passage.tokens[at]!;
    if (PLANT_AND_TIME.has(lower)) break;
    const noun = phrasesAt(NOUNS, passage, at)[0];
    const points = POINTERS.has(lower) || /.(ern|side|'s)$/.test(lower);
    if (noun && !passage.plotOver[noun.last]) {
      if (points && (noun.last > at || isNounBehind(passage, noun.last))) walk.pointed = true;
      walk.noun = noun.last;
      at = passage.following[noun.last]!;
      continue;
    }
    if (walk.noun >= 0) break;
    if (points) walk.pointed = true;
    else if (DETERMINERS.has(lower)) walk.determined = true;
    else if (
      kind !== 'word' ||
      !walk.determined ||
      NOT_IN_NAMES.test(lower) ||
      phrasesAt(LEADS, passage, at).length > 0 ||
      ++other > 2
    )
      break;
    at = passage.following[at]!;
  }
  return walk;
}

const isNounBehind = (passage: Passage, last: number): boolean => {
  const next = passage.following[last]!;
  return (
    next < passage.tokens.length &&
    passage.walls[next] === 0 &&
    !passage.plotOver[next] &&
    phrasesAt(NOUNS, passage, next).length > 0
  );
};

/** Words that end a noun phrase. */
const NOT_IN_NAMES =
  /^(is|are|was|were|be|been|has|have|had|do|does|did|will|would|shall|should|can|could|may|might|must|need|needs|and|or|but|so|then|because|cause|since|if|when|while|where|which|who|that|than|as|of|to|in|on|at|by|with|from|for|near|not|no|now|only|also|still|already|very|too|just|i|we|he|she|it|they|you|there|here|today|tomorrow|tonight|yesterday|maybe|about|look|looks|looking|come|coming|get|gets|got|go|goes|going|weeds?|rats?|snails?|birds?|hills?|plants?|yellow|dry|wet)$/;

/** Behind `near`, `along` and their like any noun with an article: `near the cane brake`; else only behind a plain pointer. */
function unknownNounEnd(passage: Passage, start: number, lead: Lead): number {
  let at = start;
  while (DETERMINERS.has(passage.tokens[at]?.lower ?? '') || /'s$/.test(passage.tokens[at]?.lower ?? ''))
    at++;
  if (PLAIN_POINTERS.test(passage.tokens[at]?.lower ?? '')) at++;
  else if (lead !== 'sure') return -1;
  if (at === start || !isPlainNoun(passage, at)) return -1;
  return isPlainNoun(passage, at + 1) && !isPlainNoun(passage, at + 2) ? at + 1 : at;
}

const isPlainNoun = (passage: Passage, at: number): boolean => {
  const token = passage.tokens[at];
  return (
    token?.kind === 'word' &&
    passage.walls[at] === 0 &&
    !passage.plotOver[at] &&
    !passage.timeAt[at] &&
    !NOT_IN_NAMES.test(token.lower) &&
    !PLANT_AND_TIME.has(token.lower) &&
    !NO_PLACE_WORDS.has(token.lower)
  );
};

const LINKS =
  /^(of|by|near|nearest|with|beside|along|at|from|in|on|between|facing|behind|under|next|towards?)$/;

/** `in the corner by the road`, `at the end of the third row`, `the dike of Mang Isko`. */
function extend(passage: Passage, last: number): number {
  const link = passage.following[last]!;
  const word = passage.tokens[link]?.lower ?? '';
  if (!LINKS.test(word) || passage.walls[link]! > 0 || passage.plotOver[link]) return last;
  const { next } = leadAt(passage, link);
  const start = next > link ? next : link + 1;
  if (start >= passage.tokens.length || passage.walls[start]! > 0 || passage.plotOver[start]) return last;
  const end = nounPhraseEnd(passage, start, 'plain');
  if (end >= 0) return extend(passage, end);
  if (word !== 'of') return last;
  let name = start;
  while (name < start + 2 && /^\p{Lu}/u.test(passage.tokens[name]?.text ?? '') && !passage.plotOver[name])
    name++;
  return name > start ? name - 1 : last;
}
