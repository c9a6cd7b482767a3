import type { ActionKind, Stage, Trigger, When } from '../record.ts';
import type { Token } from '../text.ts';

/** What an event phrase may point at; the lexicon knows the words for stages and actions. */
export type TimedEvent = Stage | ActionKind | 'drained' | 'dry' | 'rain' | 'next_walk' | 'if_worse';
/** The event whose words start at token `index`, and its last token. */
export type EventAt = (tokens: Token[], index: number) => { event: TimedEvent; last: number } | null;

/**
 * `first` and `last` are token indexes, both included. `toCome` reads the words for work to come, `done` for work
 * that has happened; null where they cannot say that. A rule `note-day` only dates the note itself.
 */
export interface TimeFound {
  first: number;
  last: number;
  rule: string;
  toCome: When | null;
  done: When | null;
}

/** A time that hangs on an event, `days` from it. */
export function onTrigger(
  first: number,
  last: number,
  rule: string,
  trigger: Trigger,
  days?: number,
): TimeFound {
  const when: When = days ? { trigger, days } : { trigger };
  return { first, last, rule, toCome: when, done: null };
}
