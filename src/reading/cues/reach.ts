/** Which cues reach a thing that was found. Without code a row: side and reach are read from it. */
import { type Passage, wallBetween } from '../engine/passage.ts';
import type { CueFound } from './find-cues.ts';

export interface Target {
  first: number;
  last: number;
}

const FAR: Readonly<Record<'touch' | 'next' | 'clause' | 'sentence', number>> = {
  touch: 2,
  next: 9,
  clause: 14,
  sentence: 60,
};
/** A comma may stand between a cue behind and its target (`rats, none`), and between the parts of a list. */
const LIST = /^(or|nor|and|,|\/|n|&|neither|no|any|of|the|much|other|more)$/;

/** `targets` holds everything found, in order; `index` is the place of the target in it. */
export function reaches(passage: Passage, cue: CueFound, targets: readonly Target[], index: number): boolean {
  const target = targets[index]!;
  const { side, reach } = cue.row;
  const opensInto =
    cue.first < target.first && cue.last >= target.first && cue.last <= target.last && side !== 'before';
  if (opensInto) return wallBetween(passage, cue.first, target.first) < 2;
  if (cue.first <= target.last && cue.last >= target.first) return false;
  if (cue.last < target.first) return side !== 'before' && reachesAhead(passage, cue, targets, index, reach);
  return side !== 'after' && reachesBack(passage, cue, targets, index, reach);
}

function reachesAhead(
  passage: Passage,
  cue: CueFound,
  targets: readonly Target[],
  index: number,
  reach: CueFound['row']['reach'],
): boolean {
  const target = targets[index]!;
  const distance = target.first - cue.last - 1;
  if (
    cue.row.id === 'no …' &&
    (distance > 3 || standsBehindItsOwn(passage, cue, targets, index)) &&
    !isListedFrom(passage, cue, targets, index)
  )
    return false;
  if (distance > FAR[reach] || isPastItsVerb(passage, cue, distance))
    return reach === 'next' && isListedFrom(passage, cue, targets, index);
  const wall = wallBetween(passage, cue.last, target.first);
  if (reach === 'sentence') return wall < 3 && (passage.note.channel === 'typed' || distance <= 24);
  if (wall >= 2 || isAboutOwnCount(passage, cue, distance)) return false;
  if (reach === 'clause') return true;
  if (reach === 'touch') return wall === 0;
  const between = firstBetween(targets, cue.last, index);
  if (between < index) return isListedFrom(passage, cue, targets, index);
  return wall === 0 || cue.last + 2 >= target.first;
}

/** `i have not put anything there give it urea`: without stops a `not` does not go far. */
const isPastItsVerb = ({ note }: Passage, { row }: CueFound, distance: number): boolean =>
  row.says === 'ruled_out' && row.side === 'after' && note.channel === 'dictated' && distance > 4;

/** `maybe i count six in the plot pull them out`: the hedge has a verb of its own. */
const isAboutOwnCount = (passage: Passage, cue: CueFound, distance: number): boolean =>
  cue.row.says === 'proposed' &&
  distance > 2 &&
  /^(maybe|perhaps|probably|possibly)$/.test(passage.tokens[cue.last]!.lower) &&
  !/^(we|should|could|can|to|a|the|some|another|it|then|also|just|put|do|need)$/.test(
    passage.tokens[cue.last + 1]?.lower ?? '',
  );

function reachesBack(
  passage: Passage,
  cue: CueFound,
  targets: readonly Target[],
  index: number,
  reach: CueFound['row']['reach'],
): boolean {
  const target = targets[index]!;
  const distance = cue.first - target.last - 1;
  if (passage.tokens[cue.first]!.text === '?')
    return (
      distance <= 6 &&
      wallBetween(passage, target.last, cue.first) < 3 &&
      isLastBefore(targets, index, cue.first)
    );
  if (distance > FAR[reach]) return false;
  if (
    isForNext(passage, cue, targets, index) ||
    (cue.row.id === '… no' && !isChained(passage, cue, targets, index))
  )
    return false;
  const wall = wallBetween(passage, target.last, cue.first);
  if (reach === 'sentence') return wall < 3 && (passage.note.channel === 'typed' || distance <= 24);
  if (
    wall >= 2 &&
    !(
      cue.row.says === 'cleared' &&
      isLastBefore(targets, index, cue.first) &&
      isRelative(passage, target.last, cue.first)
    )
  )
    return false;
  if (reach === 'clause')
    return isLastBefore(targets, index, cue.first) || isListedTo(passage, targets, index, cue.first);
  if (reach === 'touch') return distance <= 2 && isLastBefore(targets, index, cue.first);
  return (
    (wall === 0 || distance <= 2) &&
    (isLastBefore(targets, index, cue.first) || isListedTo(passage, targets, index, cue.first))
  );
}

/** `white head no medicine`: the `no` is for what follows. */
const NO_OF_WORK =
  /^(need|medicine|spray|spraying|more|action|urea|water|treatment|use|problem|worry|other|one|chemical|insecticide|fungicide|herbicide|fertilizer|fertiliser|money|time|way|doubt|idea)$/;

/** `rat no bird no`: each `no` stands behind its own; `rat no bird none`: the `no` is for the bird. */
function isChained(passage: Passage, cue: CueFound, targets: readonly Target[], index: number): boolean {
  if (NO_OF_WORK.test(passage.tokens[cue.last + 1]?.lower ?? '')) return false;
  const next = targets[index + 1];
  if (!next || next.first - cue.last > 2) return true;
  return /^no$/.test(passage.tokens[next.last + 1]?.lower ?? '');
}

/** `neck blast nothing, brown spot …`, `rat no snail no`: the word has its own target in front of it. */
function standsBehindItsOwn(
  passage: Passage,
  cue: CueFound,
  targets: readonly Target[],
  index: number,
): boolean {
  const before = targets[index - 1];
  if (!before || before.last !== cue.first - 1 || cue.first !== cue.last) return false;
  const word = passage.tokens[cue.first]!.lower;
  return (
    word === 'nothing' ||
    word === 'none' ||
    (word === 'no' && passage.tokens[targets[index]!.last + 1]?.lower === 'no')
  );
}

/** `parakeets, which were a plague last week, have gone`. */
const isRelative = (passage: Passage, from: number, to: number): boolean => {
  for (let at = from + 1; at < to; at++) {
    if (passage.walls[at]! >= 3) return false;
    if (passage.walls[at]! === 2 && !/^(which|who|that|where)$/.test(passage.tokens[at]!.lower)) return false;
  }
  return true;
};

/** `pull by hand, not worth spraying`: what stands right behind the cue takes it. */
function isForNext(passage: Passage, cue: CueFound, targets: readonly Target[], index: number): boolean {
  if (cue.row.on !== 'action' || !/^(ruled_out|proposed)$/.test(cue.row.says)) return false;
  const next = targets[index + 1];
  if (passage.tokens[cue.last]!.lower === 'more' && passage.tokens[cue.last + 1]?.kind === 'word')
    return (
      passage.walls[cue.last + 1] === 0 &&
      !/^(now|today|here|this)$/.test(passage.tokens[cue.last + 1]!.lower)
    );
  return (
    next !== undefined &&
    next.first > cue.last &&
    next.first - cue.last <= 3 &&
    wallBetween(passage, cue.last, next.first) === 0 &&
    passage.tokens[cue.first]!.text !== '?'
  );
}

/** Index of the first target that starts behind `place`. */
const firstBetween = (targets: readonly Target[], place: number, index: number): number => {
  let first = index;
  while (first > 0 && targets[first - 1]!.first > place && index - first < 8) first--;
  return first;
};

const isLastBefore = (targets: readonly Target[], index: number, place: number): boolean => {
  const next = targets[index + 1];
  return next === undefined || next.first >= place;
};

/** `no rats, birds or hoppers`: only joining words between the parts, and an `or` or `nor` where a comma divides. */
function isListedFrom(passage: Passage, cue: CueFound, targets: readonly Target[], index: number): boolean {
  let first = firstBetween(targets, cue.last, index);
  if (
    targets[first]!.first - cue.last > FAR.next ||
    wallBetween(passage, cue.last, targets[first]!.first) >= 2
  )
    return false;
  let joined = false;
  for (; first < index; first++) {
    const words = passage.tokens
      .slice(targets[first]!.last + 1, targets[first + 1]!.first)
      .map(({ lower }) => lower);
    if (words.length > 4 || !words.every((word) => LIST.test(word)) || words.length === 0) return false;
    joined = words.some((word) => /^(or|nor|\/)$/.test(word)) || words.includes('and');
    if (!joined && !endsInOr(passage, targets, first + 1)) return false;
  }
  return true;
}

const endsInOr = (passage: Passage, targets: readonly Target[], at: number): boolean => {
  for (let index = at; index + 1 < targets.length && index < at + 4; index++) {
    const words = passage.tokens
      .slice(targets[index]!.last + 1, targets[index + 1]!.first)
      .map(({ lower }) => lower);
    if (words.length === 0 || words.length > 3 || !words.every((word) => LIST.test(word))) return false;
    if (words.some((word) => word === 'or' || word === 'nor')) return true;
  }
  return false;
};

/** `rats and birds gone`, `flat and leaning gone`. */
function isListedTo(passage: Passage, targets: readonly Target[], index: number, place: number): boolean {
  for (let at = index; targets[at + 1] && targets[at + 1]!.first < place; at++) {
    const words = passage.tokens
      .slice(targets[at]!.last + 1, targets[at + 1]!.first)
      .map(({ lower }) => lower);
    if (
      words.length === 0 ||
      words.length > 3 ||
      !words.some((word) => word === 'and' || word === 'or' || word === '&')
    )
      return false;
  }
  return true;
}
