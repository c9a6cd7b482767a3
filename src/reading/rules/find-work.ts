/** Work mentioned in a note: rules applied, overlaps settled for the longest, words in other uses left out. */
import type { Passage } from '../engine/passage.ts';
import { addPhrases, emptyTree, phrasesAt } from '../engine/phrase-tree.ts';
import { WORK_SPARES } from '../lexicon/work-spares.ts';
import type { ActionMention, StageMention, UnvisitedMention } from './mentions.ts';
import { applyRules, indexRules } from './rule.ts';
import { WORK_RULES } from './work-rules.ts';

const INDEX = indexRules(WORK_RULES);
const SPARED = emptyTree<true>();
addPhrases(SPARED, WORK_SPARES, true);

export function findWork(
  passage: Passage,
  unvisited: readonly UnvisitedMention[],
  stages: readonly StageMention[],
): ActionMention[] {
  const spared = sparedTokens(passage, [...unvisited, ...stages]);
  const found = applyRules(INDEX, passage).filter(
    (mention): mention is ActionMention =>
      mention.is === 'action' &&
      !spared[mention.first] &&
      !passage.plotOver[mention.first] &&
      !isInTime(passage, mention),
  );
  return settleOverlaps(found);
}

function sparedTokens(passage: Passage, taken: readonly { first: number; last: number }[]): Uint8Array {
  const spared = new Uint8Array(passage.tokens.length);
  for (const { first, last } of taken) spared.fill(1, first, last + 1);
  for (let at = 0; at < passage.tokens.length; at++) {
    const hit = phrasesAt(SPARED, passage, at)[0];
    if (hit) spared.fill(1, at, hit.last + 1);
  }
  return spared;
}

/** `after weeding`, `before the urea`: the work is only a point in time. */
const isInTime = (passage: Passage, { first, last }: ActionMention): boolean =>
  passage.times.some((time) => time.first < first && time.last >= last);

const FORM_RANK = { verb: 0, 'object first': 1, noun: 2 };

/** A longer phrase wins over a shorter one that it covers; a verb over a noun; the first over the second. */
function settleOverlaps(found: ActionMention[]): ActionMention[] {
  const ranked = [...found].sort(
    (a, b) =>
      FORM_RANK[a.form] - FORM_RANK[b.form] || b.last - b.first - (a.last - a.first) || a.first - b.first,
  );
  const kept: ActionMention[] = [];
  const over = new Map<number, ActionMention>();
  for (const mention of ranked) {
    let free = true;
    for (let at = mention.first; at <= mention.last && free; at++) free = !over.has(at);
    if (!free) continue;
    for (let at = mention.first; at <= mention.last; at++) over.set(at, mention);
    kept.push(mention);
  }
  return kept.sort((a, b) => a.first - b.first);
}
