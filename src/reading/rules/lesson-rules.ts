/** Changes for a later season: the sentence that speaks of `next season`, one lesson for each plot that it turns to. */
import type { Passage } from '../engine/passage.ts';
import { addPhrases, emptyTree, phrasesAt } from '../engine/phrase-tree.ts';
import { within } from '../engine/within.ts';
import { LESSON_WORDS, NOT_A_LESSON } from '../lexicon/lesson-words.ts';
import type { LessonMention } from './mentions.ts';

const TREE = emptyTree<true>();
addPhrases(TREE, LESSON_WORDS.replaceAll('\n', ' '), true);
const SPARED = emptyTree<true>();
addPhrases(SPARED, NOT_A_LESSON, true);

const MOST_WORDS = 30;

export function findLessons(passage: Passage): LessonMention[] {
  const found: LessonMention[] = [];
  for (let at = 0; at < passage.tokens.length; at++) {
    const spared = phrasesAt(SPARED, passage, at)[0];
    if (spared) {
      at = spared.last;
      continue;
    }
    const last = lessonWordsEnd(passage, at);
    if (last < 0 || (found.at(-1)?.last ?? -1) >= at) continue;
    const numbered = isHeading(passage, last) ? numberedBehind(passage, colonBehind(passage, last)) : [];
    if (numbered.length > 0) found.push(...numbered);
    else
      for (const lesson of byPlot(passage, around(passage, at, last)))
        if (lesson.last - lesson.first >= 3) found.push(lesson);
  }
  return found;
}

/** `next season` and its like, or a year to come (`2033: …`, `in 2033`). */
function lessonWordsEnd(passage: Passage, at: number): number {
  const hit = phrasesAt(TREE, passage, at)[0];
  if (hit) return hit.last;
  const word = passage.tokens[at]!.lower;
  const year = /^20\d\d$/.test(word) ? Number(word) - Number(passage.note.observedAt.slice(0, 4)) : 0;
  return (year === 1 || year === 2) &&
    (/^(for|in|4|note)$/.test(passage.tokens[at - 1]?.lower ?? '') ||
      /^[:=]$/.test(passage.tokens[at + 1]?.text ?? '')) &&
    !passage.timeAt[at]
    ? at
    : -1;
}

/** From the words themselves to the end of the sentence; where they close it, from the start of the clause. */
function around(passage: Passage, at: number, hitLast: number): LessonMention {
  let last = hitLast;
  while (last + 1 < passage.tokens.length && last - at < MOST_WORDS && passage.walls[last + 1]! < 3) last++;
  let first = at;
  const carries = last - hitLast >= 3;
  if (!carries)
    while (
      first > 0 &&
      passage.walls[first]! < 3 &&
      at - first < 22 &&
      passage.plotAt[first - 1] === undefined
    )
      first--;
  while (last > first && passage.tokens[last]!.kind === 'mark') last--;
  if (!carries && first > 0 && passage.plotAt[first - 1]) first--;
  return { is: 'lesson', first, last, rule: 'later-season' };
}

/** `For next boro the low plot 10 days earlier, and in the drum plot less seed`: two lessons. */
function byPlot(passage: Passage, lesson: LessonMention): LessonMention[] {
  const plots = within(passage.plots, lesson.first, lesson.last).filter(
    ({ role, last }) => role === 'subject' && last <= lesson.last,
  );
  const cuts = plots.slice(1).flatMap((plot, index) => {
    const before = plots[index]!;
    for (let at = plot.first; at > before.last; at--)
      if (passage.walls[at]! >= 1 || /^(and|n|&)$/.test(passage.tokens[at]!.lower))
        return plot.codes.join() === before.codes.join() ? [] : [at];
    return [];
  });
  const starts = [lesson.first, ...cuts];
  return starts.map((first, index) => ({
    ...lesson,
    first,
    last: (starts[index + 1] ?? lesson.last + 1) - 1,
  }));
}

const isHeading = (passage: Passage, last: number): boolean =>
  /^lessons?$/.test(passage.tokens[last]!.lower) &&
  passage.tokens.slice(last + 1, last + 5).some(({ text }) => text === ':');

function colonBehind(passage: Passage, last: number): number {
  let at = last;
  while (at < passage.tokens.length && passage.tokens[at]!.text !== ':') at++;
  return at;
}

/** `Lessons: (1) … (2) …`: each numbered sentence that names a plot. */
function numberedBehind(passage: Passage, last: number): LessonMention[] {
  const found: LessonMention[] = [];
  let first = last + 1;
  while (first < passage.tokens.length && passage.tokens[first]!.kind === 'mark') first++;
  while (
    first < passage.tokens.length &&
    passage.tokens[first]!.kind === 'number' &&
    passage.tokens[first + 1]?.kind === 'mark'
  ) {
    let end = first;
    while (end + 1 < passage.tokens.length && passage.walls[end + 1]! < 3) end++;
    if (within(passage.plots, first, end).length > 0)
      found.push({ is: 'lesson', first: first + 2, last: end, rule: 'later-season' });
    first = end + 1;
    while (first < passage.tokens.length && passage.tokens[first]!.kind === 'mark') first++;
  }
  return found;
}
