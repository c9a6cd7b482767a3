/** A note as the rules look at it: words with their forms, and at each place the number, plot or time that starts there. */
import { findNumbers, type NumberFound } from '../numbers/find-numbers.ts';
import { findPlots, type PlotFound } from '../plots/find-plots.ts';
import type { NoteToRead } from '../record.ts';
import type { Token } from '../text.ts';
import { type EventAt, findTimes, type TimeFound } from '../times/find-times.ts';
import { formsOf } from './forms.ts';
import { countWalls, findWalls } from './walls.ts';

export interface Passage {
  note: NoteToRead;
  tokens: Token[];
  forms: readonly (readonly string[])[];
  following: Int32Array;
  /** How much is divided before token i: 0 nothing, 1 a comma or `and`, 2 `but`, a new subject, 3 a sentence. */
  walls: Uint8Array;
  /** Running count of walls of strength 2 and 3, and of 3: to see in one step whether one stands between. */
  wallsTo: { comma: Int32Array; clause: Int32Array; sentence: Int32Array };
  numberAt: (NumberFound | undefined)[];
  /** Tokens with the names of plots masked, for what reads figures. */
  masked: Token[];
  plotAt: (PlotFound | undefined)[];
  /** The plot mention that covers token i. */
  plotOver: (PlotFound | undefined)[];
  timeAt: (TimeFound | undefined)[];
  plots: PlotFound[];
  numbers: NumberFound[];
  times: TimeFound[];
  /** Whether a pattern may not go on to token `at`. */
  endsBefore(at: number, isFirst: boolean): boolean;
}

export const JOINING_MARK = /^[-'"“”‘’()*_~]$/;

export function wordsOf(tokens: Token[]): { tokens: Token[]; forms: string[][]; following: Int32Array } {
  const following = new Int32Array(tokens.length);
  let next = tokens.length;
  for (let at = tokens.length - 1; at >= 0; at--) {
    following[at] = next;
    if (!(tokens[at]!.kind === 'mark' && JOINING_MARK.test(tokens[at]!.text))) next = at;
  }
  return { tokens, forms: tokens.map(formsOfToken), following };
}

const NUMBER_WORDS = new Set(
  'two three four five six seven eight nine ten eleven twelve fifteen twenty thirty forty fifty couple several few'.split(
    ' ',
  ),
);

/** A figure or a number word also stands for `#`. */
const formsOfToken = ({ lower, kind }: Token): string[] => {
  const forms = formsOf(lower);
  if (kind === 'number' || NUMBER_WORDS.has(lower)) forms.push('#');
  return forms;
};

export const byStart = <Found extends { first: number }>(
  length: number,
  found: Found[],
): (Found | undefined)[] => {
  const at = new Array<Found | undefined>(length).fill(undefined);
  for (const one of found) at[one.first] ??= one;
  return at;
};

/** The strongest wall between two places of the text, the later included. */
export function wallBetween(passage: Passage, from: number, to: number): 0 | 1 | 2 | 3 {
  const [low, high] = from < to ? [from, to] : [to, from];
  if (passage.wallsTo.sentence[high]! > passage.wallsTo.sentence[low]!) return 3;
  if (passage.wallsTo.clause[high]! > passage.wallsTo.clause[low]!) return 2;
  return passage.wallsTo.comma[high]! > passage.wallsTo.comma[low]! ? 1 : 0;
}

/** Hears the note, finds its plots, numbers and times, and lays walls. */
export function readPassage(note: NoteToRead, tokens: Token[], eventAt: EventAt): Passage {
  const words = wordsOf(tokens);
  const plots = findPlots(words, note.plots);
  const plotOver = coverage(tokens.length, plots);
  const masked = tokens.map(
    (token, at): Token => (plotOver[at] ? { ...token, kind: 'mark', lower: '§' } : token),
  );
  const numbers = findNumbers(masked);
  const times = findTimes(masked, note.observedAt, eventAt);
  const walls = findWalls(tokens, plots, note.channel === 'dictated');
  const wallsTo = countWalls(walls);
  return {
    note,
    ...words,
    masked,
    walls,
    wallsTo,
    numbers,
    times,
    plots,
    numberAt: byStart(tokens.length, numbers),
    plotAt: byStart(tokens.length, plots),
    timeAt: byStart(tokens.length, times),
    plotOver,
    endsBefore: (at, isFirst) => !isFirst && walls[at]! >= 2,
  };
}

function coverage(length: number, plots: PlotFound[]): (PlotFound | undefined)[] {
  const over = new Array<PlotFound | undefined>(length).fill(undefined);
  for (const plot of plots) for (let at = plot.first; at <= plot.last; at++) over[at] = plot;
  return over;
}
