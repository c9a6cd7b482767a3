import type { ActionKind, Stage, When } from '../record.ts';
import type { Token } from '../text.ts';

/** What an event phrase may point at; the lexicon knows the words for stages and actions. */
export type TimedEvent = Stage | ActionKind | 'drained' | 'dry' | 'rain' | 'next_walk' | 'if_worse';
export type EventAt = (tokens: Token[], index: number) => { event: TimedEvent; last: number } | null;

/** `toCome` reads the words for work to come, `done` for work that has happened; null where they cannot say that. */
export interface TimeFound {
  first: number;
  last: number;
  rule: string;
  toCome: When | null;
  done: When | null;
}

export function findTimes(_tokens: Token[], _observedAt: string, _eventAt: EventAt): TimeFound[] {
  return [];
}
