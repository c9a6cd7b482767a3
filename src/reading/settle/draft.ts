/** A fact on its way: what was found, where, on which cues it rests; plots and lists come last. */
import type { CueFound } from '../cues/find-cues.ts';
import type { Passage } from '../engine/passage.ts';
import { plotsOf } from '../plots/settle-plots.ts';
import type { Span, Trace } from '../record.ts';

export interface Draft<Rest> {
  /** Token indexes, last included. */
  first: number;
  last: number;
  rule: string;
  cues: CueFound[];
  beat: Trace['beat'];
  /** Further places that the fact rests on. */
  also: { first: number; last: number }[];
  rest: Rest;
}

export const wordsBetween = (passage: Passage, first: number, last: number): string =>
  passage.note.text.slice(passage.tokens[first]!.start, passage.tokens[last]!.end);

export const spanOf = (passage: Passage, first: number, last: number): Span => ({
  start: passage.tokens[first]!.start,
  end: passage.tokens[last]!.end,
});

export const distanceTo = (a: { first: number; last: number }, b: { first: number; last: number }): number =>
  a.last < b.first ? b.first - a.last : b.last < a.first ? a.first - b.last : 0;

export const samePlots = (passage: Passage, a: number, b: number): boolean =>
  plotsOf(passage, a, a).codes.join() === plotsOf(passage, b, b).codes.join();
