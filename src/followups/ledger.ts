/** The items while they are being built, and what is remembered of each plot on the way. */
import type {
  ActionKind,
  FindingFact,
  FindingKind,
  Quantity,
  Severity,
  Stage,
  Taxon,
  When,
} from '../reading/record.ts';
import { dayOf } from './days.ts';
import {
  type FollowUp,
  type ItemState,
  type ItemStep,
  type ItemStepKind,
  type LookAfterRow,
  type Question,
  SETTLED,
} from './item.ts';
import { rowsFor } from './look-after.ts';
import type { Timeline } from './timeline.ts';

export interface Item {
  id: string;
  names: string[];
  plot: string | null;
  kind: ActionKind;
  problem?: FindingKind;
  taxon?: Taxon;
  place?: string;
  severity?: Severity;
  /** How the problem stood when the item opened: not there yet, doubtful, or there. */
  problemStood: 'there' | 'not_yet' | 'unknown';
  figures: Map<Quantity, number>;
  state: ItemState;
  found?: FollowUp['found'];
  openedAt: string;
  openedByHand: boolean;
  lastOn: string;
  when?: When;
  /** True where `when` came from the order of a plan and not from words. */
  whenFromPlan?: boolean;
  woke?: { on: string; because: string };
  who?: string;
  dose?: FollowUp['dose'];
  doneOn?: string;
  hearsay: boolean;
  passingIsSettled: boolean;
  /** Water was let in after draining, or off after letting in: what stands there now shows nothing of this work. */
  overtaken?: boolean;
  lookOn?: When;
  plan?: string;
  grewFrom?: string;
  unsure?: Question;
  steps: ItemStep[];
}

/** Who said it, when, and in which words. */
export interface Source {
  id: string;
  at: string;
  by: string;
  words: string;
  noteId?: string;
  stepId?: string;
}

export interface PlotMemory {
  stage?: { stage: Stage; on: string };
  findings: Map<FindingKind, { fact: FindingFact; on: string }>;
  figures: Map<Quantity, { value: number; on: string }>;
  lastDone: Map<ActionKind, { on: string; hearsay: boolean }>;
}

export interface Ledger {
  timeline: Timeline;
  rows: (action: ActionKind) => LookAfterRow[];
  items: Map<string, Item>;
  /** Facts and old ids to the item that took them up. */
  names: Map<string, string>;
  live: Map<string | null, Set<Item>>;
  liveByKind: Map<ActionKind, Set<Item>>;
  liveByPlotAndKind: Map<string, Set<Item>>;
  /** The last few pieces of work by plot and kind, whatever became of them. */
  done: Map<string, Item[]>;
  ruledOut: Map<string, Item>;
  /** Items that wait for an event, by plot; those for rain and for the next walk also from any plot. */
  waiting: Map<string | null, Set<Item>>;
  waitForRain: Set<Item>;
  waitForWalk: Set<Item>;
  /** The last day that a note was made on. */
  walkedOn: string;
  plans: Map<string, Set<Item>>;
  plots: Map<string | null, PlotMemory>;
}

export function newLedger(timeline: Timeline, lookAfter: readonly LookAfterRow[]): Ledger {
  const rows = new Map<ActionKind, LookAfterRow[]>();
  return {
    timeline,
    rows: (action) => {
      if (!rows.has(action)) rows.set(action, rowsFor(lookAfter, action));
      return rows.get(action)!;
    },
    items: new Map(),
    names: new Map(),
    live: new Map(),
    liveByKind: new Map(),
    liveByPlotAndKind: new Map(),
    done: new Map(),
    ruledOut: new Map(),
    waiting: new Map(),
    waitForRain: new Set(),
    waitForWalk: new Set(),
    walkedOn: '',
    plans: new Map(),
    plots: new Map(),
  };
}

export const plotAndKind = (plot: string | null, kind: ActionKind): string => `${kind} ${plot ?? ''}`;

export function memoryOf(ledger: Ledger, plot: string | null): PlotMemory {
  const known = ledger.plots.get(plot);
  if (known) return known;
  const fresh: PlotMemory = { findings: new Map(), figures: new Map(), lastDone: new Map() };
  ledger.plots.set(plot, fresh);
  return fresh;
}

export function addItem(
  ledger: Ledger,
  start: Pick<Item, 'id' | 'plot' | 'kind' | 'state' | 'openedAt'> & Partial<Item>,
): Item {
  const item: Item = {
    names: [start.id],
    problemStood: 'unknown',
    figures: new Map(),
    openedByHand: false,
    lastOn: dayOf(start.openedAt),
    hearsay: false,
    passingIsSettled: false,
    steps: [],
    ...start,
  };
  ledger.items.set(item.id, item);
  ledger.names.set(item.id, item.id);
  setState(ledger, item, item.state);
  return item;
}

export function itemNamed(ledger: Ledger, id: string): Item | undefined {
  const name = ledger.names.get(id);
  return name === undefined ? undefined : ledger.items.get(name);
}

export function takeUp(ledger: Ledger, item: Item, factId: string): void {
  ledger.names.set(factId, item.id);
  if (!item.names.includes(factId)) item.names.push(factId);
}

export function setState(ledger: Ledger, item: Item, state: ItemState): void {
  item.state = state;
  const change = SETTLED.includes(state) ? 'delete' : 'add';
  setOf(ledger.live, item.plot)[change](item);
  setOf(ledger.liveByKind, item.kind)[change](item);
  setOf(ledger.liveByPlotAndKind, plotAndKind(item.plot, item.kind))[change](item);
  if (change === 'delete') {
    ledger.waiting.get(item.plot)?.delete(item);
    ledger.waitForRain.delete(item);
    ledger.waitForWalk.delete(item);
    item.unsure = undefined;
  }
  if (state === 'ruled_out') ledger.ruledOut.set(plotAndKind(item.plot, item.kind), item);
}

export function setOf<K>(sets: Map<K, Set<Item>>, key: K): Set<Item> {
  const known = sets.get(key);
  if (known) return known;
  const fresh = new Set<Item>();
  sets.set(key, fresh);
  return fresh;
}

const NONE: ReadonlySet<Item> = new Set();

/** Items of a plot that are not settled. The set is the ledger's own: those settled on the way leave it at once. */
export const waitingIn = (ledger: Ledger, plot: string | null): Item[] => [
  ...(ledger.waiting.get(plot) ?? NONE),
];

export const liveIn = (ledger: Ledger, plot: string | null): ReadonlySet<Item> =>
  ledger.live.get(plot) ?? NONE;

export const liveOfKind = (ledger: Ledger, plot: string | null, kind: ActionKind): Item[] => [
  ...(ledger.liveByPlotAndKind.get(plotAndKind(plot, kind)) ?? []),
];

/**
 * Writes a step into the item's story. Gives false, and writes it as undone, where a person took exactly this
 * step back: then it must have no effect.
 */
export function write(
  ledger: Ledger,
  item: Item,
  source: Source,
  what: ItemStepKind,
  reason: string,
  more: { on?: string; found?: FollowUp['found'] } = {},
): boolean {
  const id = source.stepId ?? `${source.id}>${what}`;
  const undo = source.stepId
    ? ledger.timeline.undone.get(source.stepId)
    : ledger.timeline.undoneFromNotes
        .get(id)
        ?.find((step) => itemNamed(ledger, step.itemId) === item || item.names.includes(step.itemId));
  const { at, by, words, noteId, stepId } = source;
  item.steps.push({
    id,
    what,
    at,
    on: more.on ?? dayOf(at),
    by,
    words,
    reason,
    ...(noteId && { noteId }),
    ...(stepId && { stepId }),
    ...(more.found && { found: more.found }),
    ...(undo && { undone: { by: undo.by, at: undo.at, stepId: undo.id } }),
  });
  if (!undo && dayOf(at) > item.lastOn) item.lastOn = dayOf(at);
  return !undo;
}

/** Whether a person took back what this source would write on this item. */
export function takenBack(ledger: Ledger, item: Item, sourceId: string, what: ItemStepKind): boolean {
  return (
    ledger.timeline.undoneFromNotes
      .get(`${sourceId}>${what}`)
      ?.some((step) => itemNamed(ledger, step.itemId) === item || item.names.includes(step.itemId)) ?? false
  );
}
