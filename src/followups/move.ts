/** What a person did on a page. Every step is written into the item's story, also where it comes too late to count. */

import { looked } from './close.ts';
import { dayOf } from './days.ts';
import { DONE_NOT_SEEN, type ItemSnapshot, type PersonStep, SETTLED, UNDONE_WORK } from './item.ts';
import {
  addItem,
  type Item,
  itemNamed,
  type Ledger,
  type Source,
  setState,
  takeUp,
  write,
} from './ledger.ts';
import { markDone } from './report.ts';
import { keepWatch, wakeAtOnce } from './wake.ts';

const sourceOfStep = ({ id, at, by, words }: PersonStep): Source => ({ id, at, by, words, stepId: id });

/** Keeps an item whose opening is read otherwise now, because somebody has worked with it. */
export function openByHand(ledger: Ledger, id: string, snapshot: ItemSnapshot, step: PersonStep): Item {
  const { plot, kind, problem, place, openedAt, words, noteId, when, who, dose } = snapshot;
  const item = addItem(ledger, {
    ...{ id, plot, kind, problem, place, openedAt, when, who, dose },
    problemStood: problem ? 'there' : 'unknown',
    state: 'open',
    openedByHand: true,
  });
  const source: Source = { id, at: openedAt, by: step.by, words, noteId };
  const stands = write(
    ledger,
    item,
    source,
    'decided',
    'kept because somebody worked with it; its note is read otherwise now',
  );
  if (!stands) setState(ledger, item, 'dropped');
  wakeAtOnce(ledger, item, source);
  return item;
}

export function stepMoves(ledger: Ledger, step: PersonStep): void {
  if (step.kind === 'add') {
    addByHand(ledger, step);
    return;
  }
  const item =
    itemNamed(ledger, step.itemId) ??
    openByHand(ledger, step.itemId, { ...step.snapshot, openedAt: step.at }, step);
  MOVES[step.kind](ledger, item, step, sourceOfStep(step));
}

function addByHand(ledger: Ledger, step: PersonStep): void {
  const { plot, kind, problem, place, when, who, dose } = step.snapshot;
  const item = addItem(ledger, {
    ...{ id: step.id, plot, kind, problem, place, openedAt: step.at },
    ...{ when: step.when ?? when, who: step.who ?? who, dose: step.dose ?? dose },
    problemStood: problem ? 'there' : 'unknown',
    state: 'open',
    openedByHand: true,
  });
  if (!write(ledger, item, sourceOfStep(step), 'decided', 'put on the list by hand'))
    setState(ledger, item, 'dropped');
  wakeAtOnce(ledger, item, sourceOfStep(step));
}

type Move = (ledger: Ledger, item: Item, step: PersonStep, source: Source) => void;

const MOVES: Record<Exclude<PersonStep['kind'], 'add'>, Move> = {
  decide: (ledger, item, step, source) => {
    if (!UNDONE_WORK.includes(item.state))
      return tooLate(ledger, item, source, 'it was already done or settled');
    if (!write(ledger, item, source, 'decided', 'decided on a page')) return;
    setState(ledger, item, 'open');
    item.who = step.who ?? item.who;
    item.dose = step.dose ?? item.dose;
    if (step.when) Object.assign(item, { when: step.when, woke: undefined, whenFromPlan: false });
    item.unsure = undefined;
    wakeAtOnce(ledger, item, source);
  },
  report_done: (ledger, item, step, source) => {
    const on = step.on ?? dayOf(step.at);
    if (UNDONE_WORK.includes(item.state)) {
      markDone(ledger, item, source, on, !step.firstHand, 'reported on a page');
      return;
    }
    if (SETTLED.includes(item.state)) return tooLate(ledger, item, source, 'it was already settled');
    if (!write(ledger, item, source, 'mentioned', 'reported again', { on }) || !step.firstHand) return;
    item.hearsay = false;
    setState(ledger, item, 'to_look');
  },
  look: (ledger, item, step, source) => {
    if (SETTLED.includes(item.state)) return tooLate(ledger, item, source, 'it was already settled');
    looked(
      ledger,
      item,
      source,
      step.on ?? dayOf(step.at),
      step.found ?? 'seen',
      'looked at, said on a page',
    );
  },
  put_off: (ledger, item, step, source) => {
    if (SETTLED.includes(item.state)) return tooLate(ledger, item, source, 'it was already settled');
    if (!write(ledger, item, source, 'put_off', 'put off on a page')) return;
    if (DONE_NOT_SEEN.includes(item.state)) Object.assign(item, { lookOn: step.when, woke: undefined });
    else {
      Object.assign(item, { when: step.when, woke: undefined, whenFromPlan: false });
      setState(ledger, item, 'put_off');
    }
    keepWatch(ledger, item);
  },
  drop: settle('dropped', 'dropped on a page'),
  rule_out: settle('ruled_out', 'ruled out on a page'),
  reopen: (ledger, item, _step, source) => {
    if (UNDONE_WORK.includes(item.state)) return tooLate(ledger, item, source, 'it was open already');
    if (!write(ledger, item, source, 'reopened', 'opened again on a page')) return;
    Object.assign(item, { doneOn: undefined, found: undefined, hearsay: false, lookOn: undefined });
    setState(ledger, item, 'open');
    keepWatch(ledger, item);
  },
  match: (ledger, item, step, source) => {
    if (!write(ledger, item, source, 'matched', 'a person said that the note is about this')) return;
    const own = step.factId ? itemNamed(ledger, step.factId) : undefined;
    if (own && own !== item && own.id === step.factId) takeOver(ledger, item, own, source);
  },
  apart: (ledger, item, _step, source) => {
    if (write(ledger, item, source, 'matched', 'a person said that the note is about none of the others'))
      item.unsure = undefined;
  },
  remark: (ledger, item, _step, source) => {
    write(ledger, item, source, 'remark', 'a remark');
  },
  undo: (ledger, item, _step, source) => {
    write(ledger, item, source, 'undo', 'takes back an earlier step');
  },
};

function settle(state: 'dropped' | 'ruled_out', reason: string): Move {
  return (ledger, item, _step, source) => {
    if (SETTLED.includes(item.state)) return tooLate(ledger, item, source, 'it was already settled');
    if (write(ledger, item, source, state, reason)) setState(ledger, item, state);
  };
}

function tooLate(ledger: Ledger, item: Item, source: Source, why: string): void {
  write(ledger, item, source, 'remark', `kept in the story only: ${why}`);
}

/** The item was opened after the note that is said to be about it: the note's own item goes into it now. */
function takeOver(ledger: Ledger, item: Item, own: Item, source: Source): void {
  if (own.doneOn && UNDONE_WORK.includes(item.state))
    markDone(ledger, item, source, own.doneOn, own.hearsay, 'the note is about this one');
  if (SETTLED.includes(own.state)) return;
  write(ledger, own, source, 'dropped', `taken up by another item (${item.id})`);
  setState(ledger, own, 'dropped');
  takeUp(ledger, item, own.id);
}
