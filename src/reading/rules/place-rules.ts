/** Plots that were not looked at: a denial with a verb of going or looking, or a phrase such as `ran out of light`. */
import type { Passage } from '../engine/passage.ts';
import { addPhrases, emptyTree, type PhraseTree, phrasesAt } from '../engine/phrase-tree.ts';
import { BESIDE_PLOT, BETWEEN, DENIALS, GOING, LOOKING, PLAIN } from '../lexicon/not-visited.ts';
import type { UnvisitedMention } from './mentions.ts';

const tree = (phrases: string): PhraseTree<true> => {
  const made = emptyTree<true>();
  addPhrases(made, phrases.replaceAll('\n', ' '), true);
  return made;
};
const NO = tree(DENIALS);
const GO = tree(GOING);
const LOOK = tree(LOOKING);
const WHOLE = tree(PLAIN);
const BESIDE = tree(BESIDE_PLOT);

export function findUnvisited(passage: Passage): UnvisitedMention[] {
  const found: UnvisitedMention[] = [];
  for (let at = 0; at < passage.tokens.length; at++) {
    if (passage.plotOver[at]) continue;
    const last = unvisitedEnd(passage, at);
    if (last < 0) continue;
    found.push({ is: 'unvisited', first: at, last, rule: 'not-looked-at' });
    at = last;
  }
  return found;
}

/** Last token of the words that say so, or -1. */
function unvisitedEnd(passage: Passage, at: number): number {
  const whole = phrasesAt(WHOLE, passage, at)[0];
  if (whole && hasPlotInSentence(passage, at, whole.last)) return whole.last;
  const beside = phrasesAt(BESIDE, passage, at)[0];
  if (beside && isBesidePlot(passage, at, beside.last)) return beside.last;
  const verb = deniedVerb(passage, at);
  if (!verb) return -1;
  const going = phrasesAt(GO, passage, verb)[0];
  if (going && !isGoingOn(passage, going.last) && hasPlotInSentence(passage, at, going.last))
    return going.last;
  const looking = phrasesAt(LOOK, passage, verb)[0];
  return looking && looksAtPlot(passage, at, looking.last) ? looking.last : -1;
}

/** The verb behind a denial, past helping words; null where none is denied here. */
function deniedVerb(passage: Passage, at: number): number | null {
  const no = phrasesAt(NO, passage, at)[0];
  if (!no) return null;
  let verb = passage.following[no.last]!;
  for (let steps = 0; steps < 5 && verb < passage.tokens.length && passage.walls[verb]! < 2; steps++) {
    if (phrasesAt(GO, passage, verb).length > 0 || phrasesAt(LOOK, passage, verb).length > 0) return verb;
    if (!BETWEEN.has(passage.tokens[verb]!.lower)) return null;
    verb = passage.following[verb]!;
  }
  return null;
}

/** `did not go over`, `not going to spray`, `did not go down`: no walk. */
const isGoingOn = (passage: Passage, last: number): boolean =>
  /^going$/.test(passage.tokens[last]!.lower) ||
  /^(down|up|over|away|flat|lower|higher|above|below|well|far|yellow|bad)$/.test(
    passage.tokens[passage.following[last]!]?.lower ?? '',
  );

/** `B2 I did not see`, `didn't check B2`, `N0-2: not assessed`: what was not looked at is the plot. */
function looksAtPlot(passage: Passage, first: number, last: number): boolean {
  let next = last + 1;
  while (/^(at|in|into|the|of|inside|over|on)$/.test(passage.tokens[next]?.lower ?? '')) next++;
  if (passage.plotAt[next]) return true;
  const ends =
    next >= passage.tokens.length ||
    passage.walls[next]! > 0 ||
    passage.tokens[next]!.kind === 'mark' ||
    ENDS.test(passage.tokens[next]!.lower);
  return ends && !isReport(passage, first) && (followsPlot(passage, first) || isTherefore(passage, first));
}

const ENDS =
  /^(it|that|this|them|there|today|yet|because|since|as|the|too|either|one|at|properly|myself|now|so|owing|due|until|till|for|hers|his)$/;

/** `urea was given there, I did not see`: what somebody else said was not seen. */
function isReport(passage: Passage, first: number): boolean {
  for (let at = first - 1; at >= Math.max(0, first - 8) && passage.walls[at + 1]! < 3; at--)
    if (
      /^(said|says|told|tells|reckons?|reports?|reported|claims?|assures?|heard)$/.test(
        passage.tokens[at]!.lower,
      )
    )
      return true;
  return false;
}

/** `locked with bamboo, so not observed`. */
const isTherefore = (passage: Passage, first: number): boolean =>
  [first - 1, first - 2, first - 3].some((at) =>
    /^(so|therefore|hence)$/.test(passage.tokens[at]?.lower ?? ''),
  ) && hasPlotInSentence(passage, first, first);

const isBesidePlot = (passage: Passage, first: number, last: number): boolean =>
  followsPlot(passage, first) ||
  (/^skip/.test(passage.tokens[first]!.lower) &&
    [last + 1, last + 2].some((at) => passage.plotAt[at] !== undefined)) ||
  (/^for$/.test(passage.tokens[last]!.lower) && passage.plotAt[last + 1] !== undefined);

const FILLER =
  /^(i|we|do|does|can|could|will|was|is|were|are|could|be|,|:|-|—|there|today|also|just|uh|um|itself|the|had|has|have|path|too|one|did|because|right|drove|ones?|stop|well|it|again|that|still)$/;

function followsPlot(passage: Passage, at: number): boolean {
  for (let before = at - 1; before >= Math.max(0, at - 5); before--) {
    if (passage.plotOver[before]) return true;
    if (!FILLER.test(passage.tokens[before]!.lower)) return false;
  }
  return false;
}

/** The plot stands in the same sentence, before or right behind. */
function hasPlotInSentence(passage: Passage, first: number, last: number): boolean {
  for (let at = first; at >= Math.max(0, first - 24) && (at === first || passage.walls[at + 1]! < 3); at--)
    if (passage.plotOver[at]) return true;
  for (let at = last + 1; at < passage.tokens.length && at <= last + 6 && passage.walls[at]! < 3; at++)
    if (passage.plotOver[at]) return true;
  return false;
}
