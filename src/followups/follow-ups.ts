import { dayOf } from './days.ts';
import { type Forecasts, forecastsOf, standingOf } from './due.ts';
import type { DiaryFact, FollowUp, LookAfterRow, PersonStep, StageForecast } from './item.ts';
import { DONE_NOT_SEEN } from './item.ts';
import { type Item, type Ledger, memoryOf, newLedger } from './ledger.ts';
import { lookByFact } from './look.ts';
import { cautionsFor, keepOutAfter } from './look-after.ts';
import { openByHand, stepMoves } from './move.ts';
import { inListOrder } from './order.ts';
import { tiePlans } from './plan.ts';
import { actionOf, propose, ruleOut } from './propose.ts';
import { dayOfWork, reportDone } from './report.ts';
import { compare, type Note, timelineOf } from './timeline.ts';
import { notReached, wakeByFact, wakeByWalk } from './wake.ts';

export interface FollowUpsInput {
  facts: DiaryFact[];
  steps: PersonStep[];
  lookAfter: readonly LookAfterRow[];
  forecasts: StageForecast[];
  today: string;
}

/**
 * All items of the farm as they stand on `today`, in the order of the list (see order.ts). A pure fold: the same
 * facts and steps give the same items in whatever order, and however often, they arrived.
 */
export function followUps({ facts, steps, lookAfter, forecasts, today }: FollowUpsInput): FollowUp[] {
  const timeline = timelineOf(facts, steps);
  const ledger = newLedger(timeline, lookAfter);
  for (const event of timeline.events) {
    if (event.rank === 0) openByHand(ledger, event.opens.itemId, event.opens.snapshot, event.opens.step);
    else if (event.rank === 1) noteMoves(ledger, event.note);
    else stepMoves(ledger, event.step);
  }
  const best = forecastsOf(forecasts);
  return [...ledger.items.values()].map((item) => finished(ledger, item, best, today)).sort(inListOrder);
}

/** What came about, then what was done, then what was seen of it, then what is to be done. */
function noteMoves(ledger: Ledger, note: Note): void {
  const { facts } = note;
  wakeByWalk(ledger, facts[0]!);
  for (const fact of facts) {
    if (fact.fact.list === 'unvisited') notReached(ledger, fact);
    wakeByFact(ledger, fact);
    if (fact.fact.list === 'stages' && fact.fact.fact.status === 'current')
      memoryOf(ledger, fact.plot).stage = { stage: fact.fact.fact.stage, on: dayOf(fact.observedAt) };
  }
  const actions = facts.filter((fact) => fact.fact.list === 'actions' && fact.fact.fact.kind !== 'leave');
  const withStatus = (status: string) => actions.filter((fact) => actionOf(fact).status === status);
  for (const fact of withStatus('done').sort(inOrderOfWork)) reportDone(ledger, note, fact);
  for (const fact of withStatus('ruled_out')) ruleOut(ledger, note, fact);
  for (const fact of facts) lookByFact(ledger, fact);
  for (const fact of facts) keepInMind(ledger, fact);
  if (actions.length === 0) return;
  const plans = [...withStatus('planned'), ...withStatus('proposed')];
  tiePlans(
    ledger,
    note,
    plans.map((fact) => propose(ledger, note, fact)),
  );
}

const inOrderOfWork = (a: DiaryFact, b: DiaryFact): number =>
  compare(dayOfWork(a), dayOfWork(b)) || compare(actionOf(a).kind, actionOf(b).kind) || compare(a.id, b.id);

function keepInMind(ledger: Ledger, { fact, plot, observedAt }: DiaryFact): void {
  const on = dayOf(observedAt);
  if (fact.list === 'findings') memoryOf(ledger, plot).findings.set(fact.fact.kind, { fact: fact.fact, on });
  if (fact.list === 'measurements')
    memoryOf(ledger, plot).figures.set(fact.fact.quantity, { value: fact.fact.value, on });
}

function finished(ledger: Ledger, item: Item, forecasts: Forecasts, today: string): FollowUp {
  const { due, waitsFor, lookAt, bucket, timing } = standingOf(ledger, item, forecasts, today);
  const keepOut = item.doneOn ? keepOutAfter(item.kind, item.doneOn) : undefined;
  const reported = DONE_NOT_SEEN.includes(item.state) || item.state === 'closed';
  return {
    id: item.id,
    alsoKnownAs: item.names,
    plot: item.plot,
    kind: item.kind,
    problem: item.problem,
    taxon: item.taxon,
    place: item.place,
    severity: item.severity,
    state: item.state,
    found: item.found,
    openedAt: item.openedAt,
    openedByHand: item.openedByHand,
    due,
    waitsFor,
    lookAt,
    bucket,
    timing,
    who: item.who,
    dose: item.dose,
    when: item.when,
    doneOn: item.doneOn,
    hearsay: item.hearsay && reported,
    keepOut,
    cautions: cautionsFor(item.kind),
    plan: item.plan,
    grewFrom: item.grewFrom,
    unsure: item.unsure,
    steps: item.steps,
  };
}
