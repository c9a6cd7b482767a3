/** Time, dose and people of a piece of work: each goes to the work that stands nearest in its clause. */

import type { PersonFound } from '../around/find-people.ts';
import type { DoseFound } from '../doses/find-doses.ts';
import { type Passage, wallBetween } from '../engine/passage.ts';
import { within } from '../engine/within.ts';
import type { ActionKind } from '../record.ts';
import type { ActionMention } from '../rules/mentions.ts';
import type { TimeFound } from '../times/find-times.ts';
import { distanceTo } from './draft.ts';

interface Placed {
  first: number;
  last: number;
}

/** Cost of laying `place` to `work`: distance, more where something divides, a little more where the place comes first. */
export function costOf(passage: Passage, place: Placed, work: Placed): number {
  const low = Math.min(place.last, work.last);
  const high = Math.max(place.first, work.first);
  const wall = low < high ? wallBetween(passage, low, high) : 0;
  return distanceTo(place, work) + wall * wall * 4 + (place.last < work.first ? 1 : 0);
}

const FAR = 26;

export function timesOf(
  passage: Passage,
  mentions: readonly ActionMention[],
  kinds: readonly (ActionKind | null)[],
): (TimeFound | null)[] {
  const own: (TimeFound | null)[] = mentions.map(() => null);
  const cost: number[] = mentions.map(() => Number.POSITIVE_INFINITY);
  let from = 0;
  for (const time of passage.times) {
    if (time.rule === 'note-day' || (!time.toCome && !time.done)) continue;
    while (from < mentions.length && mentions[from]!.last < time.first - 40) from++;
    let best = -1;
    let bestCost = FAR;
    for (let index = from; index < mentions.length && mentions[index]!.first <= time.last + 40; index++) {
      if (!kinds[index] || kinds[index] === 'leave') continue;
      const mine = costOf(passage, time, mentions[index]!);
      if (mine < bestCost) {
        best = index;
        bestCost = mine;
      }
    }
    if (best < 0 || bestCost >= cost[best]!) continue;
    own[best] = time;
    cost[best] = bestCost;
  }
  shareTimes(passage, mentions, own);
  return own;
}

/** `irrigate and topdress on Friday`: works joined by `and` share the time behind the last or before the first. */
function shareTimes(passage: Passage, mentions: readonly ActionMention[], own: (TimeFound | null)[]): void {
  for (let index = mentions.length - 2; index >= 0; index--) {
    const next = mentions[index + 1]!;
    if (
      !own[index] &&
      own[index + 1] &&
      joined(passage, mentions[index]!, next) &&
      own[index + 1]!.first > next.last
    )
      own[index] = own[index + 1]!;
  }
  for (let index = 1; index < mentions.length; index++) {
    const before = mentions[index - 1]!;
    if (
      !own[index] &&
      own[index - 1] &&
      joined(passage, before, mentions[index]!) &&
      own[index - 1]!.last < before.first
    )
      own[index] = own[index - 1]!;
  }
}

const joined = (passage: Passage, a: Placed, b: Placed): boolean => {
  const words = passage.tokens.slice(a.last + 1, b.first).map(({ lower }) => lower);
  return words.length <= 3 && words.some((word) => /^(and|&|\+|n|plus)$/.test(word));
};

const DOSED: Partial<Record<ActionKind, RegExp>> = {
  fertilise: /^(kg\/ha|kg|g\/m2|g|bags\/ha|bags|L\/ha|L)$/,
  spray: /^(kg\/ha|kg|g\/m2|g|L\/ha|L|mL\/L|bags|bags\/ha)$/,
  irrigate: /^(cm|mm)$/,
  drain: /^(cm|mm)$/,
  control_snails: /^(kg\/ha|kg|g|L|L\/ha)$/,
  control_rodents: /^(kg|g|bags)$/,
};

export function doseOf(
  passage: Passage,
  mentions: readonly ActionMention[],
  kinds: readonly (ActionKind | null)[],
  index: number,
  doses: readonly DoseFound[],
): DoseFound | null {
  const fits = DOSED[kinds[index] ?? 'leave'];
  if (!fits) return null;
  let best: DoseFound | null = null;
  let bestCost = 18;
  for (const dose of within(doses, mentions[index]!.first - 30, mentions[index]!.last + 30)) {
    if (!fits.test(dose.dose.unit)) continue;
    const cost = costOf(passage, dose, mentions[index]!);
    const rival = indexesNear(mentions, index).some(
      ([other, at]) =>
        at !== index &&
        DOSED[kinds[at] ?? 'leave']?.test(dose.dose.unit) &&
        costOf(passage, dose, other) < cost,
    );
    if (cost < bestCost && !rival) {
      best = dose;
      bestCost = cost;
    }
  }
  return best;
}

/** Told, not put to work in the plot. */
const OFFICES =
  /^(pathology|entomology|lab|laboratory|office|store|adjuster|dealer|inspector|officer|sir|madam|boss|chief)$/;

export function personOf(
  passage: Passage,
  mentions: readonly ActionMention[],
  index: number,
  people: readonly PersonFound[],
  kind: ActionKind,
): PersonFound | null {
  if (kind === 'leave') return null;
  const mention = mentions[index]!;
  let best: PersonFound | null = null;
  let bestCost = 20;
  for (const person of within(people, mention.first - 30, mention.last + 26)) {
    if (person.first > mention.last + 24 || person.last < mention.first - 24) continue;
    if (
      person.last < mention.first &&
      person.how === 'called' &&
      wallBetween(passage, person.last, mention.first) >= 3
    )
      continue;
    if (kind !== 'tell' && OFFICES.test(passage.tokens[person.last]!.lower)) continue;
    const cost = costOf(passage, person, mention);
    if (cost < bestCost) {
      best = person;
      bestCost = cost;
    }
  }
  return best;
}

/** The neighbours of a piece of work in the list of all, with their indexes. */
function indexesNear(mentions: readonly ActionMention[], index: number): [ActionMention, number][] {
  const from = Math.max(0, index - 8);
  return mentions.slice(from, index + 9).map((mention, at) => [mention, from + at]);
}
