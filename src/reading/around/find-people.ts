/** Who was asked, told or named to do work: people of the farm, crews, and names after `ask`, `tell`, `get`. */

import type { Passage } from '../engine/passage.ts';
import { phrasesAt } from '../engine/phrase-tree.ts';
import { FAMILIES } from '../lexicon/families.ts';
import { NOT_NAMES } from '../lexicon/not-names.ts';
import { PEOPLE_BEFORE_VERB, TITLES } from '../lexicon/people.ts';

export interface PersonFound {
  first: number;
  last: number;
  /** `asked`: `told Ana to …`; `named`: `Ana will …`; `called`: `…, Ana.`; `means`: `by the crew`. */
  how: 'asked' | 'named' | 'called' | 'means';
}

const ASK = new Set(
  'ask asked asking tell told telling get getting have having send sending let inform informed warn warned call remind reminded want wants make need show for request requested instruct instructed'.split(
    ' ',
  ),
);
const WILL = new Set(
  "will 'll to can should must shall is are has have going gonna comes come checks fills opens does weeds sprays pulls nets starts start goes go opens opening and weigh move scare pick replant'll knows".split(
    ' ',
  ),
);

export function findPeople(passage: Passage, names: readonly string[]): PersonFound[] {
  const known = new Set(names.flatMap((name) => name.toLowerCase().split(/\s+/)));
  const found: PersonFound[] = [];
  for (let at = 0; at < passage.tokens.length; at++) {
    if (passage.plotOver[at]) continue;
    const end = personEnd(passage, at, known);
    if (end < 0) continue;
    const how = howNamed(passage, at, end);
    if (how) found.push({ first: withArticle(passage, at), last: withTail(passage, end), how });
    at = end;
  }
  return found;
}

const withArticle = (passage: Passage, at: number): number =>
  /^(the|our|all|six|five|four|three|two|one|my|his|her|some)$/.test(passage.tokens[at - 1]?.lower ?? '')
    ? at - 1
    : at;

/** `me and Dodong`, `miguel n them`, `the neighbour below`. */
function withTail(passage: Passage, end: number): number {
  const next = passage.tokens[end + 1]?.lower ?? '';
  const then = passage.tokens[end + 2]?.lower ?? '';
  if ((next === 'and' || next === 'n' || next === '&') && /^(them|him|her|me|co)$/.test(then)) return end + 2;
  if ((next === 'and' || next === '&') && passage.tokens[end + 2] && isCapital(passage, end + 2))
    return end + 2;
  return next === 'below' || next === 'above' ? end + 1 : end;
}

function personEnd(passage: Passage, at: number, known: ReadonlySet<string>): number {
  const token = passage.tokens[at]!;
  if (token.kind !== 'word') return -1;
  const plain = token.lower.replace(/'(s|ll|d)$/, '');
  if (TITLES.has(token.lower)) {
    let end = at + 1;
    if (passage.tokens[end]?.text === '.') end++;
    if (
      passage.tokens[end]?.kind === 'word' &&
      (isCapital(passage, end) || passage.note.channel === 'dictated')
    )
      return isCapital(passage, end + 1) &&
        passage.walls[end + 1] === 0 &&
        passage.tokens[end + 1]?.kind === 'word' &&
        !NOT_NAMES.has(passage.tokens[end + 1]!.lower)
        ? end + 1
        : end;
  }
  if (known.has(plain)) return at;
  const crew = phrasesAt(FAMILIES.people, passage, at)[0];
  if (crew) return crew.last;
  if (isName(passage, at, plain))
    return isCapital(passage, at + 1) && isName(passage, at + 1, passage.tokens[at + 1]!.lower) ? at + 1 : at;
  return -1;
}

const isCapital = (passage: Passage, at: number): boolean =>
  /^\p{Lu}\p{Ll}/u.test(passage.tokens[at]?.text ?? '');

/** A capital within a sentence, or a word that nothing else explains after `ask`, `tell` or before `will`. */
function isName(passage: Passage, at: number, plain: string): boolean {
  const token = passage.tokens[at];
  if (token?.kind !== 'word' || NOT_NAMES.has(plain) || plain.length < 2 || /(ing|ed)$/.test(plain))
    return false;
  const opensSentence = at === 0 || passage.walls[at]! >= 3;
  if (
    isCapital(passage, at) &&
    (!opensSentence ||
      /^(will|to|is|has|checks|opens|comes|and|can|,|i|says)$/.test(passage.tokens[at + 1]?.lower ?? ''))
  )
    return true;
  const before = passage.tokens[at - 1]?.lower ?? '';
  const next = passage.tokens[at + 1]?.lower ?? '';
  const asked = /^(ask|asked|tell|told|have|get|call|inform|warn|remind)$/.test(before);
  return (
    (asked &&
      (next === 'to' ||
        PEOPLE_BEFORE_VERB.has(next) ||
        passage.walls[at + 1] !== 0 ||
        next === '' ||
        /^(tomorrow|today|tonight|about|that|and|the|for)$/.test(next))) ||
    (/^(will|must|shall)$/.test(next) && passage.note.channel === 'dictated') ||
    (/'s$/.test(token.lower) && /^(to|going|gonna|coming|gotta|on)$/.test(next)) ||
    token.lower.endsWith("'ll")
  );
}

function howNamed(passage: Passage, first: number, last: number): PersonFound['how'] | null {
  let before = first - 1;
  while (
    /^(the|our|all|six|five|four|three|two|one|my|those|some|to|with|old)$/.test(
      passage.tokens[before]?.lower ?? '',
    )
  )
    before--;
  if (ASK.has(passage.tokens[before]?.lower ?? '') && passage.walls[first]! < 2) return 'asked';
  const next = passage.tokens[last + 1];
  if (passage.tokens[last]!.lower.endsWith("'ll")) return 'named';
  if (next && WILL.has(next.lower)) return 'named';
  if (
    next &&
    /^(i|we)$/.test(next.lower) &&
    /^(have|'ve|told|asked)$/.test(passage.tokens[last + 2]?.lower ?? '')
  )
    return 'asked';
  if (passage.tokens[before]?.lower === 'by') return 'means';
  const closes = next === undefined || /^[.!?]$/.test(next.text);
  if (passage.tokens[first - 1]?.text === ',' && closes) return 'called';
  if (passage.walls[first]! >= 2 && next?.text === ',') return 'called';
  if (next && (passage.walls[first]! >= 1 || first === 0) && PEOPLE_BEFORE_VERB.has(next.lower))
    return 'named';
  return null;
}
