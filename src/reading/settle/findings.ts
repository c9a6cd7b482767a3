/** What a mentioned problem amounts to: there, suspected, a risk, looked for and absent, cleared; or no finding at all. */

import { findCauses } from '../around/find-causes.ts';
import type { PlaceFound } from '../around/find-places.ts';
import { findSeverity } from '../around/find-severity.ts';
import type { CueFound } from '../cues/find-cues.ts';
import { reaches } from '../cues/reach.ts';
import { type Passage, wallBetween } from '../engine/passage.ts';
import { within } from '../engine/within.ts';
import type { FindingFact, FindingStatus } from '../record.ts';
import type { ActionMention, FindingMention } from '../rules/mentions.ts';
import type { ActionDraft } from './actions.ts';
import { type Draft, distanceTo, samePlots, wordsBetween } from './draft.ts';
import { statusOf, takenOut } from './finding-status.ts';
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
