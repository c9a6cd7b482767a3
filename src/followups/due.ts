/** When an item is due, what it waits for, and where it stands on the list of a day. */
import type { ActionKind, Stage, Trigger } from '../reading/record.ts';
import { addDays, dayOf, daysBetween, dayWords, earlier } from './days.ts';
import {
  type Bucket,
  DONE_NOT_SEEN,
  type Due,
  SETTLED,
  type StageForecast,
  type Timing,
  UNDONE_WORK,
} from './item.ts';
import { type Item, type Ledger, liveOfKind, memoryOf } from './ledger.ts';
import { nextLook } from './look-after.ts';
import { FORGOTTEN_AFTER_DAYS, isStage } from './match.ts';
import { gapBetween } from './sequences.ts';
import { triggerAwaited, wantedWhen } from './wake.ts';
import { eventWords, stageWords, workWords } from './words.ts';

/** Days given for work after the event that it waited for. [common practice] */
const DAYS_AFTER_EVENT: Record<string, number> = { next_walk: 0, rain: 2, dry: 2, drained: 2, if_worse: 2 };
const DAYS_AFTER_STAGE = 3;
/** `Soon` begins so many days ahead. */
export const SOON_DAYS = 7;
/** A span of up to so many days is `today` as soon as it has begun; a longer one only on its last day. */
const SHORT_SPAN_DAYS = 1;
const LONGEST_CHAIN = 6;

export interface Standing {
  due?: Due;
  waitsFor?: { trigger: Trigger; words: string };
  lookAt?: string;
  bucket: Bucket;
  timing: Timing;
}

export type Forecasts = Map<string, StageForecast>;

/** The latest date of each plot and stage, observed and forecast apart. */
export function forecastsOf(rows: StageForecast[]): Forecasts {
  const latest: Forecasts = new Map();
  for (const row of rows) {
    const key = `${row.stage} ${row.sure} ${row.plot}`;
    const other = latest.get(key);
    if (!other || row.date > other.date) latest.set(key, row);
  }
  return latest;
}

/** An observation of this crop before a forecast; one from long before the item is of an earlier crop. */
function stageRow(item: Item, stage: string, forecasts: Forecasts): StageForecast | undefined {
  const seen = forecasts.get(`${stage} observed ${item.plot}`);
  const thisCrop = seen && seen.date >= addDays(dayOf(item.openedAt), -FORGOTTEN_AFTER_DAYS);
  return thisCrop ? seen : forecasts.get(`${stage} forecast ${item.plot}`);
}

export function standingOf(ledger: Ledger, item: Item, forecasts: Forecasts, today: string): Standing {
  if (SETTLED.includes(item.state)) return { bucket: 'settled', timing: 'undated' };
  const due = dueOf(ledger, item, forecasts, today, 0);
  const trigger = freed(ledger, item) ? undefined : awaited(item, forecasts);
  const when = wantedWhen(item);
  const waitsFor =
    trigger && !trigger.startsWith('before:')
      ? { trigger, words: eventWords(trigger, when && 'days' in when ? when.days : 0) }
      : undefined;
  const timing = timingOf(due, today);
  const look = DONE_NOT_SEEN.includes(item.state) ? lookOf(ledger, item, today) : undefined;
  return {
    due,
    waitsFor,
    lookAt: look?.lookAt,
    timing,
    bucket: bucketOf(item, due, !!waitsFor, timing, today),
  };
}

/** A stage that the plot's records give as observed is no longer waited for. */
function awaited(item: Item, forecasts: Forecasts): Trigger | undefined {
  const trigger = triggerAwaited(item);
  const seen = trigger && isStage(trigger) && stageRow(item, trigger, forecasts)?.sure === 'observed';
  return seen ? undefined : trigger;
}

/** Waiting for a step of its plan that was dropped or settled without being done. */
function freed(ledger: Ledger, item: Item): boolean {
  const trigger = triggerAwaited(item);
  if (!trigger?.startsWith('after:') || !item.plan) return false;
  const kind = trigger.slice(6) as ActionKind;
  const steps = [...(ledger.plans.get(item.plan) ?? [])].filter(
    (other) => other.kind === kind && other !== item,
  );
  return (
    steps.length > 0 &&
    steps.every((other) => SETTLED.includes(other.state)) &&
    noneToCome(ledger, item, kind)
  );
}

const noneToCome = (ledger: Ledger, item: Item, kind: ActionKind): boolean =>
  !liveOfKind(ledger, item.plot, kind).some((other) => UNDONE_WORK.includes(other.state));

function dueOf(
  ledger: Ledger,
  item: Item,
  forecasts: Forecasts,
  today: string,
  depth: number,
): Due | undefined {
  const when = wantedWhen(item);
  if (when && 'from' in when) return { ...when, forecast: false, because: 'the day that was said' };
  if (when) return dueByEvent(ledger, item, when, forecasts, today, depth);
  return DONE_NOT_SEEN.includes(item.state) ? lookOf(ledger, item, today)?.due : undefined;
}

const lookOf = (ledger: Ledger, item: Item, today: string) =>
  nextLook(ledger.rows(item.kind), item.doneOn!, today, item.passingIsSettled);

function dueByEvent(
  ledger: Ledger,
  item: Item,
  when: { trigger: Trigger; days?: number },
  forecasts: Forecasts,
  today: string,
  depth: number,
): Due | undefined {
  const [side, kind] = when.trigger.split(':') as [string, ActionKind | undefined];
  if (side === 'before' && kind) return dueBefore(ledger, item, kind, forecasts, today, depth);
  const { fromDays, toDays } = daysAfter(item, when, kind);
  const after = (day: string, forecast: boolean, because: string): Due => ({
    from: addDays(day, fromDays),
    to: addDays(day, toDays),
    forecast,
    because,
  });
  if (item.woke) return after(item.woke.on, false, item.woke.because);
  if (isStage(when.trigger)) {
    const row = stageRow(item, when.trigger, forecasts);
    if (!row) return undefined;
    const said = `${stageWords(row.stage as Stage)}, ${row.sure} ${dayWords(row.date)}`;
    const openedOn = dayOf(item.openedAt);
    const seen = row.sure === 'observed';
    return after(seen && row.date < openedOn ? openedOn : row.date, !seen, said);
  }
  if (!kind || depth >= LONGEST_CHAIN) return undefined;
  const before = liveOfKind(ledger, item.plot, kind).find((o) => UNDONE_WORK.includes(o.state) && o !== item);
  const due = before && dueOf(ledger, before, forecasts, today, depth + 1);
  if (!due) return undefined;
  const because = `counted from the ${workWords(kind)}, due ${dayWords(due.to)}`;
  return { from: addDays(due.from, fromDays), to: addDays(due.to, toDays), forecast: true, because };
}

function daysAfter(item: Item, when: { trigger: Trigger; days?: number }, kind: ActionKind | undefined) {
  if (when.days !== undefined) return { fromDays: when.days, toDays: when.days };
  if (kind) return gapBetween(kind, item.kind);
  return { fromDays: 0, toDays: DAYS_AFTER_EVENT[when.trigger] ?? DAYS_AFTER_STAGE };
}

/** Due the day before the other work's first day; at once where that was done already. */
function dueBefore(
  ledger: Ledger,
  item: Item,
  kind: ActionKind,
  forecasts: Forecasts,
  today: string,
  depth: number,
): Due | undefined {
  const openedOn = dayOf(item.openedAt);
  const done = memoryOf(ledger, item.plot).lastDone.get(kind);
  const work = workWords(kind);
  if (done && done.on >= openedOn && noneToCome(ledger, item, kind))
    return {
      from: openedOn,
      to: done.on,
      forecast: false,
      because: `the ${work} was done on ${dayWords(done.on)}`,
    };
  if (depth >= LONGEST_CHAIN) return undefined;
  const next = liveOfKind(ledger, item.plot, kind).find((o) => UNDONE_WORK.includes(o.state) && o !== item);
  const due = next && dueOf(ledger, next, forecasts, today, depth + 1);
  if (!due) return undefined;
  const to = addDays(due.from, -1);
  const because = `before the ${work}, due ${dayWords(due.from)}`;
  return { from: earlier(openedOn, to), to, forecast: due.forecast, because };
}

function timingOf(due: Due | undefined, today: string): Timing {
  if (!due) return 'undated';
  if (due.to < today) return 'late';
  const begun = due.from <= today;
  if (due.to === today || (begun && daysBetween(due.from, due.to) <= SHORT_SPAN_DAYS)) return 'today';
  return due.from <= addDays(today, SOON_DAYS) ? 'soon' : 'later';
}

function bucketOf(item: Item, due: Due | undefined, waits: boolean, timing: Timing, today: string): Bucket {
  if (DONE_NOT_SEEN.includes(item.state)) return 'to_look_again';
  if (item.state === 'considered') return 'to_decide';
  if (waits) return forecastIsHere(item, due, today) ? 'today' : 'waiting';
  if (timing === 'undated') return item.state === 'put_off' ? 'later' : 'soon';
  return timing;
}

/** The forecast day of a stage asks for a look at the crop; it never makes an item late by itself. */
function forecastIsHere(item: Item, due: Due | undefined, today: string): boolean {
  const trigger = triggerAwaited(item);
  return !!due && !!trigger && isStage(trigger) && due.from <= today;
}
