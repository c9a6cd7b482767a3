/** Work said to be done: which item it was, and what follows from it. */
import type { ActionKind } from '../reading/record.ts';
import { seenByDoing } from './answers.ts';
import { close } from './close.ts';
import { contextOf, sourceOfFact } from './context.ts';
import { addDays, dayOf, daysBetween, dayWords } from './days.ts';
import { type DiaryFact, DONE_NOT_SEEN, UNDONE_WORK } from './item.ts';
import {
  addItem,
  type Item,
  type Ledger,
  liveIn,
  liveOfKind,
  memoryOf,
  plotAndKind,
  type Source,
  setState,
  takenBack,
  takeUp,
  write,
} from './ledger.ts';
import { type Fit, fitsFor, placeFit, type Said } from './match.ts';
import { actionOf, itemSettled, saidBy } from './propose.ts';
import { gapBetween } from './sequences.ts';
import type { Note } from './timeline.ts';
import { wakeAtOnce, wakeByWork } from './wake.ts';
import { whichQuestion } from './which.ts';
import { workWords } from './words.ts';

/** An undated `weeded` within so many days of known work means the same work. [common practice] */
const SAME_WORK_DAYS: Partial<Record<ActionKind, number>> = {
  irrigate: 1,
  drain: 1,
  scare_birds: 1,
  measure: 0,
  inspect: 0,
  tell: 1,
  control_rodents: 3,
};
const SAME_WORK_OTHERWISE_DAYS = 6;
/** A dated piece of work this near to a known one is the same. */
const SAME_DATED_WORK_DAYS = 1;
/** Water that was let off this recently is taken to be off still. [common practice] */
const STILL_OFF_DAYS = 10;
const KEPT_WORK = 4;

export function reportDone(ledger: Ledger, note: Note, fact: DiaryFact): void {
  const { kind, when, hearsay } = actionOf(fact);
  const context = contextOf(ledger, note, fact);
  const said = { ...saidBy(fact, context.place), on: dayOfWork(fact) };
  const source = sourceOfFact(fact);
  const dated = !!when && 'from' in when;
  const { item, reason, ask } = itemOfWork(ledger, fact, said, dated);
  if (item && !UNDONE_WORK.includes(item.state)) {
    sayAgain(ledger, item, source, !!hearsay, said.on, reason, fact.id);
    return;
  }
  if (item) {
    takeUp(ledger, item, fact.id);
    markDone(ledger, item, source, said.on, !!hearsay, reason);
    return;
  }
  const { id, plot, observedAt: openedAt } = fact;
  const { dose } = actionOf(fact);
  const fresh = addItem(ledger, { ...context, id, plot, kind, openedAt, state: 'open', dose });
  if (!markDone(ledger, fresh, source, said.on, !!hearsay, reason)) setState(ledger, fresh, 'dropped');
  else if (ask.length > 0) fresh.unsure = whichQuestion(fact, ask);
}

/** The day that the note gives, else the note's own; never after it. */
export function dayOfWork(fact: DiaryFact): string {
  const { when } = actionOf(fact);
  const noted = dayOf(fact.observedAt);
  return when && 'to' in when && when.to < noted ? when.to : noted;
}

interface Found {
  item?: Item;
  reason: string;
  ask: Fit[];
}

function itemOfWork(ledger: Ledger, fact: DiaryFact, said: Said, dated: boolean): Found {
  const settled = itemSettled(ledger, fact, () => true);
  if (settled) return { ...settled, ask: [] };
  const own: Found = { reason: 'work that nobody had asked for here', ask: [] };
  if (ledger.timeline.settled.get(fact.id)?.itemId === null)
    return { ...own, reason: 'said to be none of the others' };

  const again = notTakenBack(ledger, fact, 'mentioned', workOfBefore(ledger, fact, said, dated));
  const sameDay = again.find((item) => dated && item.doneOn === said.on);
  if (sameDay) return { item: sameDay, reason: 'the same work, spoken of again', ask: [] };

  const fits = fitsOf(ledger, fact, said);
  const sure = fits.filter((fit) => fit.doubts.length === 0);
  if (sure.length === 1) return { item: sure[0]!.item, reason: sure[0]!.reasons.join(', '), ask: [] };
  if (sure.length > 1) return { reason: 'more than one fits', ask: sure };
  if (again[0]) return { item: again[0], reason: 'the same work, spoken of again', ask: [] };
  return fits.length > 0 ? { reason: 'fits badly with what is open', ask: fits } : own;
}

function fitsOf(ledger: Ledger, fact: DiaryFact, said: Said): Fit[] {
  const { kind } = actionOf(fact);
  const here = fitsFor(untaken(ledger, fact, liveOfKind(ledger, fact.plot, kind)), said);
  if (here.length > 0) return here;
  const elsewhere = fact.plot === null ? anyOfKind(ledger, kind) : liveOfKind(ledger, null, kind);
  const doubt = fact.plot === null ? 'the note names no plot' : 'the plot of this was not named';
  return fitsFor(untaken(ledger, fact, elsewhere), said).map((fit) => ({
    ...fit,
    doubts: [...fit.doubts, doubt],
  }));
}

/** Enough to ask about; a note without a plot must not make the whole farm's list. */
function anyOfKind(ledger: Ledger, kind: ActionKind): Item[] {
  const some: Item[] = [];
  for (const item of ledger.liveByKind.get(kind) ?? []) {
    if (UNDONE_WORK.includes(item.state) && item.plot !== null) some.push(item);
    if (some.length === 6) break;
  }
  return some;
}

const untaken = (ledger: Ledger, fact: DiaryFact, items: Item[]): Item[] =>
  notTakenBack(ledger, fact, 'reported_done', items);

/** Leaves out what a person took back, and writes that into the item's story. */
function notTakenBack(
  ledger: Ledger,
  fact: DiaryFact,
  what: 'reported_done' | 'mentioned',
  items: Item[],
): Item[] {
  return items.filter((item) => {
    if (item.id === fact.id || !takenBack(ledger, item, fact.id, what)) return true;
    write(ledger, item, sourceOfFact(fact), what, 'taken to be about this');
    return false;
  });
}

function workOfBefore(ledger: Ledger, fact: DiaryFact, said: Said, dated: boolean): Item[] {
  const { kind, dose } = actionOf(fact);
  const window = dated ? SAME_DATED_WORK_DAYS : (SAME_WORK_DAYS[kind] ?? SAME_WORK_OTHERWISE_DAYS);
  return (ledger.done.get(plotAndKind(fact.plot, kind)) ?? []).filter((item) => {
    if (!item.doneOn || UNDONE_WORK.includes(item.state)) return false;
    if (placeFit(item.place, said.place, said.words) === 'other') return false;
    if (dose?.of && item.dose?.of && dose.of !== item.dose.of) return false;
    const days = daysBetween(item.doneOn, said.on);
    return dated ? Math.abs(days) <= window : days >= 0 && days <= window;
  });
}

function sayAgain(
  ledger: Ledger,
  item: Item,
  source: Source,
  hearsay: boolean,
  on: string,
  reason: string,
  factId: string,
): void {
  takeUp(ledger, item, factId);
  if (!write(ledger, item, source, 'mentioned', reason, { on })) return;
  if (hearsay || item.state !== 'reported') return;
  item.hearsay = false;
  if (seenByDoing(item.kind)) close(ledger, item, 'seen');
  else setState(ledger, item, 'to_look');
}

/** Gives false where a person took this report back. */
export function markDone(
  ledger: Ledger,
  item: Item,
  source: Source,
  on: string,
  hearsay: boolean,
  reason: string,
): boolean {
  if (!write(ledger, item, source, 'reported_done', reason, { on })) return false;
  Object.assign(item, {
    doneOn: on,
    hearsay,
    unsure: undefined,
    lookOn: undefined,
    passingIsSettled: false,
    overtaken: false,
  });
  setState(ledger, item, hearsay ? 'reported' : 'to_look');
  if (seenByDoing(item.kind) && !hearsay) close(ledger, item, 'seen');
  remember(ledger, item, on, hearsay);
  wakeByWork(ledger, source, item.plot, item.kind, on);
  if (item.kind === 'fertilise') waterBack(ledger, item, source, on);
  if (item.kind === 'irrigate') waterIsBack(ledger, item.plot, on);
  if (item.kind === 'irrigate' || item.kind === 'drain') overtake(ledger, item, source, on);
  return true;
}

function remember(ledger: Ledger, item: Item, on: string, hearsay: boolean): void {
  const memory = memoryOf(ledger, item.plot);
  const last = memory.lastDone.get(item.kind);
  if (!last || on >= last.on) memory.lastDone.set(item.kind, { on, hearsay });
  if (item.kind === 'plant' || item.kind === 'land_prep') memory.stage = undefined;
  const key = plotAndKind(item.plot, item.kind);
  const before = (ledger.done.get(key) ?? []).filter((other) => other !== item);
  ledger.done.set(key, [item, ...before].slice(0, KEPT_WORK));
}

/** After topdressing a plot whose water was let off, letting it back is due: opened unless it is on the list. */
function waterBack(ledger: Ledger, item: Item, source: Source, on: string): void {
  const { lastDone } = memoryOf(ledger, item.plot);
  const off = lastDone.get('drain');
  const back = lastDone.get('irrigate');
  if (back && back.on >= on) item.passingIsSettled = true;
  if (!off || off.on < addDays(on, -STILL_OFF_DAYS) || off.on > on || (back && back.on >= off.on)) return;
  item.passingIsSettled = true;
  const onList = liveOfKind(ledger, item.plot, 'irrigate').find((other) => UNDONE_WORK.includes(other.state));
  if (onList) return;
  const { fromDays, toDays } = gapBetween('fertilise', 'irrigate');
  const id = `${source.id}~irrigate~${item.plot ?? ''}`;
  if (ledger.items.has(id)) return;
  const child = addItem(ledger, {
    id,
    plot: item.plot,
    kind: 'irrigate',
    state: 'open',
    openedAt: source.at,
    when: { from: addDays(on, fromDays), to: addDays(on, toDays) },
    grewFrom: item.id,
    plan: item.plan,
  });
  const reason = `the water was let off on ${dayWords(off.on)}; let it back after the ${workWords('fertilise')}`;
  if (!write(ledger, child, source, 'decided', reason)) setState(ledger, child, 'dropped');
  wakeAtOnce(ledger, child, source);
}

/** The look at draining is too late once water was let in again, and the other way about: a person is asked. */
function overtake(ledger: Ledger, item: Item, source: Source, on: string): void {
  const other = item.kind === 'irrigate' ? 'drain' : 'irrigate';
  for (const earlier of liveOfKind(ledger, item.plot, other)) {
    if (!DONE_NOT_SEEN.includes(earlier.state) || earlier.overtaken || earlier.doneOn! > on) continue;
    const reason = `${workWords(item.kind)} came after it on ${dayWords(on)}`;
    if (!write(ledger, earlier, source, 'mentioned', reason, { on })) continue;
    earlier.overtaken = true;
    earlier.unsure = {
      factId: source.id,
      noteId: source.noteId ?? '',
      asks: 'found',
      sentence: `${reason}. What had the ${workWords(other)} done?`,
      words: source.words,
      candidates: [{ itemId: earlier.id, reason: earlier.plot ?? 'plot not named' }],
    };
  }
}

function waterIsBack(ledger: Ledger, plot: string | null, on: string): void {
  for (const item of liveIn(ledger, plot))
    if (item.kind === 'fertilise' && DONE_NOT_SEEN.includes(item.state) && item.doneOn! <= on)
      item.passingIsSettled = true;
}
