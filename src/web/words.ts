/** The words and small pictures of words that views share. */

import type { FactShown } from '../diary/shown.ts';
import type { ItemStepKind } from '../followups/item.ts';
import { sayDay } from '../reading/say-fact.ts';
import { factWords } from './fact-words.ts';
import { markedText } from './marked-text.ts';
import { traceWords } from './trace-words.ts';

/** `06:38` of `2031-09-11T06:38`. */
export const sayTime = (moment: string): string => moment.slice(11, 16);

/** `Thu 11 Sep, 06:38`. */
export const sayMoment = (moment: string): string => `${sayDay(moment.slice(0, 10))}, ${sayTime(moment)}`;

/** `Thu 11 Sep 2031`, where the year is not plain from the page. */
export const sayDayAndYear = (day: string): string => `${sayDay(day)} ${day.slice(0, 4)}`;

/** `1 plot`, `2 plots`. */
export const several = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;

const WATER = new Set([
  'dry',
  'flooded',
  'seepage',
  'irrigate',
  'drain',
  'water_depth',
  'water_table_depth',
  'rainfall',
  'water_use',
]);
const CHEMICAL = new Set(['spray', 'control_rodents', 'control_snails']);

type Kinded = { kind: string };
export const isOfWater = ({ kind }: Kinded): boolean => WATER.has(kind);

/** Sprays, baits and other chemicals: the page shows its standing caution. */
export const isChemical = ({ kind }: Kinded): boolean => CHEMICAL.has(kind);

export const showsChemicals = (things: Kinded[]): boolean => things.some(isChemical);

/** The class that a fact carries in a list: water, unsafe, or neither. */
export const factClass = (fact: Pick<FactShown, 'kind' | 'list'>): string =>
  isOfWater(fact) ? 'of-water' : isChemical(fact) && fact.list === 'actions' ? 'unsafe' : '';

export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** Address of a plot's page; codes may hold spaces and strokes. */
export const plotHref = (code: string): string => `/plots/${encodeURIComponent(code)}`;
export const noteHref = (id: string): string => `/notes/${encodeURIComponent(id)}`;
export const followUpHref = (id: string): string => `/follow-ups/${encodeURIComponent(id)}`;

const STEP_WORDS: Record<ItemStepKind, string> = {
  considered: 'considered',
  decided: 'decided, to be done',
  mentioned: 'spoken of again',
  woke: 'what it waited for is there',
  reported_done: 'reported as done',
  looked: 'looked at',
  looked_early: 'looked at before it could show',
  put_off: 'put off',
  dropped: 'dropped',
  ruled_out: 'decided against',
  reopened: 'opened again',
  matched: 'settled which work a note is about',
  remark: 'a remark',
  undo: 'took a step back',
};

/** What happened in one step of a follow-up, without who and when. */
export const stepWords = ({ what }: { what: ItemStepKind }): string => STEP_WORDS[what];

/** `/notes?words=gap&before=…`, empty values left out. */
export function withQuery(path: string, query: Record<string, string | null | undefined>): string {
  const filled = Object.entries(query).filter((pair): pair is [string, string] => !!pair[1]);
  return filled.length === 0 ? path : `${path}?${new URLSearchParams(filled)}`;
}

export const WORDS_FOR_VIEWS = {
  sayDay,
  sayTime,
  sayMoment,
  sayDayAndYear,
  several,
  factClass,
  factWords,
  isOfWater,
  capital,
  plotHref,
  noteHref,
  followUpHref,
  withQuery,
  stepWords,
  markedText,
  traceWords,
};
