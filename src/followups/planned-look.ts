/** Looks and counts that were planned: a later note that says how it stands, or gives the figure, is the look. */
import type { Quantity } from '../reading/record.ts';
import { figuresAskedFor, ofTheWeather, SIZED_BY } from './answers.ts';
import { close } from './close.ts';
import { sourceOfFact } from './context.ts';
import { addDays, dayOf } from './days.ts';
import { type DiaryFact, UNDONE_WORK } from './item.ts';
import { type Item, type Ledger, write } from './ledger.ts';
import { placeFit } from './match.ts';
import { triggerAwaited } from './wake.ts';

/** A note from the day before the first day on is the look that was planned. [common practice] */
const LOOK_EARLY_DAYS = 1;

export function plannedLook(ledger: Ledger, item: Item, fact: DiaryFact): void {
  if (!isTheLook(item, fact)) return;
  const source = sourceOfFact(fact);
  const on = dayOf(fact.observedAt);
  if (waitsStill(item, on)) return;
  if (write(ledger, item, source, 'looked', 'a later note says how it stands', { on, found: 'seen' }))
    close(ledger, item, 'seen');
}

function isTheLook(item: Item, { fact }: DiaryFact): boolean {
  if (fact.list === 'measurements') {
    if (ofTheWeather(fact.fact.quantity) || placeFit(item.place, fact.fact.where) === 'other') return false;
    if (item.kind === 'inspect')
      return !item.problem || !!SIZED_BY[item.problem]?.includes(fact.fact.quantity);
    return figuresOf(item).length === 0 || figuresOf(item).includes(fact.fact.quantity);
  }
  if (item.kind === 'measure') return false;
  if (fact.list === 'findings')
    return (
      fact.fact.status !== 'risk' &&
      (!item.problem || item.problem === fact.fact.kind) &&
      placeFit(item.place, fact.fact.where) !== 'other'
    );
  return fact.list === 'stages' && !item.problem;
}

const figuresOf = (item: Item): Quantity[] => {
  const asked = figuresAskedFor(item.steps[0]?.words ?? '');
  return asked.length > 0 ? asked : ((item.problem && SIZED_BY[item.problem]) ?? []);
};

function waitsStill(item: Item, on: string): boolean {
  const trigger = triggerAwaited(item);
  if (trigger && trigger !== 'if_worse' && !trigger.startsWith('before:')) return true;
  return (
    !!item.when &&
    'from' in item.when &&
    UNDONE_WORK.includes(item.state) &&
    on < addDays(item.when.from, -LOOK_EARLY_DAYS)
  );
}
