/** Changes for a later season: the sentence that speaks of `next season`, with the words that carry the change. */

import type { Passage } from '../engine/passage.ts';
import { addPhrases, emptyTree, phrasesAt } from '../engine/phrase-tree.ts';
import { LESSON_WORDS, NOT_A_LESSON } from '../lexicon/lesson-words.ts';
import type { LessonMention } from './mentions.ts';

const TREE = emptyTree<true>();
addPhrases(TREE, LESSON_WORDS, true);
const SPARED = emptyTree<true>();
addPhrases(SPARED, NOT_A_LESSON, true);

const MOST_WORDS = 30;

export function findLessons(passage: Passage): LessonMention[] {
  const found: LessonMention[] = [];
  for (let at = 0; at < passage.tokens.length; at++) {
    if (phrasesAt(SPARED, passage, at).length > 0) continue;
    const hit = phrasesAt(TREE, passage, at)[0];
    if (!hit || (found.at(-1)?.last ?? -1) >= at) continue;
    const lesson = around(passage, at, hit.last);
    if (lesson.last - lesson.first >= 3) found.push(lesson);
  }
  return found;
}

/** From the words themselves to the end of the sentence; where they close it, from the start of the clause. */
function around(passage: Passage, at: number, hitLast: number): LessonMention {
  let last = hitLast;
  while (last + 1 < passage.tokens.length && last - at < MOST_WORDS && passage.walls[last + 1]! < 3) last++;
  let first = at;
  const carries = last - hitLast >= 3;
  if (!carries)
    while (first > 0 && passage.walls[first]! < 3 && at - first < 22 && passage.plotAt[first] === undefined)
      first--;
  while (last > first && passage.tokens[last]!.kind === 'mark') last--;
  return { is: 'lesson', first, last, rule: 'later-season' };
}
