/** Problems that are named without being reported: as the object of work, as history, in talk of other things. */

import type { CueFound } from '../cues/find-cues.ts';
import { type Passage, wallBetween } from '../engine/passage.ts';
import { within } from '../engine/within.ts';
import { OFF_TOPIC } from '../lexicon/off-topic.ts';
import type { ActionMention, FindingMention } from '../rules/mentions.ts';

export function isOnlyMentioned(
  passage: Passage,
  mention: FindingMention,
  actions: readonly ActionMention[],
  cues: readonly CueFound[],
): boolean {
  return (
    isOffTopic(passage, mention.first) ||
    (mention.kind !== 'off_types' && isPartOfWork(passage, mention, actions, cues)) ||
    isIdle(passage, mention)
  );
}

/** A word of another matter in the same sentence, none of it a plot's name, where no plot is spoken of. */
export const isOffTopic = (passage: Passage, at: number): boolean => {
  let off = false;
  for (let near = Math.max(0, at - 14); near <= at + 9 && near < passage.tokens.length; near++) {
    if (wallBetween(passage, Math.min(at, near), Math.max(at, near)) >= 3) continue;
    if (passage.plotOver[near]) return false;
    off ||= near >= at - 9 && OFF_TOPIC.has(passage.tokens[near]!.lower);
  }
  return off;
};

/** `spray for hoppers`, `pulling the sedges`, `rat traps`: the words belong to the work. */
function isPartOfWork(
  passage: Passage,
  mention: FindingMention,
  actions: readonly ActionMention[],
  cues: readonly CueFound[],
): boolean {
  if (cues.some(({ row }) => row.says === 'absent' || row.says === 'cleared'))
    return within(actions, mention.first - 30, mention.first + 30).some(
      (action) => action.first <= mention.first && action.last >= mention.last && action.form === 'noun',
    );
  const against =
    /^(against)$/.test(passage.tokens[mention.first - 1]?.lower ?? '') ||
    (passage.tokens[mention.first - 1]?.lower === 'the' &&
      /^(against)$/.test(passage.tokens[mention.first - 2]?.lower ?? ''));
  if (against && actions.some((action) => Math.abs(action.first - mention.first) < 16)) return true;
  return within(actions, mention.first - 30, mention.first + 30).some(
    (action) =>
      (action.first <= mention.first &&
        action.last >= mention.last &&
        action.kind !== 'leave' &&
        action.kind !== 'fertilise') ||
      (action.last < mention.first &&
        mention.first - action.last <= 4 &&
        /(for|against|of)( the| those| these)?$/.test(
          passage.tokens
            .slice(action.last, mention.first)
            .map(({ lower }) => lower)
            .join(' '),
        )),
  );
}

/** `weed` as a verb or before `killer`; `burn` of a field; words that need the field around them and have none. */
function isIdle(passage: Passage, mention: FindingMention): boolean {
  const word = passage.tokens[mention.first]!.lower;
  const next = passage.tokens[mention.last + 1]?.lower ?? '';
  const before = passage.tokens[mention.first - 1]?.lower ?? '';
  if (
    mention.kind === 'weeds' &&
    /^(killer|killers|control|wiper|eater|count|counts|free|management)$/.test(next)
  )
    return true;
  if (
    /^(trap|traps|bait|net|nets|boy|boys|scarer|scarers|killer|count|counts|recount|control|spray|guard|seminar|lecture|poison|catcher|catchers|scaring)$/.test(
      next,
    )
  )
    return true;
  if (
    mention.kind === 'weeds' &&
    word === 'weed' &&
    /^(to|will|should|must|we|i|they|and|then|please|hand|can|could|'ll|let's|not)$/.test(before)
  )
    return true;
  if (
    mention.kind === 'lodging' &&
    /^(road|truck|company|the|trucks|roads)$/.test(next) &&
    word === 'logging'
  )
    return true;
  if (
    passage.tokens[mention.last]!.lower === 'under' &&
    mention.kind === 'flooded' &&
    !/^(bc|because|again|now|water|cuz|since|and|,|\.|;|)$/.test(next)
  )
    return true;
  if (/^flat$/.test(passage.tokens[mention.last]!.lower) && /^(leaf|leaves)$/.test(before)) return true;
  if (isAnothersCause(passage, mention)) return true;
  if (word === 'tall' && before === 'the') return true;
  if (mention.kind === 'nutrient' && word === 'yellow' && isRipening(passage, mention.first)) return true;
  if (mention.kind === 'seepage' && hasBefore(passage, mention.first, HOUSEHOLD)) return true;
  if (word === 'went' && /^(twice|it|with|the|again|there)$/.test(next)) return true;
  if (
    word === 'dry' &&
    (/^(season|weight|matter|ground|basis|seeded|bay)$/.test(next) ||
      /^(acre|hectare|ha|onto|in|bushels|the|before)$/.test(before))
  )
    return true;
  if (word === 'grassy' && /^(margin|edge|side|bank|strip|border|levee|bund)/.test(next)) return true;
  if (
    mention.kind === 'nutrient' &&
    /^(cord|flower|flowers|tape|flag|string|rope|paint|line|sticky|boots|ring|stem|awns|grain|grains|heads|panicles)$/.test(
      next,
    )
  )
    return true;
  if (mention.kind === 'seepage' && /^(road|bridge|road's|track|path|drive)$/.test(before)) return true;
  if (mention.kind === 'flooded' && hasBefore(passage, mention.first, /^(mud|soil|furrow|ditch|hole)$/))
    return true;
  if (
    before === 'not' &&
    /^(wbph|bph|glh|blast|borer|rats|rat|hopper|hoppers|zinc|blight|weeds)$/.test(
      passage.tokens[mention.first - 2]?.lower ?? '',
    )
  )
    return true;
  return mention.weak && !hasPlantBeside(passage, mention);
}

/** `yellow from too much water`: named only as the cause of another problem. */
function isAnothersCause(passage: Passage, mention: FindingMention): boolean {
  if (
    mention.kind !== 'flooded' &&
    mention.kind !== 'dry' &&
    mention.kind !== 'nutrient' &&
    mention.kind !== 'birds' &&
    mention.kind !== 'seepage'
  )
    return false;
  for (let at = mention.first - 1; at >= Math.max(1, mention.first - 5) && passage.walls[at + 1]! < 2; at--)
    if (
      /^(from|because|cause|cuz|bc|since|owing|due)$/.test(passage.tokens[at]!.lower) &&
      !passage.numberAt[at + 1]
    )
      return passage.walls[at]! < 3;
  return false;
}

/** `ninety percent yellow`, `yellow ripe already`: the colour of ripe rice. */
const isRipening = (passage: Passage, at: number): boolean => {
  for (let near = Math.max(0, at - 6); near <= at + 4 && near < passage.tokens.length; near++)
    if (/^(ripe|ripening|mature|grain|panicles?|heads?|golden)$/.test(passage.tokens[near]!.lower))
      return true;
  return false;
};

const HOUSEHOLD =
  /^(generator|pickup|boat|canoe|moto|printer|roof|boot|boots|tap|hose|truck|engine|radiator|tyre|tire|bucket|hall|shed|hut|house|oil|umbrella|bottle|kettle|tent|jeep|tractor)$/;

const hasBefore = (passage: Passage, at: number, words: RegExp): boolean =>
  [1, 2, 3].some((back) => words.test(passage.tokens[at - back]?.lower ?? ''));

const PLANT = new Set(
  'leaf leaves tip tips blade blades foliage plant plants rice crop hill hills spray herbicide propanil drift seedling seedlings stand patch strip streak streaks row rows canopy chemical turn turns margins edges knapsack boom injury'.split(
    ' ',
  ),
);

function hasPlantBeside(passage: Passage, mention: FindingMention): boolean {
  for (let at = Math.max(0, mention.first - 6); at <= mention.last + 6 && at < passage.tokens.length; at++)
    if (
      PLANT.has(passage.tokens[at]!.lower) &&
      wallBetween(passage, Math.min(at, mention.first), Math.max(at, mention.first)) < 3
    )
      return true;
  return false;
}
