/** Work that a note decides on, weighs, or decides against. */
import type { ActionFact } from '../reading/record.ts';
import { contextOf, sourceOfFact } from './context.ts';
import { dayOf, daysBetween, dayWords } from './days.ts';
import { type DiaryFact, UNDONE_WORK } from './item.ts';
import {
  addItem,
  type Item,
  itemNamed,
  type Ledger,
  liveOfKind,
  plotAndKind,
  type Source,
  setState,
  takenBack,
  takeUp,
  write,
} from './ledger.ts';
import { type Fit, FORGOTTEN_AFTER_DAYS, fitsFor, placeFit, type Said, sameOccasion } from './match.ts';
import type { Note } from './timeline.ts';
import { wakeAtOnce } from './wake.ts';
import { whichQuestion } from './which.ts';

export const actionOf = (fact: DiaryFact): ActionFact => fact.fact.fact as ActionFact;

export function saidBy(fact: DiaryFact, place: string | undefined): Said & { when?: ActionFact['when'] } {
  const { dose, who, when } = actionOf(fact);
  return { on: dayOf(fact.observedAt), words: fact.words, place, dose, who, when };
}

/** `planned` and `proposed`: adds to an item that is there, or opens one. */
export function propose(ledger: Ledger, note: Note, fact: DiaryFact): Item {
  const context = contextOf(ledger, note, fact);
  const said = saidBy(fact, context.place);
  const source = sourceOfFact(fact);
  const again = itemSettled(ledger, fact, (item) => UNDONE_WORK.includes(item.state));
  const candidates = again ? [again.item] : againOf(ledger, fact, said);
  const [item] = candidates;
  if (!item) return openItem(ledger, fact, { ...context, ...plain(actionOf(fact)) }, source);
  const others = candidates.filter((other) => other !== item && other.place !== item.place);
  const unclear = others.length > 0 && !said.place && placeFit(item.place, undefined, said.words) !== 'same';
  if (unclear)
    item.unsure = whichQuestion(
      fact,
      candidates.map((c) => ({ item: c, doubts: [], reasons: [] })),
    );
  const reason =
    again?.reason ?? (unclear ? 'the one last spoken of; others fit too' : 'already on the list');
  addTo(ledger, item, fact, source, reason);
  return item;
}

function againOf(ledger: Ledger, fact: DiaryFact, said: Said): Item[] {
  if (ledger.timeline.settled.get(fact.id)?.itemId === null) return [];
  const { kind, status } = actionOf(fact);
  return sameOccasion(liveOfKind(ledger, fact.plot, kind), said).filter((item) => {
    const what = status === 'planned' && item.state === 'considered' ? 'decided' : 'mentioned';
    if (!takenBack(ledger, item, fact.id, what)) return true;
    write(ledger, item, sourceOfFact(fact), what, 'taken to be about this');
    return false;
  });
}

/** What a person said that this fact is about, if that item stands and `can` take it. */
export function itemSettled(
  ledger: Ledger,
  fact: DiaryFact,
  can: (item: Item) => boolean,
): { item: Item; reason: string } | undefined {
  const settled = ledger.timeline.settled.get(fact.id);
  const item = settled?.itemId ? itemNamed(ledger, settled.itemId) : undefined;
  if (!item || !can(item) || item.kind !== actionOf(fact).kind) return undefined;
  return {
    item,
    reason: `${settled!.step.by || 'somebody'} said on ${dayWords(dayOf(settled!.step.at))} that it is this one`,
  };
}

const plain = ({ when, who, dose }: ActionFact): Partial<Item> => ({ when, who, dose });

function openItem(ledger: Ledger, fact: DiaryFact, more: Partial<Item>, source: Source): Item {
  const { kind, status } = actionOf(fact);
  const decided = status === 'planned';
  const { id, plot, observedAt: openedAt } = fact;
  const item = addItem(ledger, { ...more, id, plot, kind, openedAt, state: decided ? 'open' : 'considered' });
  if (!write(ledger, item, source, decided ? 'decided' : 'considered', 'first spoken of here'))
    setState(ledger, item, 'dropped');
  wakeAtOnce(ledger, item, source);
  return item;
}

function addTo(ledger: Ledger, item: Item, fact: DiaryFact, source: Source, reason: string): void {
  const { status, when, who, dose } = actionOf(fact);
  takeUp(ledger, item, fact.id);
  const decides = status === 'planned';
  if (!write(ledger, item, source, decides && item.state === 'considered' ? 'decided' : 'mentioned', reason))
    return;
  if (!decides && item.state !== 'considered') return;
  if (decides && (item.state === 'considered' || (item.state === 'put_off' && when)))
    setState(ledger, item, 'open');
  item.who = who ?? item.who;
  item.dose = dose ?? item.dose;
  if (!when) return;
  Object.assign(item, { when, woke: undefined, whenFromPlan: false });
  wakeAtOnce(ledger, item, source);
}

/** `ruled_out`: settles the item that it is about; where that is unclear it stands by itself and asks. */
export function ruleOut(ledger: Ledger, note: Note, fact: DiaryFact): void {
  const { kind } = actionOf(fact);
  const context = contextOf(ledger, note, fact);
  const source = sourceOfFact(fact);
  const settled = itemSettled(ledger, fact, (item) => UNDONE_WORK.includes(item.state));
  const fits = settled ? [] : ruledOutOf(ledger, fact, saidBy(fact, context.place));
  const sure =
    settled ??
    (fits.length === 1 && fits[0]!.doubts.length === 0
      ? { item: fits[0]!.item, reason: fits[0]!.reasons.join(', ') }
      : undefined);
  if (sure) {
    takeUp(ledger, sure.item, fact.id);
    if (write(ledger, sure.item, source, 'ruled_out', sure.reason)) setState(ledger, sure.item, 'ruled_out');
    return;
  }
  const before = ledger.ruledOut.get(plotAndKind(fact.plot, kind));
  if (
    fits.length === 0 &&
    before &&
    stillRuledOut(before, source) &&
    placeFit(before.place, context.place) !== 'other'
  ) {
    takeUp(ledger, before, fact.id);
    write(ledger, before, source, 'mentioned', 'ruled out before');
    return;
  }
  const { id, plot, observedAt: openedAt } = fact;
  const item = addItem(ledger, { ...context, id, plot, kind, openedAt, state: 'ruled_out' });
  const stands = write(ledger, item, source, 'ruled_out', 'decided against here');
  if (!stands) setState(ledger, item, 'dropped');
  if (stands && fits.length > 0) item.unsure = whichQuestion(fact, fits);
}

const stillRuledOut = (item: Item, source: Source): boolean =>
  item.state === 'ruled_out' && daysBetween(item.lastOn, dayOf(source.at)) <= FORGOTTEN_AFTER_DAYS;

function ruledOutOf(ledger: Ledger, fact: DiaryFact, said: Said): Fit[] {
  if (ledger.timeline.settled.get(fact.id)?.itemId === null) return [];
  return fitsFor(liveOfKind(ledger, fact.plot, actionOf(fact).kind), said).filter(({ item }) => {
    if (!takenBack(ledger, item, fact.id, 'ruled_out')) return true;
    write(ledger, item, sourceOfFact(fact), 'ruled_out', 'taken to be about this');
    return false;
  });
}
