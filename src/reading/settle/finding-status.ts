/** The status of a finding from its cues, from conditions around it, and from work that took it out. */
import type { CueFound } from '../cues/find-cues.ts';
import { tenseOf } from '../engine/forms.ts';
import { type Passage, wallBetween } from '../engine/passage.ts';
import { within } from '../engine/within.ts';
import type { FindingStatus } from '../record.ts';
import type { FindingMention } from '../rules/mentions.ts';
import type { ActionDraft } from './actions.ts';
import { samePlots } from './draft.ts';

/** Null where the mention is no finding of this crop and walk. */
export function statusOf(mention: FindingMention, cues: CueFound[], passage: Passage): FindingStatus | null {
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

/** `we removed 14 off-types`, `bakanae in nine hills, all were pulled`: taken out; `to be pulled tomorrow`: still there. */
export function takenOut(
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
  const earlier = within(work, mention.first - 20, mention.first).some(
    ({ rest, first }) =>
      rest.kind === 'rogue' && rest.status === 'done' && samePlots(passage, first, mention.first),
  );
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
