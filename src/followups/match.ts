/** Which item a sentence is about, how well it fits, and why. */
import type { Dose, When } from '../reading/record.ts';
import { STAGES } from '../reading/record.ts';
import { daysBetween } from './days.ts';
import { UNDONE_WORK } from './item.ts';
import type { Item } from './ledger.ts';

/** An item that nobody has spoken of for longer is not taken to be meant. [common practice: half a season] */
export const FORGOTTEN_AFTER_DAYS = 60;
/** Work done this many days before its first wanted day is not taken for it without asking. */
export const TOO_EARLY_DAYS = 7;

export interface Said {
  on: string;
  place?: string;
  dose?: Dose;
  who?: string;
  words: string;
}

export interface Fit {
  item: Item;
  /** Why it may not be the one; empty where it fits. */
  doubts: string[];
  reasons: string[];
}

/** Items that the said work could be; those with doubts only where no other fits. */
export function fitsFor(items: Item[], said: Said): Fit[] {
  const fits = items.filter((item) => UNDONE_WORK.includes(item.state)).flatMap((item) => fitOf(item, said));
  const sure = fits.filter((fit) => fit.doubts.length === 0);
  return narrowed(sure.length > 0 ? sure : fits, said);
}

function fitOf(item: Item, said: Said): Fit[] {
  const place = placeFit(item.place, said.place, said.words);
  if (place === 'other' || otherMaterial(item.dose, said.dose)) return [];
  const doubts = doubtsAbout(item, said.on);
  const reasons = [
    `same work in ${item.plot ?? 'a plot not named'}`,
    ...(place === 'same' ? [`same place (${item.place})`] : []),
    ...(item.dose?.of && said.dose?.of ? [`same material (${item.dose.of})`] : []),
  ];
  return [{ item, doubts, reasons }];
}

function doubtsAbout(item: Item, on: string): string[] {
  const doubts: string[] = [];
  const openedOn = item.openedAt.slice(0, 10);
  if (on < openedOn) doubts.push('it was done before this was first noted');
  if (daysBetween(item.lastOn, on) > FORGOTTEN_AFTER_DAYS) doubts.push('nobody has spoken of this for long');
  if (!item.when || item.woke) return doubts;
  if ('trigger' in item.when) {
    if (isStage(item.when.trigger)) doubts.push('this still waits for its stage');
  } else if (daysBetween(on, item.when.from) > TOO_EARLY_DAYS) doubts.push('this is wanted much later');
  return doubts;
}

/** Of several that fit, those whose place, then material, then person is named; all where none is. */
function narrowed(fits: Fit[], said: Said): Fit[] {
  const by = [
    (fit: Fit) => placeFit(fit.item.place, said.place, said.words) === 'same' && !!fit.item.place,
    (fit: Fit) => !!fit.item.dose?.of && !!said.dose?.of,
    (fit: Fit) => !!fit.item.who && fit.item.who === said.who,
  ];
  for (const named of by) {
    const some = fits.filter(named);
    if (fits.length > 1 && some.length > 0) fits = some;
  }
  return fits;
}

/** Items not yet done that a plan or a thought speaks of again; the one last spoken of first. */
export function sameOccasion(items: Item[], said: Said & { when?: When }): Item[] {
  const same = items.filter(
    (item) =>
      UNDONE_WORK.includes(item.state) &&
      placeFit(item.place, said.place, said.words) !== 'other' &&
      !otherMaterial(item.dose, said.dose) &&
      daysBetween(item.lastOn, said.on) <= FORGOTTEN_AFTER_DAYS &&
      timesAgree(item, said.when),
  );
  const atPlace = same.filter(
    (item) => item.place && placeFit(item.place, said.place, said.words) === 'same',
  );
  return (atPlace.length > 0 ? atPlace : same).sort((a, b) =>
    a.lastOn > b.lastOn ? -1 : a.lastOn < b.lastOn ? 1 : a.id < b.id ? -1 : 1,
  );
}

/** Work at a stage and work on a day are two occasions (a first and a second topdressing), until the stage is there. */
function timesAgree(item: Item, when: When | undefined): boolean {
  if (!item.when || !when) return true;
  const ours = 'trigger' in item.when && isStage(item.when.trigger) ? item.when.trigger : null;
  const theirs = 'trigger' in when && isStage(when.trigger) ? when.trigger : null;
  if (ours === theirs) return true;
  return ours !== null && theirs === null && item.woke !== undefined;
}

export const isStage = (trigger: string): boolean => (STAGES as readonly string[]).includes(trigger);

const otherMaterial = (a: Dose | undefined, b: Dose | undefined): boolean => {
  const [x, y] = [a?.of?.toLowerCase(), b?.of?.toLowerCase()];
  return !!x && !!y && !x.includes(y) && !y.includes(x);
};

const SMALL_WORDS = new Set(
  'a an the in on at of to by from near along around beside next and just all where is are it that this'.split(
    ' ',
  ),
);
const bigWords = (words: string): string[] =>
  (words.toLowerCase().match(/[\p{L}\d]+/gu) ?? []).filter((word) => !SMALL_WORDS.has(word));

/**
 * `north bund` and `along the north bund by the gate` are the same place, `north bund` and `south bund` are not;
 * where only one names a place nothing is said, unless `words` hold the place `a`.
 */
export function placeFit(
  a: string | undefined,
  b: string | undefined,
  words = '',
): 'same' | 'other' | 'unsaid' {
  if (a && b) {
    const [x, y] = [bigWords(a), bigWords(b)];
    return holds(x, y) || holds(y, x) ? 'same' : 'other';
  }
  return a && bigWords(a).length > 0 && holds(bigWords(words), bigWords(a)) ? 'same' : 'unsaid';
}

const holds = (all: string[], some: string[]): boolean => some.every((word) => all.includes(word));
