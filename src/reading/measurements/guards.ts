/** Figures that say nothing of the field today: plans, thresholds, rules of thumb, forecasts, other days. */

import type { NumberFound } from '../numbers/find-numbers.ts';
import { longestAt, phrasesOf, treeOf } from '../numbers/word-tree.ts';
import type { Quantity } from '../record.ts';
import { type Surroundings, wordOf } from './surroundings.ts';

type Guard = { reach: number; says: 'plan' | 'other-day' };

const BEFORE = treeOf<Guard>([
  ...phrasesOf(
    'if, unless, in case, once it, should it, when it reaches, when it passes, when it hits, if it',
    { reach: 10, says: 'plan' } as Guard,
  ),
  ...phrasesOf(
    'target, threshold, limit, trigger, rule is, rule of thumb, the rule, aim, aiming, supposed to be, should be, ought to be, needs to be, need to be, must be, want it, want it at, we want, wanted, should read, wait for, wait till, wait until, until it, till it, goal, recommended, recommendation, standard is, standard, forecast, expected to, expect, expecting, hope for, hoping for, critical level, action level, economic, safe level, cutoff, spec is, spec, plan is, intended, design, designed, ideal, normally, usually, would like, book says, manual says, guide says, we treat, we spray, spray at, treat at, treat from, irrigate at, re-irrigate at, irrigate when, drain at, harvest at, contract is, contract says, allowed, tolerance, max allowed, from about when, minimum of, they want, dock, docked, buyer wants, mill wants, mill takes, needs',
    { reach: 7, says: 'plan' } as Guard,
  ),
  ...phrasesOf(
    'last week, last wk, last month, last year, last season, last time, yesterday, yest, previously, last round, last walk, last visit, previous, earlier in the week, the other day, a week ago, two weeks ago, days ago, weeks ago, week ago, at planting, at transplanting, before the spray, before spraying, before that, from last, last count, before was, initially, at sowing, in the nursery was, last tuesday, last monday, last friday, last thursday, last wednesday, last saturday, last sunday',
    { reach: 6, says: 'other-day' } as Guard,
  ),
]);

const AFTER = treeOf<Guard>([
  ...phrasesOf('short of, more than, less than, better than, ahead of', { reach: 1, says: 'plan' } as Guard),
  ...phrasesOf('we spray, we treat, we irrigate, we drain, i spray, we flood', {
    reach: 1,
    says: 'plan',
  } as Guard),
  ...phrasesOf(
    'upwards, upward, or more we, or more then, or above, is the limit, is the threshold, is the target, is the trigger, threshold, the threshold, limit, is enough, would help, is what we want, would do, is the rule, is plenty, then spray, then we, is safe, target, is the line, is the number, before we, is allowed, will be given, will be applied, will be let in, will be put, they reckon, is coming, is expected, is forecast, by the forecast',
    { reach: 5, says: 'plan' } as Guard,
  ),
  ...phrasesOf(
    'yesterday, yest, last week, last wk, last month, last year, last season, last time, last round, last walk, a week ago, two weeks ago, the week before, the day before, previous week, days ago, that day, on the last walk, at the last count, previously, last tuesday, last monday, last friday, last thursday, last wednesday, last visit, in the last round, at planting, at transplanting',
    { reach: 3, says: 'other-day' } as Guard,
  ),
]);

/** Work of the harvest and rain are told of afterwards: `finished it yesterday, eighteen percent moisture`. */
const TOLD_AFTERWARDS: ReadonlySet<Quantity> = new Set<Quantity>([
  'grain_yield',
  'grain_moisture_pct',
  'rainfall',
]);
const WEEKDAY =
  /^(mon|tue|tues|wed|weds|thu|thur|thurs|fri|sat|sun|monday|tuesday|wednesday|thursday|friday|saturday|sunday)$/;

/** Why the figure is left out, or null. `last` is the last token of its unit. */
export function ruledOut(
  around: Surroundings,
  number: NumberFound,
  last: number,
  quantity: Quantity,
): Guard['says'] | 'denied' | null {
  if (/^(not|than)$/.test(wordOf(around, number.first - 1)) && wordOf(around, number.first - 2) !== 'if')
    return 'denied';
  const guard = guardBefore(around, number.first) ?? guardAfter(around, last);
  if (guard === 'plan') return guard;
  if (isBound(around, number, quantity) || isAnother(around, number)) return 'denied';
  if (
    number.first === number.last &&
    wordOf(around, number.first) === 'one' &&
    PRONOUN_VERBS.test(wordOf(around, number.last + 1))
  )
    return 'denied';
  if (quantity === 'rainfall' && isOfAnotherDay(around, number, last)) return 'other-day';
  if (guard === 'other-day' || saidOfWeekday(around, number, last))
    return TOLD_AFTERWARDS.has(quantity) && !/^last$/.test(wordOf(around, number.first - 2))
      ? null
      : 'other-day';
  return null;
}

/** `under 5 %`, `taller than B2, by 4 cm`: a bound or a difference, no reading. */
function isBound(around: Surroundings, number: NumberFound, quantity: Quantity): boolean {
  const before = wordOf(around, number.first - 1);
  if (quantity.endsWith('_pct')) return /^(under|below)$/.test(before);
  if (before !== 'by') return false;
  for (let index = number.first - 2; index >= Math.max(0, number.first - 9); index--)
    if (wordOf(around, index) === 'than') return true;
  return false;
}

/** `the first one`, `that one`, `no one`. */
const isAnother = (around: Surroundings, number: NumberFound): boolean =>
  number.first === number.last &&
  wordOf(around, number.first) === 'one' &&
  /^(first|second|third|last|other|this|that|which|no|next|good|bad|big|small)$/.test(
    wordOf(around, number.first - 1),
  );

/** `one sees no more`: nobody is counted. */
const PRONOUN_VERBS =
  /^(sees|see|can|says|must|would|could|should|cannot|does|has|finds|might|hopes|expects)$/;

/** `the rain of Tuesday, 41 mm that day`: a weekday in the figure's own clause. */
function isOfAnotherDay(around: Surroundings, number: NumberFound, last: number): boolean {
  for (let index = Math.max(0, number.first - 6); index <= last + 3; index++)
    if (
      around.tokens[index]?.sentence === around.tokens[number.first]?.sentence &&
      WEEKDAY.test(wordOf(around, index)) &&
      /^(on|of|from|last)$/.test(wordOf(around, index - 1))
    )
      return true;
  return false;
}

function guardBefore(around: Surroundings, first: number): Guard['says'] | null {
  let ended = false;
  for (let index = first - 1; index >= Math.max(0, first - 12) && !ended; index--) {
    if (
      around.clause[index] !== around.clause[first] ||
      around.tokens[index]?.sentence !== around.tokens[first]?.sentence
    )
      return null;
    if (/^(today|now|currently)$/.test(wordOf(around, index))) return null;
    const guard = longestAt(BEFORE, around.tokens, index);
    if (
      guard &&
      guard.last < first &&
      first - guard.last <= guard.value.reach &&
      !(guard.value.says === 'other-day' && plotsBetween(around, index, first))
    )
      return guard.value.says;
    ended = around.tokens[index]?.text === ',';
  }
  return null;
}

/** In a note without marks, a new plot begins a new report. */
function plotsBetween(around: Surroundings, from: number, to: number): boolean {
  for (let index = from + 1; index < to; index++) if (around.isPlot(index)) return true;
  return false;
}

function guardAfter(around: Surroundings, last: number): Guard['says'] | null {
  let skipped = 0;
  for (let index = last + 1; index <= last + 5 + skipped; index++) {
    const token = around.tokens[index];
    if (!token || token.sentence !== around.tokens[last]?.sentence || around.isPlot(index)) return null;
    if (/^[,;:)]$/.test(token.text)) return null;
    if (skipped < 8 && (token.text === '/' || token.kind === 'number')) skipped++;
    if (/^(below|under|above|over|past)$/.test(token.lower)) return null;
    if (/^(today|now)$/.test(token.lower)) return null;
    const guard = longestAt(AFTER, around.tokens, index);
    if (guard && index - last - skipped <= guard.value.reach) return guard.value.says;
  }
  return null;
}

/** `BPH was 15 a hill Tue, now 22`: a weekday behind the figure in a clause that says `was`. */
function saidOfWeekday(around: Surroundings, number: NumberFound, last: number): boolean {
  if (
    !WEEKDAY.test(wordOf(around, last + 1)) &&
    !(wordOf(around, last + 1) === 'on' && WEEKDAY.test(wordOf(around, last + 2)))
  )
    return false;
  for (
    let index = number.first - 1;
    index >= Math.max(0, number.first - 8) && around.clause[index] === around.clause[number.first];
    index--
  ) {
    if (/^(was|were|had|counted)$/.test(wordOf(around, index))) return true;
  }
  return false;
}
