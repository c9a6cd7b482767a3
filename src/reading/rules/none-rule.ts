/** `None in the T2s`, `other place no`: looked for the same thing there, and not found. */

import { type Passage, wallBetween } from '../engine/passage.ts';
import { within } from '../engine/within.ts';
import type { FindingMention } from './mentions.ts';

const NONE = /^(none|nil)$/;
const PLACE_NO = /^(place|places|side|elsewhere|rest|others?)$/;

export function withNones(passage: Passage, problems: FindingMention[]): FindingMention[] {
  const added: FindingMention[] = [];
  for (let at = 1; at < passage.tokens.length; at++) {
    const word = passage.tokens[at]!.lower;
    const alone = NONE.test(word) || (word === 'no' && PLACE_NO.test(passage.tokens[at - 1]!.lower));
    if (
      !alone ||
      passage.plotOver[at] ||
      /\b(say|said)\b/.test(
        passage.tokens
          .slice(Math.max(0, at - 4), at)
          .map(({ lower }) => lower)
          .join(' '),
      )
    )
      continue;
    const before = within(problems, at - 60, at - 1).findLast(({ last }) => last < at);
    if (!before || at - before.last > 40 || hasOwnProblem(passage, problems, at) || isOfOther(passage, at))
      continue;
    if (word === 'no' && !placeBefore(passage, at)) continue;
    added.push({
      ...before,
      says: 'absent',
      first: at,
      last: at,
      sign: false,
      weak: false,
      rule: 'none-of-it',
    });
  }
  return added.length === 0 ? problems : [...problems, ...added].sort((a, b) => a.first - b.first);
}

/** `rats none`, `leaf folder none`, `none of the plots`: the word belongs to a problem of its own clause. */
const hasOwnProblem = (passage: Passage, problems: readonly FindingMention[], at: number): boolean =>
  within(problems, at - 20, at + 6).some(
    ({ first, last }) =>
      (last < at && at - last <= 3 && wallBetween(passage, last, at) < 2) ||
      (first > at && first - at <= 4 && wallBetween(passage, at, first) < 2),
  );

const isOfOther = (passage: Passage, at: number): boolean =>
  /^(of|but|too|other)$/.test(passage.tokens[at + 1]?.lower ?? '');
const placeBefore = (passage: Passage, at: number): boolean =>
  /^(other|elsewhere|rest)$/.test(passage.tokens[at - 2]?.lower ?? '') ||
  PLACE_NO.test(passage.tokens[at - 1]!.lower);
