/** Status of work from its cues, its tense and its time; null where nothing says that it is work of this crop. */
import { type Passage, wallBetween } from '../engine/passage.ts';
import type { ActionStatus } from '../record.ts';
import type { WorkToSettle } from './actions.ts';

export function statusFromWords(passage: Passage, work: WorkToSettle): ActionStatus | null {
  const { cues, kind } = work;
  const says = new Set(cues.map(({ row }) => row.says));
  if (says.has('later') || says.has('general') || says.has('past')) return null;
  if (kind === 'leave') return says.has('ruled_out') && work.mention.form === 'verb' ? null : 'planned';
  if (says.has('ruled_out')) return 'ruled_out';
  const asked = isQuestion(passage, work);
  if (asked && !says.has('done')) return 'proposed';
  const nearest = nearestStatus(work);
  const { time } = work;
  const pastOnly = time !== null && time.done !== null && time.toCome === null;
  const futureOnly = time !== null && time.toCome !== null && time.done === null;
  if (nearest === 'proposed') return 'proposed';
  if (nearest === 'done' && !futureOnly) return 'done';
  if (nearest === 'planned' && !pastOnly) return 'planned';
  return byTense(passage, work, pastOnly, futureOnly);
}

/** The cue that stands nearest; those in front of the work count before those behind it. */
function nearestStatus({ cues, mention }: WorkToSettle): ActionStatus | null {
  let best: ActionStatus | null = null;
  let bestCost = Number.POSITIVE_INFINITY;
  for (const { row, first, last } of cues) {
    if (row.says !== 'done' && row.says !== 'planned' && row.says !== 'proposed') continue;
    const cost = last < mention.first ? mention.first - last : first - mention.last + 0.5;
    if (cost < bestCost) {
      best = row.says;
      bestCost = cost;
    }
  }
  return best;
}

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
  if (mention.form === 'noun') {
    if (pastOnly) return 'done';
    if (futureOnly || (time && time.toCome)) return isBarePhrase(passage, work) ? 'planned' : null;
    return null;
  }
  if (mention.tense === 'ed') return futureOnly ? 'planned' : 'done';
  if (pastOnly) return 'done';
  if (mention.tense === 'ing') return time?.toCome ? 'planned' : null;
  if (mention.form === 'object first') return time ? (futureOnly ? 'planned' : 'done') : null;
  if (hasSubject(passage, mention.first) && !time?.toCome)
    return isSameInBoth(passage, mention.first) ? 'done' : 'planned';
  return 'planned';
}

const hasSubject = (passage: Passage, at: number): boolean =>
  /^(i|we|they|he|she|crew|boys|women)$/.test(passage.tokens[at - 1]?.lower ?? '');
const isSameInBoth = (passage: Passage, at: number): boolean =>
  /^(put|cut|let|set|shut|spread)$/.test(passage.tokens[at]!.lower);

/** `Traps tonight`, `urea 1 bag, 3 days after weeding`: name and time stand in one clause. */
const isBarePhrase = (passage: Passage, { mention, time }: WorkToSettle): boolean =>
  time !== null &&
  wallBetween(passage, Math.min(mention.last, time.first), Math.max(mention.first, time.last)) < 2;
