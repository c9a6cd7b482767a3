/** Words of the trade for keys of a record. */
import type { ActionKind, FindingKind, Stage, Trigger } from '../reading/record.ts';
import { FINDING_WORDS } from '../reading/say-fact.ts';

const WORK: Record<ActionKind, string> = {
  hand_weed: 'hand weeding',
  spray: 'spraying',
  replant: 'gap filling',
  fertilise: 'topdressing',
  irrigate: 'irrigation',
  drain: 'draining',
  control_rodents: 'rat control',
  control_snails: 'snail control',
  scare_birds: 'bird scaring',
  mend_bund: 'bund mending',
  rogue: 'roguing',
  support: 'propping up',
  inspect: 'looking again',
  measure: 'counting or measuring',
  harvest: 'harvest',
  land_prep: 'land preparation',
  plant: 'planting',
  tell: 'passing on word',
  leave: 'leaving it',
};

const EVENT: Record<string, string> = {
  drained: 'the water to be off',
  dry: 'it to be dry',
  rain: 'rain',
  if_worse: 'it to get worse',
  next_walk: 'the next walk',
};

export const workWords = (kind: ActionKind): string => WORK[kind];
export const problemWords = (kind: FindingKind): string => FINDING_WORDS[kind];
export const stageWords = (stage: Stage): string => stage.replaceAll('_', ' ');

/** What a waiting item waits for: `panicle initiation`, `2 days after the hand weeding`. */
export function eventWords(trigger: Trigger, days = 0): string {
  const [side, kind] = trigger.split(':') as [string, ActionKind | undefined];
  const event = kind ? `the ${WORK[kind]}` : (EVENT[trigger] ?? stageWords(trigger as Stage));
  const after = days > 0 ? `${days} ${days === 1 ? 'day' : 'days'} after ` : '';
  if (side === 'before') return `the time before ${event}`;
  return kind && !after ? `the end of ${event}` : `${after}${event}`;
}
