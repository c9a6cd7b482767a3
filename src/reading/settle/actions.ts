/** How work stands: done, planned, weighed or decided against; with its time, dose and people. */

import type { PersonFound } from '../around/find-people.ts';
import type { CueFound } from '../cues/find-cues.ts';
import { reaches } from '../cues/reach.ts';
import type { DoseFound } from '../doses/find-doses.ts';
import { type Passage, wallBetween } from '../engine/passage.ts';
import { within } from '../engine/within.ts';
import type { ActionFact, ActionKind, ActionStatus } from '../record.ts';
import type { ActionMention, FindingMention, LessonMention } from '../rules/mentions.ts';
import type { TimeFound } from '../times/find-times.ts';
import { doseOf, personOf, timesOf } from './action-details.ts';
import { kindOfWork } from './action-kinds.ts';
import { statusFromWords } from './action-status.ts';
import { type Draft, wordsBetween } from './draft.ts';
import { isOffTopic } from './only-mentioned.ts';

export type ActionDraft = Draft<Omit<ActionFact, 'plot'>>;

export interface AroundWork {
  findings: readonly FindingMention[];
  lessons: readonly LessonMention[];
  cues: readonly CueFound[];
  people: readonly PersonFound[];
  doses: readonly DoseFound[];
}

export interface WorkToSettle {
  mention: ActionMention;
  kind: ActionKind;
  cues: CueFound[];
  time: TimeFound | null;
  dose: DoseFound | null;
}

export function settleActions(
  passage: Passage,
  mentions: ActionMention[],
  around: AroundWork,
): ActionDraft[] {
  const kinds = kindOfWork(passage, mentions, around.findings);
  const times = timesOf(passage, mentions, kinds);
  const drafts: ActionDraft[] = [];
  for (const [index, mention] of mentions.entries()) {
    const kind = kinds[index];
    if (
      !kind ||
      isOffTopic(passage, mention.first) ||
      around.lessons.some(({ first, last }) => mention.first >= first && mention.last <= last)
    )
      continue;
    const cues = within(around.cues, mention.first - 60, mention.last + 60).filter(
      (cue) =>
        cue.row.on !== 'finding' &&
        reaches(passage, cue, mentions, index) &&
        !belongsToFinding(passage, cue, mention, around.findings),
    );
    const work: WorkToSettle = {
      mention,
      kind,
      cues,
      time: times[index] ?? null,
      dose: doseOf(passage, mentions, kinds, index, around.doses),
    };
    const status = statusFromWords(passage, work, isAskedOf(passage, mention, around.people));
    if (status) drafts.push(draftOf(passage, work, status, mentions, around, index));
  }
  return drafts;
}

/** `no fresh cuts since the traps went in`: the `no` is about the cuts. */
const belongsToFinding = (
  passage: Passage,
  cue: CueFound,
  mention: ActionMention,
  findings: readonly FindingMention[],
): boolean =>
  cue.row.says === 'ruled_out' &&
  cue.last < mention.first &&
  /^(no|not|never|zero)$/.test(passage.tokens[cue.first]!.lower) &&
  within(findings, cue.last + 1, mention.first - 1).some(({ last }) => last < mention.first);

/** `get Ana to trap`, `have Luis pack it`, `send the boys`: somebody is asked, right in front of the work. */
const isAskedOf = (passage: Passage, mention: ActionMention, people: readonly PersonFound[]): boolean =>
  within(people, mention.first - 8, mention.first).some(
    (person) =>
      person.how === 'asked' &&
      person.last < mention.first &&
      mention.first - person.last <= 3 &&
      wallBetween(passage, person.last, mention.first) < 2,
  );

function draftOf(
  passage: Passage,
  work: WorkToSettle,
  status: ActionStatus,
  mentions: readonly ActionMention[],
  around: AroundWork,
  index: number,
): ActionDraft {
  const { mention, kind, cues, time, dose } = work;
  const when = time && (status === 'done' ? time.done : time.toCome);
  const person =
    status === 'done' && kind !== 'tell' ? null : personOf(passage, mentions, index, around.people, kind);
  const hearsay = status === 'done' && cues.some(({ row }) => row.says === 'hearsay');
  return {
    first: mention.first,
    last: mention.last,
    rule: mention.rule,
    cues: cues.filter(({ row }) => row.says === status || (hearsay && row.says === 'hearsay')),
    beat: [],
    also: [time, dose].filter((place) => place !== null),
    rest: {
      kind,
      status,
      ...(when && { when }),
      ...(dose && status !== 'ruled_out' && { dose: dose.dose }),
      ...(person && { who: wordsBetween(passage, person.first, person.last).replace(/['’](s|ll|d)$/, '') }),
      ...(hearsay && { hearsay: true }),
    },
  };
}

export const sameSentence = (passage: Passage, a: number, b: number): boolean =>
  wallBetween(passage, a, b) < 3;
