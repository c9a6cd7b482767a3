/** Problems: found by the longest phrase of the lexicon that starts at a word. */

import type { Passage } from '../engine/passage.ts';
import { addPhrases, emptyTree, phrasesAt } from '../engine/phrase-tree.ts';
import { PROBLEMS, type ProblemRow } from '../lexicon/problems.ts';
import type { FindingMention } from './mentions.ts';

const TREE = emptyTree<ProblemRow>();
for (const row of PROBLEMS) addPhrases(TREE, row.words, row);

/** Left to right, longest first; nothing inside the name of a plot. */
export function findProblems(passage: Passage): FindingMention[] {
  const found: FindingMention[] = [];
  for (let at = 0; at < passage.tokens.length; ) {
    const mention = problemAt(passage, at);
    if (mention) found.push(mention);
    at = mention ? mention.last + 1 : at + 1;
  }
  return found;
}

function problemAt(passage: Passage, at: number): FindingMention | null {
  if (passage.plotOver[at]) return null;
  for (const { last, meanings } of phrasesAt(TREE, passage, at)) {
    const row = meanings.find(({ taxon }) => taxon) ?? meanings[0]!;
    if (
      last === at &&
      /^(gas|bb)$/.test(passage.tokens[at]!.lower) &&
      passage.tokens[at]!.text !== passage.tokens[at]!.text.toUpperCase()
    )
      continue;
    if (passage.plotOver[last] || crossesSentence(passage, at, last)) continue;
    return {
      is: 'finding',
      kind: row.kind,
      taxon: row.taxon,
      says: row.says,
      weak: row.weak ?? false,
      sign: row.sign ?? false,
      first: at,
      last,
      rule: `problem-${row.taxon ?? row.kind}`.replaceAll('_', '-'),
    };
  }
  return null;
}

const crossesSentence = (passage: Passage, first: number, last: number): boolean =>
  passage.wallsTo.sentence[last]! > passage.wallsTo.sentence[first]!;
