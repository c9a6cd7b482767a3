/** Work mentioned in a note: rules applied, overlaps settled for the longest, words in other uses left out. */

import { type Passage, wallBetween } from '../engine/passage.ts';
import { addPhrases, emptyTree, phrasesAt } from '../engine/phrase-tree.ts';
import { within } from '../engine/within.ts';
import { WORK_SPARES } from '../lexicon/work-spares.ts';
import type { ActionMention, FindingMention, Mention, StageMention, UnvisitedMention } from './mentions.ts';
import { applyRules, indexRules } from './rule.ts';
import { WORK_RULES } from './work-rules.ts';

const INDEX = indexRules(WORK_RULES);
const SPARED = emptyTree<true>();
addPhrases(SPARED, WORK_SPARES, true);

export function findWork(
  passage: Passage,
  unvisited: readonly UnvisitedMention[],
  stages: readonly StageMention[],
  problems: readonly FindingMention[],
  ages: readonly { first: number; last: number }[],
): ActionMention[] {
  const injuries = problems.filter(({ kind }) => kind === 'spray_injury' || kind === 'weather_damage');
  const spared = sparedTokens(passage, [...unvisited, ...stages, ...injuries, ...ages]);
  const found = applyRules(INDEX, passage)
    .map((mention) => asNoun(passage, mention))
    .filter(
      (mention): mention is ActionMention => mention?.is === 'action' && stands(passage, mention, spared),
    );
  return withoutTold(passage, settleOverlaps(passage, found));
}

const NAMING =
  /^(the|a|an|this|that|second|another|first|last|next|no|one|our|their|his|her|since|by|of|any|some|yellow|flat|bare|wet|dry|big|small|each|every|two|three|much|more|less|few|\d+)$/;
const ALSO_NOUNS =
  /^(spray|flush|drain|net|bait|trap|count|check|cut|harvest|patch|rogue|plant|seed|pump|weed|feed|flood|level|burn|sample|measure|visit|look|call|report)$/;

/** As nouns they name a thing or a place, never work. */
const THING_NOUNS = /^(patch|plant|seed|level|pump)$/;

/** `since the spray`, `a yellow patch by the outlet`: the word names a thing or the work as a whole. */
function asNoun(passage: Passage, mention: Mention): Mention | null {
  if (mention.is !== 'action' || mention.form !== 'verb' || mention.tense !== 'base') return mention;
  if (
    !ALSO_NOUNS.test(passage.tokens[mention.first]!.lower) ||
    !NAMING.test(passage.tokens[mention.first - 1]?.lower ?? '')
  )
    return mention;
  return THING_NOUNS.test(passage.tokens[mention.first]!.lower) ? null : { ...mention, form: 'noun' };
}

const stands = (passage: Passage, mention: ActionMention, spared: Uint8Array): boolean =>
  !spared[mention.first] &&
  !passage.plotOver[mention.first] &&
  !isInTime(passage, mention) &&
  !isOtherCut(passage, mention) &&
  !isCauseOnly(passage, mention) &&
  !isAndForShort(passage, mention) &&
  !isBareNoun(passage, mention) &&
  !(
    NAMING.test(passage.tokens[mention.first - 1]?.lower ?? '') &&
    passage.tokens[mention.first]!.lower === 'weed'
  ) &&
  !isStateOfWater(passage, mention) &&
  !isGateShut(passage, mention);

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
  within(passage.times, first - 20, first).some((time) => time.first < first && time.last >= last);

/** `close the gate half`: handling water, no repair. */
const isGateShut = (passage: Passage, { kind, first, last }: ActionMention): boolean =>
  kind === 'mend_bund' &&
  /^(close|closed|shut|block|stop)$/.test(passage.tokens[first]!.lower) &&
  passage.tokens
    .slice(first, last + 1)
    .some(({ lower }) => /^(gate|inlet|outlet|valve|board|boards)$/.test(lower));

/** `P3 is flooded again`: how it stands, not what was done. */
const isStateOfWater = (passage: Passage, { first, kind }: ActionMention): boolean =>
  kind === 'irrigate' &&
  passage.tokens[first]!.lower === 'flooded' &&
  /^(is|are|looks|looked|still|completely|all|be|being|not|fully|again)$|'s$/.test(
    passage.tokens[first - 1]?.lower ?? '',
  );

/** `weed` alone is a verb only behind `to`, `we`, `must` and the like. */
const isBareNoun = (passage: Passage, { first, last, form }: ActionMention): boolean =>
  form === 'verb' &&
  first === last &&
  /^weeds?$/.test(passage.tokens[first]!.lower) &&
  !/^(to|we|i|they|will|must|should|shall|let's|please|can|could|and|then|or|boys|women|crew|'ll|we'll|i'll|they'll)$/.test(
    passage.tokens[first - 1]?.lower ?? '',
  );

/** `grandpas forty n the airstrip`: a small `n` is nitrogen only where a dose or a refusal stands beside it. */
const isAndForShort = (passage: Passage, { kind, first, last }: ActionMention): boolean =>
  kind === 'fertilise' &&
  first === last &&
  passage.tokens[first]!.text === 'n' &&
  !/^(of|no|more|kg|lb|lbs|pounds|kilo|kilos|the|hold|units|unit)$/.test(
    passage.tokens[first - 1]?.lower ?? '',
  );

const NOT_THE_CROP =
  /^(rats?|hills?|tillers?|stools?|stems?|fresh|leaf|leaves|grass|bund|levee|track|short|mice|branch|road|hole|corner|panicles?)$/;

/** `rats cut 4 hills`, `a cut stool`: no harvest. */
function isOtherCut(passage: Passage, mention: ActionMention): boolean {
  if (mention.kind !== 'harvest' || !/^cut/.test(passage.tokens[mention.first]!.lower)) return false;
  if (
    /\bby (the )?(rain|water|flood|river|rats)\b/.test(
      passage.tokens
        .slice(mention.first, mention.last + 4)
        .map(({ lower }) => lower)
        .join(' '),
    )
  )
    return true;
  for (let at = Math.max(0, mention.first - 6); at <= mention.last + 6 && at < passage.tokens.length; at++)
    if (
      NOT_THE_CROP.test(passage.tokens[at]!.lower) &&
      wallBetween(passage, Math.min(at, mention.first), Math.max(at, mention.first)) < 2
    )
      return true;
  return false;
}

/** `a shot of fungicide`, `no need of medicine`: the word in front only measures the work or asks for it. */
const MEASURE_OF =
  /^(out|instead|need|use|shot|dose|round|application|pass|spray|bit|lot|more|coat|touch|split|bags?|kgs?|kilos?|grams?|litres?|liters?|half|handful|spoon|scoop|drop|benefit|favour|favor|time|question|chance|day|days|hours?)$/;

/** `injury by propanil`, `since the spray`, `because of the urea`: the work is only a cause or a point in time. */
const isCauseOnly = (passage: Passage, mention: ActionMention): boolean => {
  if (mention.form !== 'noun') return false;
  const before = passage.tokens[mention.first - 1]?.lower ?? '';
  const ahead = before === 'the' ? (passage.tokens[mention.first - 2]?.lower ?? '') : before;
  return (
    /^(by|from|since|because|of|per|than|despite|through|short|lacks|lack)$/.test(ahead) &&
    !(ahead === 'of' && MEASURE_OF.test(passage.tokens[mention.first - 2]?.lower ?? ''))
  );
};

/** `told Ana to trap`: the job is the trapping; `told Odile` behind orders names who does them. */
function withoutTold(passage: Passage, found: ActionMention[]): ActionMention[] {
  return found.filter((mention, index) => {
    if (mention.kind !== 'tell') return true;
    const next = found[index + 1];
    if (
      next &&
      next.kind !== 'tell' &&
      next.first - mention.last <= 9 &&
      wallBetween(passage, mention.last, next.first) < 2 &&
      hasTo(passage, mention.last, next.first)
    )
      return false;
    const before = found[index - 1];
    return !(
      mention.tense === 'ed' &&
      before &&
      wallBetween(passage, before.last, mention.first) < 3 &&
      endsSoon(passage, mention.last)
    );
  });
}

const hasTo = (passage: Passage, from: number, to: number): boolean => {
  for (let at = from; at <= to; at++) if (/^(to|that|if)$/.test(passage.tokens[at]!.lower)) return true;
  return to - from <= 3;
};
const endsSoon = (passage: Passage, at: number): boolean => {
  for (let next = at + 1; next <= at + 3; next++)
    if (next >= passage.tokens.length || passage.walls[next]! >= 3) return true;
  return false;
};

const FORM_RANK = { verb: 0, 'object first': 1, noun: 2 };

/** A longer phrase wins over a shorter one that it covers; a verb over a noun; the first over the second. */
function settleOverlaps(passage: Passage, found: ActionMention[]): ActionMention[] {
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
  return joinNeighbours(
    passage,
    kept.sort((a, b) => a.first - b.first),
  );
}

/** `topdress urea`, `apply herbicide granules`: two words for one piece of work. */
function joinNeighbours(passage: Passage, sorted: ActionMention[]): ActionMention[] {
  const out: ActionMention[] = [];
  for (const mention of sorted) {
    const before = out.at(-1);
    if (before && isSameWork(passage, before, mention))
      out[out.length - 1] = {
        ...before,
        last: mention.last,
        tense: mention.tense === 'ed' ? 'ed' : before.tense,
      };
    else out.push(mention);
  }
  return out;
}

/** Side by side, or `cut and threshed`: the same kind of work joined by `and`. */
const isSameWork = (passage: Passage, before: ActionMention, mention: ActionMention): boolean =>
  before.kind === mention.kind &&
  ((mention.form === 'noun' && before.form !== 'noun' && mention.first === before.last + 1) ||
    (mention.first === before.last + 2 &&
      passage.tokens[before.last + 1]!.lower === 'and' &&
      mention.tense === 'ed'));
