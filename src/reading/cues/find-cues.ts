/** Where the cues of a note stand. A cue inside a longer one of the same place is left out. */
import type { Passage } from '../engine/passage.ts';
import { addPhrases, emptyTree, phrasesAt } from '../engine/phrase-tree.ts';
import { CUES, type CueRow } from '../lexicon/cue-rows.ts';
import { SPARES } from '../lexicon/spare-phrases.ts';

export interface CueFound {
  row: CueRow;
  first: number;
  last: number;
}

const TREE = emptyTree<CueRow>();
for (const row of CUES) addPhrases(TREE, row.words, row);
const SPARED = emptyTree<true>();
addPhrases(SPARED, SPARES, true);

/** Cues in the order of the text, and for each token the cues that end before it. */
export function findCues(passage: Passage): CueFound[] {
  const found: CueFound[] = [];
  let sparedTo = -1;
  for (let at = 0; at < passage.tokens.length; at++) {
    const spared = phrasesAt(SPARED, passage, at)[0];
    if (spared) sparedTo = Math.max(sparedTo, spared.last);
    if (passage.plotOver[at]) continue;
    const rowsSeen = new Set<CueRow>();
    const hits = phrasesAt(TREE, passage, at);
    const longest = hits[0]?.last ?? -1;
    for (const { last, meanings } of hits) {
      if (at <= sparedTo && last <= sparedTo) continue;
      if (passage.wallsTo.sentence[last]! > passage.wallsTo.sentence[at]! && passage.tokens[at]!.text !== '?')
        continue;
      for (const row of meanings) {
        if (
          rowsSeen.has(row) ||
          (last < longest &&
            hits[0]!.meanings.some((other) => other.side === row.side && other.on === row.on))
        )
          continue;
        rowsSeen.add(row);
        if (!isInside(found, at, last, row) && !isAboutFigure(passage, row, last))
          found.push({ row, first: at, last });
      }
    }
  }
  return found;
}

/** `perhaps 2 per cent`, `maybe 1 hill in 10`: the hedge is about the figure. */
const isAboutFigure = (passage: Passage, row: CueRow, last: number): boolean =>
  row.says === 'suspected' &&
  [last + 1, last + 2].some(
    (at) =>
      passage.numberAt[at] !== undefined &&
      passage.walls[at]! < 2 &&
      passage.numberAt[at]!.form !== 'ordinal',
  );

/** `not` inside `not worth`: the longer cue of the same side speaks. */
function isInside(found: CueFound[], first: number, last: number, row: CueRow): boolean {
  for (let index = found.length - 1; index >= 0 && index >= found.length - 12; index--) {
    const other = found[index]!;
    if (other.row.on === row.on && other.row.side === row.side && other.first < first && other.last >= last)
      return true;
  }
  return false;
}
