/** Crop stages that a note states, current or near; a stage named only as a point in time is none. */

import { type Passage, wallBetween } from '../engine/passage.ts';
import { addPhrases, emptyTree, phrasesAt } from '../engine/phrase-tree.ts';
import { within } from '../engine/within.ts';
import { FAMILIES } from '../lexicon/families.ts';
import { NOT_A_STAGE_AFTER, NOT_A_STAGE_BEFORE, OVER_AFTER, OVER_BEFORE } from '../lexicon/stage-context.ts';
import { NEAR_AFTER, NEAR_BEFORE, STAGE_WORDS, type StageRow } from '../lexicon/stages.ts';
import { plotsOf } from '../plots/settle-plots.ts';
import type { StageMention } from './mentions.ts';

const STAGES = emptyTree<StageRow>();
for (const row of STAGE_WORDS) addPhrases(STAGES, row.words, row);
const tree = (phrases: string) => {
  const made = emptyTree<true>();
  addPhrases(made, phrases, true);
  return made;
};
const BEFORE = tree(NEAR_BEFORE);
const AFTER = tree(NEAR_AFTER);
const NOT_BEFORE = tree(NOT_A_STAGE_BEFORE);
const NOT_AFTER = tree(NOT_A_STAGE_AFTER);
const DONE_BEFORE = tree(OVER_BEFORE);
const DONE_AFTER = tree(OVER_AFTER);

export function findStages(passage: Passage): StageMention[] {
  const found: StageMention[] = [];
  for (let at = 0; at < passage.tokens.length; at++) {
    if (passage.plotOver[at]) continue;
    const hit = phrasesAt(STAGES, passage, at)[0];
    if (!hit) continue;
    const stage = hit.meanings[0]!.stage;
    if (
      !isInTime(passage, at, hit.last) &&
      !isOver(passage, at, hit.last) &&
      !isOfWeed(passage, at) &&
      standsAsStage(passage, at, hit.last, stage)
    )
      found.push({
        is: 'stage',
        stage,
        near: hit.meanings[0]!.near === true || isNear(passage, at, hit.last, stage),
        first: at,
        last: hit.last,
        rule: `stage-${stage.replaceAll('_', '-')}`,
      });
    at = hit.last;
  }
  return withSameAgain(passage, withYoungPanicles(passage, found));
}

/** `sprangletop headed out`, `an eclipta in flower`: the weed's stage, not the crop's. */
function isOfWeed(passage: Passage, first: number): boolean {
  for (let at = first - 1; at >= Math.max(0, first - 6) && passage.walls[at + 1]! === 0; at--) {
    if (passage.plotOver[at] || /^(rice|crop|no|not|off|before|after)$/.test(passage.tokens[at]!.lower))
      return false;
    if (
      phrasesAt(FAMILIES.weed, passage, at).length > 0 &&
      !/^(weeding|weeded)$/.test(passage.tokens[at]!.lower)
    )
      return true;
  }
  return false;
}

/** `panicle seen under the knife at 2 mm`, `a 1 mm cone`: panicle initiation (guide). */
function withYoungPanicles(passage: Passage, found: StageMention[]): StageMention[] {
  const out = [...found];
  for (const number of passage.numbers) {
    if (
      number.value > 6 ||
      !/^(mm|millimetres?|millimeters?|mil|mils)$/.test(passage.tokens[number.last + 1]?.lower ?? '')
    )
      continue;
    const panicle = panicleNear(passage, number.first);
    if (
      panicle >= 0 &&
      !out.some(({ stage, first }) => stage === 'panicle_initiation' && Math.abs(first - panicle) < 12)
    )
      out.push({
        is: 'stage',
        stage: 'panicle_initiation',
        near: false,
        first: panicle,
        last: number.last + 1,
        rule: 'stage-young-panicle',
      });
  }
  return out.sort((a, b) => a.first - b.first);
}

function panicleNear(passage: Passage, first: number): number {
  for (let at = first - 1; at >= Math.max(0, first - 8) && passage.walls[at + 1]! < 3; at--)
    if (/^(panicles?|cones?|primordia|primordium|ear)$/.test(passage.tokens[at]!.lower)) return at;
  return -1;
}

/** `T2R2 ditto`, `same stage there`: what was said of the plot before. */
function withSameAgain(passage: Passage, found: StageMention[]): StageMention[] {
  const out = [...found];
  for (let at = 1; at < passage.tokens.length; at++) {
    const word = passage.tokens[at]!.lower;
    const almost = almostThere(passage, at);
    if (almost >= 0) {
      const stage = within(found, at - 60, at).findLast(({ last }) => last < at);
      if (stage && plotsDiffer(passage, stage.first, at))
        out.push({ ...stage, near: true, first: at, last: almost, rule: 'stage-almost-there' });
      continue;
    }
    const again =
      word === 'ditto' ||
      word === 'likewise' ||
      (word === 'same' && passage.tokens[at + 1]?.lower === 'stage');
    const before = again ? within(found, at - 60, at).findLast(({ last }) => last < at) : undefined;
    if (before && at - before.last < 60)
      out.push({ ...before, first: at, last: word === 'same' ? at + 1 : at, rule: 'stage-same-again' });
  }
  return out.sort((a, b) => a.first - b.first);
}

/** `A2 almost there`, `twelve ain't there yet`: the stage that another plot has reached. */
function almostThere(passage: Passage, at: number): number {
  if (!/^(almost|nearly|not|ain't|isn't|close)$/.test(passage.tokens[at]!.lower)) return -1;
  const next = /^(quite|yet|to)$/.test(passage.tokens[at + 1]?.lower ?? '') ? at + 2 : at + 1;
  return passage.tokens[next]?.lower === 'there' ? next : -1;
}
const plotsDiffer = (passage: Passage, a: number, b: number): boolean =>
  plotsOf(passage, a, a).codes.join() !== plotsOf(passage, b, b).codes.join();

/** `topdress at panicle initiation` is a time; `the plot is at panicle initiation` is not. */
const isInTime = (passage: Passage, first: number, last: number): boolean =>
  !saidOfCrop(passage, first) &&
  within(passage.times, first - 20, first).some(
    (time) => time.first <= first && time.last >= last && time.rule !== 'note-day',
  );

function saidOfCrop(passage: Passage, first: number): boolean {
  let at = first - 1;
  while (at > 0 && /^(the|full|early|late|mid|soft|hard|about)$/.test(passage.tokens[at]!.lower)) at--;
  if (!/^(at|in)$/.test(passage.tokens[at]?.lower ?? '')) return false;
  const before = passage.tokens[at - 1];
  return (
    before === undefined ||
    passage.plotOver[at - 1] !== undefined ||
    /^(is|are|'s|it's|she's|now|still|already|be|still|stage|fully|rice|crop|grain|grains|plants?|panicles?|heads?|stand|and|,|:|;|\.|just|all|both|stands|looks|sits|he's|they're|today|well|transplanting|sowing|seeding|dat|das|remains?)$|'s$/.test(
      before.lower,
    )
  );
}

function endsJustBefore(
  passage: Passage,
  words: ReturnType<typeof tree>,
  at: number,
  reach: number,
): boolean {
  for (let start = at - 1; start >= Math.max(0, at - 6); start--) {
    if (wallBetween(passage, start, at) >= 2) return false;
    if (phrasesAt(words, passage, start).some((hit) => hit.last < at && at - hit.last - 1 <= reach))
      return true;
  }
  return false;
}

function startsJustAfter(
  passage: Passage,
  words: ReturnType<typeof tree>,
  at: number,
  reach: number,
): boolean {
  for (let start = at + 1; start <= Math.min(passage.tokens.length - 1, at + 1 + reach); start++) {
    if (wallBetween(passage, at, start) >= 2) return false;
    const hit = phrasesAt(words, passage, start)[0];
    if (hit) return words !== AFTER || phrasesAt(STAGES, passage, hit.last + 1).length === 0;
  }
  return false;
}

const isOver = (passage: Passage, first: number, last: number): boolean =>
  endsJustBefore(passage, DONE_BEFORE, first, 0) || startsJustAfter(passage, DONE_AFTER, last, 0);

function standsAsStage(passage: Passage, first: number, last: number, stage: string): boolean {
  if (
    (!saidOfCrop(passage, first) && endsJustBefore(passage, NOT_BEFORE, first, 0)) ||
    startsJustAfter(passage, NOT_AFTER, last, 0)
  )
    return false;
  const word = passage.tokens[first]!.lower;
  if (stage === 'heading' && word === 'heads' && first === last)
    return (
      /^\d|^half$/.test(passage.tokens[last + 1]?.lower ?? '') && passage.plotOver[first - 1] !== undefined
    );
  if (word === 'tiller' || word === 'elongation') return true;
  return true;
}

const isNear = (passage: Passage, first: number, last: number, _stage: string): boolean =>
  endsJustBefore(passage, BEFORE, first, 1) || startsJustAfter(passage, AFTER, last, 0);
