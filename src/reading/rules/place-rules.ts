/** Plots that were not looked at. */

import type { Passage } from '../engine/passage.ts';
import { addPhrases, emptyTree, phrasesAt } from '../engine/phrase-tree.ts';
import { NOT_VISITED } from '../lexicon/not-visited.ts';
import type { UnvisitedMention } from './mentions.ts';

const TREE = emptyTree<'bare' | 'plain' | 'direct'>();
addPhrases(TREE, NOT_VISITED.plain, 'plain');
addPhrases(TREE, NOT_VISITED.afterPlot, 'bare');
addPhrases(TREE, NOT_VISITED.direct, 'direct');

export function findUnvisited(passage: Passage): UnvisitedMention[] {
  const found: UnvisitedMention[] = [];
  for (let at = 0; at < passage.tokens.length; at++) {
    const hit = phrasesAt(TREE, passage, at)[0];
    if (!hit) continue;
    const direct = hit.meanings.every((meaning) => meaning === 'direct');
    if (direct && !passage.plotAt[hit.last + 1] && !passage.plotAt[hit.last + 2] && !followsPlot(passage, at))
      continue;
    const bare = hit.meanings.every((meaning) => meaning === 'bare');
    if (bare && !followsPlot(passage, at)) continue;
    if (!bare && !hasPlotBeside(passage, at, hit.last)) continue;
    found.push({ is: 'unvisited', first: at, last: hit.last, rule: 'not-looked-at' });
    at = hit.last;
  }
  return found;
}

const FILLER =
  /^(i|we|was|is|were|are|could|be|,|:|-|—|there|today|also|just|uh|um|,|itself|the|had|has|have|path|too|one|did|because|right|drove|ones?)$/;

function followsPlot(passage: Passage, at: number): boolean {
  for (let before = at - 1; before >= Math.max(0, at - 5); before--) {
    if (passage.plotOver[before]) return true;
    if (!FILLER.test(passage.tokens[before]!.lower)) return false;
  }
  return false;
}

/** The plot stands in the same sentence, before or right behind. */
function hasPlotBeside(passage: Passage, first: number, last: number): boolean {
  for (let at = first; at >= Math.max(0, first - 14) && (at === first || passage.walls[at + 1]! < 3); at--)
    if (passage.plotOver[at]) return true;
  for (let at = last + 1; at < passage.tokens.length && at <= last + 6 && passage.walls[at]! < 3; at++)
    if (passage.plotOver[at]) return true;
  return false;
}
