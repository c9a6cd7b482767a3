/** Events that wait to come: what brings them, and which items they wake. */
import {
  type ActionKind,
  type FindingFact,
  type MeasurementFact,
  type Severity,
  STAGES,
  type Stage,
  type Trigger,
  type When,
} from '../reading/record.ts';
import { answers, SIZED_BY } from './answers.ts';
import { sourceOfFact } from './context.ts';
import { addDays, dayOf, dayWords } from './days.ts';
import { type DiaryFact, DONE_NOT_SEEN, SETTLED, UNDONE_WORK } from './item.ts';
import {
  type Item,
  type Ledger,
  liveIn,
  liveOfKind,
  memoryOf,
  type Source,
  setOf,
  setState,
  waitingIn,
  write,
} from './ledger.ts';
import { isStage } from './match.ts';
import { stageWords, workWords } from './words.ts';

/** `after weeding` is met by weeding of the last few days, if none is still to come. [common practice] */
const JUST_DONE_DAYS = 3;

export const stageRank = (stage: Stage): number => STAGES.indexOf(stage);

/** What the item waits for now: its own time, or the look's where that was put off. */
export function wantedWhen(item: Item): When | undefined {
  if (SETTLED.includes(item.state)) return undefined;
  return DONE_NOT_SEEN.includes(item.state) ? item.lookOn : item.when;
}

export function triggerAwaited(item: Item): Trigger | undefined {
  const when = wantedWhen(item);
  return when && 'trigger' in when && !item.woke ? when.trigger : undefined;
}

/** To be called whenever what an item waits for has changed. */
export function keepWatch(ledger: Ledger, item: Item): void {
  const trigger = triggerAwaited(item);
  setOf(ledger.waiting, item.plot)[trigger ? 'add' : 'delete'](item);
  ledger.waitForRain[trigger === 'rain' ? 'add' : 'delete'](item);
  ledger.waitForWalk[trigger === 'next_walk' ? 'add' : 'delete'](item);
}

export function wake(ledger: Ledger, item: Item, source: Source, on: string, because: string): void {
  if (!write(ledger, item, source, 'woke', because, { on })) return;
  item.woke = { on, because };
  keepWatch(ledger, item);
  if (item.state === 'put_off') setState(ledger, item, 'open');
}

/** A fact of a note that may bring what an item of its plot, or for the weather of any plot, waits for. */
export function wakeByFact(ledger: Ledger, fact: DiaryFact): void {
  const brought = broughtBy(fact);
  const worse = fact.fact.list === 'findings' || fact.fact.list === 'measurements';
  if (brought.length === 0 && !worse) return;
  const source = sourceOfFact(fact);
  const on = dayOf(fact.observedAt);
  for (const item of waitingIn(ledger, fact.plot)) {
    const trigger = triggerAwaited(item);
    if (!trigger || trigger === 'rain') continue;
    if (brought.includes(trigger)) wake(ledger, item, source, on, because(trigger, fact));
    if (trigger === 'if_worse' && hasWorsened(item, fact)) wake(ledger, item, source, on, 'it has got worse');
  }
  if (brought.includes('rain'))
    for (const item of [...ledger.waitForRain]) wake(ledger, item, source, on, `rain on ${dayWords(on)}`);
}

function broughtBy({ fact }: DiaryFact): Trigger[] {
  if (fact.list === 'stages')
    return fact.fact.status === 'current' ? STAGES.slice(0, stageRank(fact.fact.stage) + 1) : [];
  if (fact.list === 'findings') return broughtByFinding(fact.fact);
  return fact.list === 'measurements' ? broughtByFigure(fact.fact) : [];
}

function broughtByFinding({ kind, status }: FindingFact): Trigger[] {
  if (kind === 'dry' && status === 'present') return ['dry', 'drained'];
  return kind === 'flooded' && (status === 'absent' || status === 'cleared') ? ['drained'] : [];
}

function broughtByFigure({ quantity, value }: MeasurementFact): Trigger[] {
  if (quantity === 'rainfall') return value > 0 ? ['rain'] : [];
  if (quantity === 'water_depth') return value <= 0 ? ['drained', 'dry'] : [];
  return quantity === 'water_table_depth' && value > 0 ? ['drained'] : [];
}

function because(trigger: Trigger, { fact, observedAt }: DiaryFact): string {
  const on = dayWords(dayOf(observedAt));
  if (fact.list === 'stages') return `${stageWords(fact.fact.stage)} seen on ${on}`;
  return `${trigger === 'dry' ? 'dry' : 'the water is off'}, noted on ${on}`;
}

/** Ungraded counts as moderate: only `severe` is worse. A problem that was only feared is worse once it is there. */
const grade = (severity: Severity | undefined): number =>
  severity === 'slight' ? 1 : severity === 'severe' ? 3 : 2;
const SAYS_WORSE = /\b(worse|worsen\w*|spread\w*)\b/i;

function hasWorsened(item: Item, { fact, words }: DiaryFact): boolean {
  if (fact.list === 'measurements') {
    const sizes = item.problem ? SIZED_BY[item.problem] : undefined;
    const before = item.figures.get(fact.fact.quantity);
    return !!sizes?.includes(fact.fact.quantity) && before !== undefined && fact.fact.value > before;
  }
  if (fact.list !== 'findings' || fact.fact.status !== 'present') return false;
  const same = item.problem ? item.problem === fact.fact.kind : answers(item.kind, fact.fact.kind);
  if (!same || (item.taxon && fact.fact.taxon && item.taxon !== fact.fact.taxon)) return false;
  if (item.problemStood === 'not_yet' || SAYS_WORSE.test(words)) return true;
  return fact.fact.severity !== undefined && grade(fact.fact.severity) > grade(item.severity);
}

/** A note of a later day is the next walk, wherever it starts; a plot that was not reached waits for the next. */
export function wakeByWalk(ledger: Ledger, fact: DiaryFact): void {
  const on = dayOf(fact.observedAt);
  if (on === ledger.walkedOn) return;
  ledger.walkedOn = on;
  for (const item of [...ledger.waitForWalk])
    if (item.lastOn < on) wake(ledger, item, sourceOfFact(fact), on, `walk of ${dayWords(on)}`);
}

export function notReached(ledger: Ledger, fact: DiaryFact): void {
  for (const item of liveIn(ledger, fact.plot)) {
    const when = wantedWhen(item);
    if (!when || !('trigger' in when) || when.trigger !== 'next_walk') continue;
    if (
      !write(
        ledger,
        item,
        sourceOfFact(fact),
        'mentioned',
        'the plot was not reached; waits for the next walk',
      )
    )
      continue;
    item.woke = undefined;
    keepWatch(ledger, item);
  }
}

export function wakeByWork(
  ledger: Ledger,
  source: Source,
  plot: string | null,
  kind: ActionKind,
  on: string,
): void {
  for (const item of waitingIn(ledger, plot)) {
    const trigger = triggerAwaited(item);
    if (trigger === `after:${kind}` || (trigger === 'drained' && kind === 'drain'))
      wake(ledger, item, source, on, `${workWords(kind)} done on ${dayWords(on)}`);
  }
}

/** Wakes an item that waits for something which is there already. */
export function wakeAtOnce(ledger: Ledger, item: Item, source: Source): void {
  keepWatch(ledger, item);
  const trigger = triggerAwaited(item);
  if (!trigger) return;
  const on = dayOf(source.at);
  const memory = memoryOf(ledger, item.plot);
  if (isStage(trigger)) {
    const seen = memory.stage;
    if (seen && stageRank(seen.stage) >= stageRank(trigger as Stage))
      wake(ledger, item, source, on, `${stageWords(seen.stage)} seen on ${dayWords(seen.on)}`);
    return;
  }
  const kind =
    trigger === 'drained' ? 'drain' : trigger.startsWith('after:') ? (trigger.slice(6) as ActionKind) : null;
  if (!kind) return;
  const last = memory.lastDone.get(kind);
  const toCome = liveOfKind(ledger, item.plot, kind).some((other) => UNDONE_WORK.includes(other.state));
  if (last && !toCome && last.on >= addDays(on, -JUST_DONE_DAYS))
    wake(ledger, item, source, last.on, `${workWords(kind)} done on ${dayWords(last.on)}`);
}
