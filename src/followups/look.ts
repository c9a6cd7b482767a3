/** What somebody saw in a note, held against work that was done and problems that stand open. */
import type { ActionKind, FindingFact, MeasurementFact } from '../reading/record.ts';
import { ANSWERS, answers, SHOWN_BY, SIZED_BY } from './answers.ts';
import { looked } from './close.ts';
import { isGood, sourceOfFact } from './context.ts';
import { dayOf, daysBetween } from './days.ts';
import { type DiaryFact, DONE_NOT_SEEN, type Found } from './item.ts';
import { type Item, type Ledger, liveIn, write } from './ledger.ts';
import { closingRow } from './look-after.ts';
import { placeFit } from './match.ts';
import { plannedLook } from './planned-look.ts';
import { lookQuestion } from './which.ts';
import { problemWords, workWords } from './words.ts';

export function lookByFact(ledger: Ledger, fact: DiaryFact): void {
  const { list } = fact.fact;
  if (list === 'stages' && fact.fact.fact.stage === 'harvested' && fact.fact.fact.status === 'current')
    cutNow(ledger, fact);
  if (list !== 'findings' && list !== 'measurements' && list !== 'stages' && list !== 'actions') return;
  for (const item of liveIn(ledger, fact.plot)) {
    if (item.grewFrom && item.openedAt === fact.observedAt) continue;
    if (list === 'actions') lookedWithoutResult(ledger, item, fact);
    else if (item.kind === 'inspect' || item.kind === 'measure') plannedLook(ledger, item, fact);
    else if (list === 'findings') findingOn(ledger, item, fact, fact.fact.fact);
    else if (list === 'measurements') figureOn(ledger, item, fact, fact.fact.fact);
  }
}

/** Work that a cut plot can still need. */
const AFTER_HARVEST: ActionKind[] = ['harvest', 'land_prep', 'plant', 'measure', 'tell', 'mend_bund'];

/** Nothing is closed by the harvest, but what stood open in the crop is asked about. */
function cutNow(ledger: Ledger, fact: DiaryFact): void {
  for (const item of liveIn(ledger, fact.plot)) {
    if (AFTER_HARVEST.includes(item.kind)) continue;
    if (write(ledger, item, sourceOfFact(fact), 'mentioned', 'the plot is harvested'))
      item.unsure = lookQuestion(
        item,
        fact,
        'gone',
        `The plot is harvested. Is the ${workWords(item.kind)} settled?`,
      );
  }
}

/** `checked B2` without saying what was found: nothing closes, but a person is asked. */
function lookedWithoutResult(ledger: Ledger, item: Item, fact: DiaryFact): void {
  if (fact.fact.list !== 'actions' || !DONE_NOT_SEEN.includes(item.state)) return;
  const { kind, status, hearsay } = fact.fact.fact;
  if (kind !== 'inspect' || status !== 'done' || item.kind === 'inspect' || item.kind === 'measure') return;
  const who = hearsay ? 'Somebody is said to have looked' : 'Somebody looked';
  if (write(ledger, item, sourceOfFact(fact), 'mentioned', 'looked at, the note does not say what was found'))
    item.unsure ??= lookQuestion(
      item,
      fact,
      'found',
      `${who}: what was found after the ${workWords(item.kind)}?`,
    );
}

function findingOn(ledger: Ledger, item: Item, fact: DiaryFact, finding: FindingFact): void {
  const fit = problemFit(item, finding.kind);
  if (fit === 'no' || placeFit(item.place, finding.where, fact.words) === 'other') return;
  if (item.taxon && finding.taxon && item.taxon !== finding.taxon) return;
  if (!DONE_NOT_SEEN.includes(item.state)) {
    findingOnOpenWork(ledger, item, fact, finding, fit);
    return;
  }
  if (tooLong(item, fact) || item.overtaken) return;
  const source = sourceOfFact(fact);
  const on = dayOf(fact.observedAt);
  if (finding.status === 'suspected' || finding.status === 'risk') {
    write(ledger, item, source, 'mentioned', 'in doubt, so no result', { on });
    return;
  }
  const good = isGood(finding);
  const placeUnsaid =
    !!item.place && !finding.where && placeFit(item.place, undefined, fact.words) !== 'same';
  const onlyThere = !item.place && !!finding.where;
  if (tooEarly(ledger, item, fact, good)) return;
  if (good && onlyThere) {
    write(ledger, item, source, 'looked_early', `only ${finding.where} is spoken of, not the whole plot`, {
      on,
    });
    return;
  }
  if (fit === 'maybe' || (placeUnsaid && !good)) {
    const why =
      fit === 'maybe'
        ? 'it is not known what this was done against'
        : `the note does not say where; this is ${item.place}`;
    askWhatWasFound(
      ledger,
      item,
      fact,
      `${capital(problemWords(finding.kind))} spoken of after the ${workWords(item.kind)}, but ${why}. What was found?`,
    );
    return;
  }
  const found: Found = good ? 'fixed' : onlyThere || isLess(finding, item) ? 'partly' : 'not_fixed';
  looked(
    ledger,
    item,
    source,
    on,
    found,
    `${problemWords(finding.kind)}: ${finding.status}${finding.severity ? `, ${finding.severity}` : ''}`,
  );
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** `maybe` where the work is usually for several problems and the item does not say for which. */
function problemFit(item: Item, kind: FindingFact['kind']): 'yes' | 'maybe' | 'no' {
  if (item.problem) return item.problem === kind ? 'yes' : 'no';
  const { usual } = ANSWERS[item.kind];
  if (!usual.includes(kind)) return 'no';
  return usual.length === 1 ? 'yes' : 'maybe';
}

const RANK = { slight: 1, moderate: 2, severe: 3 } as const;
const isLess = (finding: FindingFact, item: Item): boolean =>
  finding.severity === 'slight' ||
  (!!finding.severity && !!item.severity && RANK[finding.severity] < RANK[item.severity]);

/** The problem of work not yet done: still there, or gone without anybody saying that it was worked on. */
function findingOnOpenWork(
  ledger: Ledger,
  item: Item,
  fact: DiaryFact,
  finding: FindingFact,
  fit: 'yes' | 'maybe',
): void {
  if (fit === 'maybe' && !answers(item.kind, finding.kind)) return;
  const on = dayOf(fact.observedAt);
  const source = sourceOfFact(fact);
  if (!isGood(finding)) {
    write(ledger, item, source, 'mentioned', `${problemWords(finding.kind)} spoken of again`, { on });
    return;
  }
  const wholly = fit === 'yes' && (!finding.where || !!item.place) && item.problemStood === 'there';
  if (finding.status === 'cleared' && wholly) {
    looked(
      ledger,
      item,
      source,
      on,
      'fixed',
      `${problemWords(finding.kind)} gone, though nobody reported the work`,
    );
    return;
  }
  if (write(ledger, item, source, 'mentioned', `${problemWords(finding.kind)} not there`, { on }))
    item.unsure = lookQuestion(
      item,
      fact,
      'gone',
      `No ${problemWords(finding.kind)} seen here. Is the ${workWords(item.kind)} still wanted?`,
    );
}

function figureOn(ledger: Ledger, item: Item, fact: DiaryFact, figure: MeasurementFact): void {
  if (!DONE_NOT_SEEN.includes(item.state) || tooLong(item, fact) || item.overtaken) return;
  if (placeFit(item.place, figure.where, fact.words) === 'other') return;
  const verdict = verdictOf(item, figure);
  if (!verdict || tooEarly(ledger, item, fact, verdict !== 'not_fixed')) return;
  const before = item.figures.get(figure.quantity);
  const held = `${figure.quantity.replaceAll('_', ' ')} ${figure.value}${before === undefined ? '' : `, ${before} before`}`;
  if (verdict === 'ask' || (!item.place && figure.where)) {
    askWhatWasFound(ledger, item, fact, `After the ${workWords(item.kind)}: ${held}. Fixed, partly or not?`);
    return;
  }
  looked(ledger, item, sourceOfFact(fact), dayOf(fact.observedAt), verdict, held);
}

/** A figure judges only where it cannot be read two ways; else a person is asked. */
function verdictOf(item: Item, { quantity, value }: MeasurementFact): Found | 'ask' | undefined {
  const before = item.figures.get(quantity);
  const shown = SHOWN_BY[item.kind]?.find((s) => s.quantity === quantity);
  if (shown?.good === 'given') return 'seen';
  if (shown?.good === 'above_0') return value > 0 ? 'fixed' : 'not_fixed';
  if (shown?.good === 'not_above_0') return value <= 0 ? 'fixed' : 'not_fixed';
  if (shown) return before !== undefined && value > before ? 'fixed' : 'ask';
  if (item.problem) {
    if (!SIZED_BY[item.problem]?.includes(quantity)) return undefined;
    if (value === 0) return 'fixed';
    return before !== undefined && value > before ? 'not_fixed' : 'ask';
  }
  return ANSWERS[item.kind].usual.some((problem) => SIZED_BY[problem]?.includes(quantity))
    ? 'ask'
    : undefined;
}

function askWhatWasFound(ledger: Ledger, item: Item, fact: DiaryFact, sentence: string): void {
  if (
    write(ledger, item, sourceOfFact(fact), 'mentioned', 'looked at, but the result is for a person to judge')
  )
    item.unsure = lookQuestion(item, fact, 'found', sentence);
}

/** What is found half a season later is not the result of the work. [common practice] */
const RESULT_WITHIN_DAYS = 45;
const tooLong = (item: Item, fact: DiaryFact): boolean =>
  daysBetween(item.doneOn!, dayOf(fact.observedAt)) > RESULT_WITHIN_DAYS;

/** Work done this morning cannot have failed by noon: before the table's days a finding is kept but decides nothing. */
function tooEarly(ledger: Ledger, item: Item, fact: DiaryFact, good: boolean): boolean {
  const row = closingRow(ledger.rows(item.kind));
  const wanted = row ? (good ? row.goodFromDays : row.badFromDays) : 0;
  const sameNote = item.steps.some((step) => step.what === 'reported_done' && step.noteId === fact.noteId);
  const least = sameNote && fact.fact.list === 'findings' ? Math.max(1, wanted) : wanted;
  const days = daysBetween(item.doneOn!, dayOf(fact.observedAt));
  if (days >= least) return false;
  write(
    ledger,
    item,
    sourceOfFact(fact),
    'looked_early',
    `${days} days after the work; it counts from day ${least}`,
  );
  return true;
}
