/** What a mentioned problem amounts to: there, suspected, a risk, looked for and absent, cleared; or no finding at all. */

import { findCauses } from '../around/find-causes.ts';
import type { PlaceFound } from '../around/find-places.ts';
import { findSeverity } from '../around/find-severity.ts';
import type { CueFound } from '../cues/find-cues.ts';
import { reaches } from '../cues/reach.ts';
import { tenseOf } from '../engine/forms.ts';
import { type Passage, wallBetween } from '../engine/passage.ts';
import { within } from '../engine/within.ts';
import type { FindingFact, FindingStatus } from '../record.ts';
import type { ActionMention, FindingMention } from '../rules/mentions.ts';
import type { ActionDraft } from './actions.ts';
import { type Draft, distanceTo, samePlots, wordsBetween } from './draft.ts';
import { isOnlyMentioned } from './only-mentioned.ts';

export interface FindingDraft extends Draft<Omit<FindingFact, 'plot'>> {
  sign: boolean;
}

export function settleFindings(
  passage: Passage,
  mentions: FindingMention[],
  actions: readonly ActionMention[],
  work: readonly ActionDraft[],
  cues: readonly CueFound[],
  places: readonly PlaceFound[],
): FindingDraft[] {
  const drafts: FindingDraft[] = [];
  for (const [index, mention] of mentions.entries()) {
    const mine = cuesOf(passage, cues, mentions, index);
    if (isOnlyMentioned(passage, mention, actions, mine)) continue;
    const status = takenOut(passage, mention, work) ?? statusOf(mention, mine, passage);
    if (status === null) continue;
    drafts.push({
      first: mention.first,
      last: mention.last,
      rule: mention.rule,
      cues: mine.filter(({ row }) => row.says === status),
      beat: [],
      also: [],
      sign: mention.sign,
      rest: {
        kind: mention.kind,
        status,
        ...(mention.taxon && { taxon: mention.taxon }),
        ...detailsOf(passage, mentions, index, places, status),
      },
    });
  }
  return drafts;
}

/** `we removed 14 off-types`, `bakanae in nine hills, all were pulled`: taken out; `to be pulled tomorrow`: still there. */
function takenOut(
  passage: Passage,
  mention: FindingMention,
  work: readonly ActionDraft[],
): FindingStatus | null {
  if (mention.kind !== 'off_types' && mention.kind !== 'disease') return null;
  const pulls = within(work, mention.first - 12, mention.last + 30).filter(
    ({ rest }) => rest.kind === 'rogue',
  );
  const own = pulls.find(({ first, last }) => first <= mention.first && last >= mention.last);
  if (own && mention.kind === 'off_types') return own.rest.status === 'done' ? 'cleared' : 'present';
  const earlier = within(work, mention.first - 20, mention.first).some(({ rest, first }) => rest.kind === 'rogue' && rest.status === 'done' && samePlots(passage, first, mention.first));
  if (earlier && mention.kind === 'off_types') return 'cleared';
  const later = pulls.filter(({ first }) => first > mention.last && samePlots(passage, first, mention.first));
  if (later.length === 0 || later.some(({ rest }) => rest.status !== 'done' && rest.status !== 'proposed'))
    return null;
  return later.some(
    ({ rest, first, last }) =>
      rest.status === 'done' && (mention.kind === 'off_types' || saysAll(passage, first, last)),
  )
    ? 'cleared'
    : null;
}

const saysAll = (passage: Passage, first: number, last: number): boolean => {
  for (let at = first - 2; at <= last + 2; at++) if (passage.tokens[at]?.lower === 'all') return true;
  return false;
};

function cuesOf(
  passage: Passage,
  cues: readonly CueFound[],
  mentions: FindingMention[],
  index: number,
): CueFound[] {
  const target = mentions[index]!;
  return within(cues, target.first - 60, target.last + 60).filter(
    (cue) =>
      cue.row.on !== 'action' &&
      cue.first > target.first - 60 &&
      cue.first < target.last + 60 &&
      reaches(passage, cue, mentions, index),
  );
}

function statusOf(mention: FindingMention, cues: CueFound[], passage: Passage): FindingStatus | null {
  const says = new Set(cues.filter((cue) => !isAboutCause(passage, mention, cue)).map(({ row }) => row.says));
  if (says.has('past') && !says.has('cleared')) return null;
  if (says.has('later') || says.has('passing')) return null;
  if (says.has('cleared')) return isDenied(passage, cues) ? 'present' : 'cleared';
  if (mention.rule === 'none-of-it') return 'absent';
  if (mention.says === 'absent') return says.has('absent') ? 'present' : 'absent';
  if (isAnsweredNo(passage, mention)) return 'absent';
  if (says.has('absent') && isDoubleNo(passage, cues)) return mention.taxon ? 'suspected' : null;
  if (says.has('absent')) return sinceBehind(passage, mention) ? 'cleared' : 'absent';
  if (says.has('risk') && !isNow(passage, mention)) return 'risk';
  if (mention.says === 'risk') return 'risk';
  if (conditionBehind(passage, mention)) return 'risk';
  const condition = conditionBefore(passage, mention);
  if (condition) return condition === 'for work' ? null : 'risk';
  if (says.has('suspected') && !isMeasured(passage, mention)) return 'suspected';
  return mention.says ?? 'present';
}

/** `yellow from zinc I think`, `pale, maybe it is the iron`: the hedge is about the cause (guide). */
function isAboutCause(passage: Passage, mention: FindingMention, { row, first, last }: CueFound): boolean {
  if (row.says !== 'suspected' || first < mention.last) return false;
  const next = passage.tokens[last + 1];
  if (
    /^(could|might|may|it)$/.test(passage.tokens[first]!.lower) &&
    next?.kind === 'word' &&
    passage.walls[last + 1] === 0 &&
    row.side === 'before'
  )
    return true;
  for (let at = mention.last + 1; at < first; at++)
    if (/^(from|because|due|owing|cuz)$/.test(passage.tokens[at]!.lower)) return true;
  if (mention.kind !== 'nutrient') return false;
  for (let at = last + 1; at <= last + 5 && at < passage.tokens.length && passage.walls[at]! < 3; at++)
    if (ELEMENT_WORDS.test(passage.tokens[at]!.lower)) return true;
  return false;
}

const ELEMENT_WORDS =
  /^(zinc|zn|nitrogen|n|potash|potassium|iron|sulphur|sulfur|phosphorus|cold|water|sink|hunger)$/;

/** `Lodging? No, only a buffalo lay there.` */
const isAnsweredNo = (passage: Passage, { last }: FindingMention): boolean =>
  passage.tokens[last + 1]?.text === '?' &&
  /^(no|nope|none|not|nah)$/.test(passage.tokens[last + 2]?.lower ?? '') &&
  (passage.tokens[last + 3]?.kind !== 'word' || /^(not|none)$/.test(passage.tokens[last + 2]!.lower)) &&
  !/^(sure)$/.test(passage.tokens[last + 3]?.lower ?? '');

/** `not gone yet`. */
const isDenied = (passage: Passage, cues: CueFound[]): boolean =>
  cues.some(
    (cue) =>
      cue.row.says === 'cleared' &&
      /^(not|n't|never|isn't|aren't|hasn't)$/.test(passage.tokens[cue.first - 1]?.lower ?? ''),
  );

/** `no fresh cuts since the traps`: it was there. */
function sinceBehind(passage: Passage, mention: FindingMention): boolean {
  for (
    let at = mention.last + 1;
    at <= mention.last + 5 && at < passage.tokens.length && wallBetween(passage, mention.last, at) < 2;
    at++
  )
    if (passage.tokens[at]!.lower === 'since') return true;
  for (
    let at = mention.first - 1;
    at >= mention.first - 9 && at >= 0 && wallBetween(passage, at, mention.first) < 3;
    at--
  ) {
    const words = `${passage.tokens[at]!.lower} ${passage.tokens[at + 1]!.lower}`;
    if (/^(more|longer|fresh) /.test(words) && passage.tokens[at - 1]?.lower === 'no')
      return /^(more|longer)/.test(words);
    if (words === 'from that' || words === 'since then') return true;
  }
  return false;
}

/** `it cannot be said that there is no disease`. */
const isDoubleNo = (passage: Passage, cues: CueFound[]): boolean =>
  cues.some(
    ({ row, first }) =>
      row.says === 'absent' &&
      /\b(cannot|can't|not|wouldn't)\b.*\b(say|said)\b/.test(
        passage.tokens
          .slice(Math.max(0, first - 14), first)
          .map(({ lower }) => lower)
          .join(' '),
      ),
  );

/** `lodges if we get a blow`: not yet. */
function conditionBehind(passage: Passage, mention: FindingMention): boolean {
  if (mention.kind !== 'lodging' || tenseOf(passage.tokens[mention.first]!.lower) !== 'base') return false;
  for (
    let at = mention.last + 1;
    at <= mention.last + 4 && at < passage.tokens.length && passage.walls[at]! < 3;
    at++
  )
    if (/^(if|unless|once|when)$/.test(passage.tokens[at]!.lower)) return true;
  return false;
}

/** `if wind comes it lodges` is a risk; `if the rats pass ten percent, trap` only conditions the work. */
function conditionBefore(passage: Passage, mention: FindingMention): 'harm' | 'for work' | null {
  for (let at = mention.first - 1; at >= Math.max(0, mention.first - 10); at--) {
    if (wallBetween(passage, at, mention.first) >= 3) return null;
    const word = passage.tokens[at]!.lower;
    if (
      word === 'unless' ||
      (word === 'if' &&
        !/^(sure|as|see|idk|dunno|wonder|only|asked|asks|know|check)$/.test(
          passage.tokens[at - 1]?.lower ?? '',
        ))
    ) {
      const ownClause =
        mention.first - at <= 4 &&
        !passage.tokens
          .slice(at, mention.first)
          .some(({ lower }) => /^(it|it'll|she'll|they|will|then|,)$/.test(lower));
      return ownClause ? 'for work' : 'harm';
    }
  }
  return null;
}

const isNow = (passage: Passage, mention: FindingMention): boolean =>
  /^(already|now)$/.test(passage.tokens[mention.first - 1]?.lower ?? '');

/** `maybe 2 per cent`: the hedge is about the figure. */
const isMeasured = (_passage: Passage, _mention: FindingMention): boolean => false;

function detailsOf(
  passage: Passage,
  mentions: FindingMention[],
  index: number,
  places: readonly PlaceFound[],
  status: FindingStatus,
): Pick<FindingFact, 'severity' | 'where' | 'cause'> {
  const mention = mentions[index]!;
  const severity = status === 'present' ? findSeverity(passage, mentions, index) : undefined;
  const place = placeOf(passage, mentions, index, places, status);
  const cause =
    status === 'absent' || status === 'cleared' ? undefined : findCauses(passage, mention, status, place);
  return {
    ...(severity && { severity }),
    ...(place && { where: wordsBetween(passage, place.first, place.last) }),
    ...(cause && { cause }),
  };
}

/** The nearest place of the same sentence that no other finding stands nearer to. */
export function placeOf(
  passage: Passage,
  mentions: readonly { first: number; last: number }[],
  index: number,
  places: readonly PlaceFound[],
  status?: FindingStatus,
): PlaceFound | null {
  const mention = mentions[index]!;
  let best: PlaceFound | null = null;
  let bestCost = 20;
  for (const place of within(places, mention.first - 30, mention.last + 20)) {
    if (place.last < mention.first - 20 || place.first > mention.last + 20) continue;
    const wall = wallBetween(
      passage,
      Math.min(place.last, mention.last),
      Math.max(place.first, mention.first),
    );
    if (wall === 3 || (wall === 2 && status === 'absent') || !samePlots(passage, place.first, mention.first))
      continue;
    const cost =
      distanceTo(place, mention) +
      wall * 3 +
      (place.first < mention.first ? 2 : 0) +
      (place.preposed ? 0 : 1);
    const rival = mentions
      .slice(Math.max(0, index - 8), index + 9)
      .some((other) => other !== mention && isNearer(passage, place, other, mention, cost));
    if (!rival && cost < bestCost && !(place.first <= mention.first && place.last >= mention.last)) {
      best = place;
      bestCost = cost;
    }
  }
  return best ?? placeMeantByThere(passage, mention, places);
}

/** `on the sandy end … still yellow there`: the place named last in the sentence before. */
function placeMeantByThere(
  passage: Passage,
  { first, last }: Span,
  places: readonly PlaceFound[],
): PlaceFound | null {
  const there = [first - 2, first - 1, last + 1, last + 2].some(
    (at) =>
      passage.tokens[at]?.lower === 'there' &&
      wallBetween(passage, Math.min(at, first), Math.max(at, first)) < 2 &&
      !/^(is|are|was|were|has|have|had|may|might)$/.test(passage.tokens[at + 1]?.lower ?? ''),
  );
  const named = there ? within(places, first - 40, first).at(-1) : undefined;
  return named &&
    named.last < first &&
    wallBetween(passage, named.first, first) === 3 &&
    samePlots(passage, named.first, first)
    ? named
    : null;
}

/** Another finding lies nearer to the place, and is not joined to this one in a list. */
function isNearer(passage: Passage, place: PlaceFound, other: Span, mention: Span, cost: number): boolean {
  const wall = wallBetween(passage, Math.min(place.last, other.last), Math.max(place.first, other.first));
  const theirs =
    distanceTo(place, other) + wall * 3 + (place.first < other.first ? 2 : 0) + (place.preposed ? 0 : 1);
  if (theirs >= cost - 1) return false;
  const [low, high] = other.first < mention.first ? [other, mention] : [mention, other];
  const between = passage.tokens.slice(low.last + 1, high.first).map(({ lower }) => lower);
  return !(
    between.length <= 3 &&
    between.length > 0 &&
    between.every((word) => /^(and|,|&|or|with|plus|some|few|maybe|perhaps|either)$/.test(word))
  );
}

interface Span {
  first: number;
  last: number;
}
