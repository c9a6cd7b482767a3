import { mondayOf, weekdayOf } from './days.ts';
import { monthDateAfter } from './month-point.ts';
import { type Point, pastPartOfDay, type ReadPoint, type TimeContext, wordAt } from './point.ts';
import { type Days, weekdayBack, weekdayFrom } from './reckon.ts';

const NAMES = [
  'monday mon mondy lundi',
  'tuesday tue tues tus tuesdy',
  'wednesday wed weds wednesdy wensday wednsday',
  'thursday thu thur thurs thrs thursdy',
  'friday fri frid fridy',
  'saturday sat satday saterday',
  'sunday sun sundy',
];
const WEEKDAYS: ReadonlyMap<string, number> = new Map(
  NAMES.flatMap((names, weekday) => names.split(' ').map((name): [string, number] => [name, weekday])),
);

const THIS = new Set(['on', 'this', 'the', 'for', 'come', 'dis']);
const COMING = new Set(['coming', 'comin', 'nearest', 'upcoming']);
const NEXT = new Set(['next', 'nxt', 'following']);
const LAST = new Set(['last', 'past', 'previous', 'lst']);
/** Short forms that are words of their own: the sun, sat down. */
const DOUBTFUL = new Set(['sun', 'sat', 'wed']);
/** `the storm of Sunday`, `wider than Tuesday`, `every Monday` date no work. */
const NO_DATE_BEFORE = new Set(['of', 'than', 'every', 'each', 'like']);

/** `Friday`, `on Fri`, `this coming Monday`, `next Tuesday`, `last Tuesday`, `Tuesday week`, `Tuesday next week`, `Tuesday 2nd of September`. */
export const weekdayPoint: ReadPoint = (context, at) => {
  const lead = readLead(context, at);
  const weekday = WEEKDAYS.get(wordAt(context, lead.name));
  if (weekday === undefined || isIdleBefore(context, at)) return null;
  if (DOUBTFUL.has(wordAt(context, lead.name)) && !isDayHere(context, lead)) return null;
  const end = pastPartOfDay(context, lead.name);
  const dated = monthDateAfter(context, end);
  if (dated) return { ...dated, rule: 'weekday-and-date' };
  return withTail(context, lead, weekday, end);
};

function isIdleBefore(context: TimeContext, at: number): boolean {
  const before = wordAt(context, at - 1);
  return (
    NO_DATE_BEFORE.has(before) &&
    !(before === 'than' && /^(later|earlier|sooner)$/.test(wordAt(context, at - 2)))
  );
}

interface Lead {
  name: number;
  kind: 'plain' | 'coming' | 'next' | 'last';
  worded: boolean;
}

function readLead(context: TimeContext, at: number): Lead {
  let kind: Lead['kind'] = 'plain';
  let name = at;
  for (; name < at + 4; name++) {
    const word = wordAt(context, name);
    if (NEXT.has(word)) kind = 'next';
    else if (LAST.has(word)) kind = 'last';
    else if (COMING.has(word)) kind = 'coming';
    else if (
      !THIS.has(word) &&
      !(word === 'first' && wordAt(context, name + 1) === 'thing') &&
      word !== 'thing' &&
      word !== 'early' &&
      word !== 'late'
    )
      break;
  }
  return { name, kind, worded: name > at };
}

const DAY_BEFORE = new Set(
  'on by till til until before b4 from this next last since come for or to and nxt early coming latest'.split(
    ' ',
  ),
);
const DAY_AFTER = new Set(
  'last morning am pm night evening eve afternoon latest or at and to w with if when once unless then'.split(
    ' ',
  ),
);
const NOT_A_DAY_BEFORE = new Set(
  'the full in has have had it was i he she water they we we get getting bright hot direct'.split(' '),
);

/** `sat`, `sun` and `wed` are days behind a preposition, before a part of the day, or where the clause ends. */
function isDayHere(context: TimeContext, lead: Lead): boolean {
  const before = wordAt(context, lead.name - 1);
  if (DAY_BEFORE.has(before)) return true;
  if (NOT_A_DAY_BEFORE.has(before)) return false;
  const next = context.tokens[lead.name + 1];
  return next?.kind !== 'word' || DAY_AFTER.has(next.lower);
}

function withTail(context: TimeContext, lead: Lead, weekday: number, end: number): Point {
  const { day } = context;
  const one = wordAt(context, end + 1);
  const two = wordAt(context, end + 2);
  const rule = lead.kind === 'plain' ? 'weekday' : `${lead.kind}-weekday`;
  const isWeek = /^(week|wk)$/.test(two);
  const monday = mondayOf(day);
  if (NEXT.has(one) && isWeek)
    return fixed(end + 2, 'weekday-next-week', [monday + 7 + weekday, monday + 7 + weekday], null);
  if (LAST.has(one) && isWeek)
    return fixed(end + 2, 'weekday-last-week', null, [monday - 7 + weekday, monday - 7 + weekday]);
  if (one === 'this' && isWeek)
    return fixed(
      end + 2,
      'weekday-this-week',
      [monday + weekday, monday + weekday],
      [monday + weekday, monday + weekday],
    );
  if (/^(week|wk)$/.test(one))
    return fixed(end + 1, 'weekday-week', shift(weekdayFrom(day, weekday), 7), null);
  if (one === 'fortnight')
    return fixed(end + 1, 'weekday-fortnight', shift(weekdayFrom(day, weekday), 14), null);
  if (
    NEXT.has(one) &&
    !context.tokens[end + 2]?.lower.match(/^(walk|round|visit|time|season|trip|month|year)$/) &&
    lead.kind === 'plain'
  )
    return fixed(end + 1, 'next-weekday', shift(weekdayFrom(day + 1, weekday), 0), null);
  if (COMING.has(one)) return fixed(end + 1, 'coming-weekday', shift(weekdayFrom(day, weekday), 0), null);
  if (one === 'last' && !/^(week|wk|year|month|season)$/.test(two))
    return fixed(end + 1, 'last-weekday', null, shift(weekdayBack(day - 1, weekday), 0));
  if (one === 'just' && /^(gone|past)$/.test(two))
    return fixed(end + 2, 'last-weekday', null, shift(weekdayBack(day - 1, weekday), 0));
  if (one === 'gone' && two === '')
    return fixed(end + 1, 'last-weekday', null, shift(weekdayBack(day - 1, weekday), 0));
  if (lead.kind === 'last') return fixed(end, rule, null, shift(weekdayBack(day - 1, weekday), 0));
  if (lead.kind === 'next') return fixed(end, rule, shift(weekdayFrom(day + 1, weekday), 0), null);
  return fixed(
    end,
    rule,
    shift(weekdayFrom(day, weekday), 0),
    lead.kind === 'coming' ? null : shift(weekdayBack(day, weekday), 0),
  );
}

const shift = (day: number, by: number): Days => [day + by, day + by];
const fixed = (last: number, rule: string, toCome: Days | null, done: Days | null): Point => ({
  last,
  rule,
  toCome,
  done,
});

/** `next week Tuesday`, `nxt wk on Friday`, `last week Monday`. */
export const weekThenWeekday: ReadPoint = (context, at) => {
  const which = wordAt(context, at);
  if (!(NEXT.has(which) || LAST.has(which)) || !/^(week|wk)$/.test(wordAt(context, at + 1))) return null;
  const name = wordAt(context, at + 2) === 'on' || wordAt(context, at + 2) === ',' ? at + 3 : at + 2;
  const weekday = WEEKDAYS.get(wordAt(context, name));
  if (weekday === undefined) return null;
  const next = NEXT.has(which);
  const that = mondayOf(context.day) + (next ? 7 : -7) + weekday;
  return fixed(
    pastPartOfDay(context, name),
    next ? 'weekday-next-week' : 'weekday-last-week',
    next ? [that, that] : null,
    next ? null : [that, that],
  );
};

export const isWeekdayName = (word: string): boolean => WEEKDAYS.has(word);
export const sameWeekday = (day: number, word: string): boolean => WEEKDAYS.get(word) === weekdayOf(day);
