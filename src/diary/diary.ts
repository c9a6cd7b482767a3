import type { Temporal } from 'temporal-polyfill';
import type { Darkroom } from '../photos/darkroom.ts';
import type { Store } from '../storage/open-store.ts';

/** What every verb needs: the store, the place where photos are read, and the time, which tests may set. */
export interface Diary extends Store {
  darkroom: Darkroom;
  /** The present instant, UTC. */
  now(): Temporal.Instant;
}

/** What could be expected to go wrong, in words that say what to do; `field` names the form's field. */
export interface Refusal {
  refused: string;
  field?: string;
  /** 400 unless told: 404 unknown, 409 clash, 413 too large. */
  status?: number;
}
export const isRefusal = (answer: object): answer is Refusal => 'refused' in answer;
