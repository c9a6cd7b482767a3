/** Status of work from its cues, its tense and its time; null where nothing says that it is work of this crop. */
import { type Passage, wallBetween } from '../engine/passage.ts';
import type { ActionStatus } from '../record.ts';
import type { WorkToSettle } from './actions.ts';

/** A look already taken or a figure already given is no work of its own (guide), nor is a look not taken a decision. */
export function statusFromWords(passage: Passage, work: WorkToSettle, asked: boolean): ActionStatus | null {
  const found = anyStatus(passage, work);
  const status =
    asked && (found === 'done' || found === null) && work.mention.tense === 'base' ? 'planned' : found;
  if (work.kind === 'inspect' && status === 'planned' && isLookingNow(passage, work)) return null;
  if (
    work.kind === 'tell' &&
    status === 'planned' &&
    work.mention.tense !== 'ed' &&
    /^(they|he|she|they're|is|are|was|farmers?|people)$/.test(
      passage.tokens[work.mention.first - 1]?.lower ?? '',
    )
  )
    return null;
  if (work.kind === 'tell' && /^(have|has|had)$/.test(passage.tokens[work.mention.first]!.lower))
    return 'done';
  if (work.kind === 'measure' || work.kind === 'inspect')
    return status === 'done' || (status === 'ruled_out' && work.kind === 'inspect') ? null : status;
  return status;
}

/** `now I look at the neck`: that is this very walk. */
const isLookingNow = (passage: Passage, { mention, time, cues }: WorkToSettle): boolean =>
  /^(i|we|am|are)$/.test(passage.tokens[mention.first - 1]?.lower ?? '') &&
  !cues.some(
    ({ row, first }) =>
      row.says === 'planned' && row.id !== 'is …ing' && !IS_NOW.test(passage.tokens[first]!.lower),
  ) &&
  (!time || passage.tokens[time.first]!.lower === 'now');

const IS_NOW = /^(now|then)$/;

function anyStatus(passage: Passage, work: WorkToSettle): ActionStatus | null {
  const { cues, kind } = work;
  const says = new Set(cues.filter((cue) => cue.row.id !== 'is …ing').map(({ row }) => row.says));
  if (says.has('later') || says.has('general') || says.has('past')) return null;
  if (kind === 'leave') return says.has('ruled_out') && work.mention.form === 'verb' ? null : 'planned';
  const within = statusWithin(passage, work);
  if (within) return within;
  if (says.has('ruled_out') && isNotYetDone(passage, work)) return null;
  if (says.has('ruled_out') && !isElementTalk(passage, work))
    return isPutOff(passage, work) ? 'planned' : 'ruled_out';
  if (isElementTalk(passage, work)) return null;
  if (isOnlyReason(passage, work)) return null;
  const asked = isQuestion(passage, work);
  if (asked && !says.has('done')) return answerTo(passage, work) ?? 'proposed';
  if (says.has('proposed') && !says.has('done') && answerTo(passage, work) === 'ruled_out')
    return 'ruled_out';
  const nearest = nearestStatus(passage, work);
  const { time } = work;
  const pastOnly = time !== null && time.done !== null && time.toCome === null;
  const futureOnly = time !== null && time.toCome !== null && time.done === null;
  if (nearest === 'proposed') return 'proposed';
  if (nearest === 'done' && !futureOnly) return 'done';
  if (nearest === 'planned' && !pastOnly) return 'planned';
  return byTense(passage, work, pastOnly, futureOnly);
}

/** `maybe zinc`, `not enough nitrogen`: an element named as a cause. */
function isElementTalk(passage: Passage, { mention, cues, dose }: WorkToSettle): boolean {
  if (
    mention.form !== 'noun' ||
    dose ||
    !/^(zinc|nitrogen|n|potash|iron|sink|sulphur|sulfur)$/.test(passage.tokens[mention.first]!.lower)
  )
    return false;
  return (
    cues.some(({ first }) =>
      /^(maybe|perhaps|think|thinking|possibly|probably|not|short|could|might|may|would|likely)$/.test(
        passage.tokens[first]!.lower,
      ),
    ) && !/^(no|hold|skip)$/.test(passage.tokens[mention.first - 1]?.lower ?? '')
  );
}

/** `floating because somebody opened the gate`: undated work that only explains what is seen. */
function isOnlyReason(passage: Passage, { mention, time }: WorkToSettle): boolean {
  if (time || mention.tense !== 'ed') return false;
  for (let at = mention.first - 1; at >= Math.max(0, mention.first - 7); at--) {
    if (/^(because|cuz|coz|bc|as|owing)$/.test(passage.tokens[at]!.lower))
      return !/^(as|long|soon|well|far|same|such)$/.test(passage.tokens[at - 1]?.lower ?? '');
    if (passage.walls[at + 1]! >= 2 && at + 1 < mention.first && passage.walls[at + 1]! >= 3) return false;
  }
  return false;
}

/** `not pulled yet`, `not weeded`: says how it stands, decides nothing. */
function isNotYetDone(passage: Passage, { mention }: WorkToSettle): boolean {
  if (mention.form !== 'verb' || mention.tense !== 'ed') return false;
  let at = mention.first - 1;
  while (
    at > mention.first - 5 &&
    /^(has|have|had|been|yet|even|fully|all|properly|got|ever)$/.test(passage.tokens[at]?.lower ?? '')
  )
    at--;
  return (
    /^(not|never|n't|nobody|noone|none)$|n't$/.test(passage.tokens[at]?.lower ?? '') &&
    !/^(be|to)$/.test(passage.tokens[at - 1]?.lower ?? '')
  );
}

/** `no irrigation till Friday`, `water can wait till Saturday`: put off to a day. */
const isPutOff = (passage: Passage, { time }: WorkToSettle): boolean =>
  time?.toCome != null &&
  'from' in time.toCome &&
  [time.first, time.first - 1].some(
    (at) =>
      /^(till|until|til|to|for)$/.test(passage.tokens[at]?.lower ?? '') &&
      /^(till|until|til)$/.test(passage.tokens[at]!.lower),
  );

const AUXILIARY = /^(have|has|had|was|were|been|got|'ve)$/;

/** The cue that stands nearest; those in front of the work count before those behind it. */
function nearestStatus(passage: Passage, { cues, mention }: WorkToSettle): ActionStatus | null {
  let best: ActionStatus | null = null;
  let bestCost = Number.POSITIVE_INFINITY;
  for (const { row, first, last } of cues) {
    if (row.id === 'is …ing' && mention.tense !== 'ing') continue;
    if (row.says === 'done' && AUXILIARY.test(passage.tokens[last]!.lower) && mention.first - last > 3)
      continue;
    if (
      row.says === 'done' &&
      /^(have|has|had)$/.test(passage.tokens[first]!.lower) &&
      /^(will|must|to|should|could|would|might)$|'ll$|'d$/.test(passage.tokens[first - 1]?.lower ?? '')
    )
      continue;
    if (row.says !== 'done' && row.says !== 'planned' && row.says !== 'proposed') continue;
    const cost = last < mention.first ? mention.first - last : first - mention.last + 0.5;
    if (cost < bestCost) {
      best = row.says;
      bestCost = cost;
    }
  }
  return best;
}

/** The words inside a longer match: `outlets to be opened`, `net goes up`, `the bund was mended`. */
function statusWithin(passage: Passage, { mention, time }: WorkToSettle): ActionStatus | null {
  if (mention.form !== 'object first') return null;
  const words = passage.tokens
    .slice(mention.first, mention.last + 1)
    .map(({ lower }) => lower)
    .join(' ');
  if (/\b(not|n't|cannot)\b/.test(words)) return 'ruled_out';
  if (/\b(to be|must|will|shall|going to|has to|have to|gets?)\b|'ll\b/.test(words)) return 'planned';
  if (/\b(should|could|may|might|needs?)\b/.test(words)) return 'proposed';
  if (/\b(was|were|been|has|have|got|went|gone|had)\b/.test(words)) return 'done';
  if (/\b(goes|go|going|comes|coming|come|booked|arrives|move)\b/.test(words))
    return time && time.toCome === null ? 'done' : 'planned';
  return null;
}

/** `Spray now? Wait.`, `they want to spray. I say leave it. So no.`: what the next sentences decide. */
function answerTo(passage: Passage, { mention }: WorkToSettle): ActionStatus | null {
  let from = -1;
  for (let at = mention.last + 1; at < passage.tokens.length && at < mention.last + 30; at++) {
    if (passage.walls[at]! >= 3) from = at;
    if (from < 0 || at - from > 3) continue;
    const words = passage.tokens
      .slice(from, at + 1)
      .map(({ lower }) => lower)
      .join(' ');
    const ends = at + 1 >= passage.tokens.length || passage.tokens[at + 1]!.kind === 'mark';
    if (ends && REFUSAL.test(words)) return 'ruled_out';
    if (at === from + 2 && /^(it's|is|its) not worth$/.test(words)) return 'ruled_out';
    if (ends && from - mention.last < 12 && CONSENT.test(words)) return 'planned';
  }
  return null;
}

const REFUSAL =
  /^((so|then|but|and|still|again|me|i|we|he|she|boss) )?((say|says|said|think|would say) )?(no|nope|nah|not|never|wait|not now|not yet|not today|not worth it|no need|too late|too early|not for that|not here)$/;
const CONSENT =
  /^((so|then|i|we|he|she|boss) )?((say|says|said) )?(yes|yep|go|go ahead|do it|agreed|approved|let's do it)$/;

const isQuestion = (passage: Passage, { mention }: WorkToSettle): boolean => {
  for (let at = mention.last + 1; at < passage.tokens.length && at < mention.last + 16; at++) {
    if (passage.tokens[at]!.text === '?') return true;
    if (passage.walls[at]! >= 3) return false;
  }
  return false;
};

function byTense(
  passage: Passage,
  work: WorkToSettle,
  pastOnly: boolean,
  futureOnly: boolean,
): ActionStatus | null {
  const { mention, time } = work;
  const part = time ? partOfDay(passage, time) : null;
  if (part === 'evening' && mention.tense !== 'ed') return 'planned';
  if (mention.form === 'noun') {
    if (pastOnly || part === 'morning') return 'done';
    if (futureOnly || time?.toCome) return isBarePhrase(passage, work) ? 'planned' : null;
    return null;
  }
  if (mention.tense === 'ed') return futureOnly ? 'planned' : 'done';
  if (pastOnly || isDateNearerBack(passage, work)) return 'done';
  if (isPassive(passage, mention.first) && !futureOnly) return 'done';
  if (mention.tense === 'ing') return time?.toCome ? 'planned' : null;
  if (mention.form === 'object first') return time ? (futureOnly ? 'planned' : 'done') : null;
  const openWeekday =
    time?.rule === 'weekday' && /^(we|i)$/.test(passage.tokens[mention.first - 1]?.lower ?? '');
  if (isSameInBoth(passage, mention.first) && hasSubject(passage, mention.first) && !futureOnly)
    return openWeekday || waits(passage, mention.last) ? 'planned' : 'done';
  if (hasSubject(passage, mention.first) && !time?.toCome)
    return isSameInBoth(passage, mention.first) ? 'done' : 'planned';
  return 'planned';
}

/** `sow 28 Nov` written in December: a date that lies close behind and nearly a year ahead. */
function isDateNearerBack({ note }: Passage, { time }: WorkToSettle): boolean {
  if (!time?.done || !time.toCome || !('from' in time.done) || !('from' in time.toCome)) return false;
  const day = Date.parse(note.observedAt.slice(0, 10));
  return Date.parse(time.toCome.from) - day > 3 * (day - Date.parse(time.done.to)) + 60 * 86_400_000;
}

/** `tonight` is to come, `this morning` is over. */
function partOfDay(passage: Passage, time: { first: number; last: number }): 'morning' | 'evening' | null {
  for (let at = time.first; at <= time.last; at++) {
    const word = passage.tokens[at]!.lower;
    if (
      word === 'tonight' ||
      (word === 'evening' && /^(this|today)$/.test(passage.tokens[at - 1]?.lower ?? ''))
    )
      return 'evening';
    if (word === 'morning' && passage.tokens[at - 1]?.lower === 'this') return 'morning';
  }
  return null;
}

/** `we cut Monday when the thresher is free`. */
const waits = (passage: Passage, last: number): boolean => {
  for (let at = last + 1; at <= last + 6 && at < passage.tokens.length && passage.walls[at]! < 3; at++)
    if (/^(when|if|once|after)$/.test(passage.tokens[at]!.lower)) return true;
  return false;
};

/** `T1R1 cut Wednesday`, `South-1 cut`: the plot was cut. */
const isPassive = (passage: Passage, at: number): boolean =>
  (isSameInBoth(passage, at) &&
    /^(is|are|was|were|been|got)$|'s$/.test(passage.tokens[at - 1]?.lower ?? '')) ||
  (isSameInBoth(passage, at) && passage.plotOver[at - 1] !== undefined && passage.walls[at] === 0);

const hasSubject = (passage: Passage, at: number): boolean =>
  /^(i|we|they|he|she|crew|boys|women)$/.test(passage.tokens[at - 1]?.lower ?? '');
const isSameInBoth = (passage: Passage, at: number): boolean =>
  /^(put|cut|let|set|shut|spread)$/.test(passage.tokens[at]!.lower);

/** `Traps tonight`, `urea 1 bag, 3 days after weeding`: name and time stand in one clause. */
const isBarePhrase = (passage: Passage, { mention, time, dose }: WorkToSettle): boolean => {
  if (!time) return false;
  const wall = wallBetween(passage, Math.min(mention.last, time.first), Math.max(mention.first, time.last));
  return wall < 1 || (wall < 2 && (dose !== null || Math.abs(time.first - mention.last) <= 3));
};
