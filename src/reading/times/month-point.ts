import { civilOf, dayOf, daysInMonth, monthEnd } from './days.ts';
import { type Point, type ReadPoint, type TimeContext, wordAt } from './point.ts';
import { type Days, thirdOfMonth } from './reckon.ts';

const NAMES = [
  'january jan',
  'february feb febr',
  'march mar',
  'april apr',
  'may',
  'june jun',
  'july jul',
  'august aug',
  'september sept sep',
  'october oct',
  'november nov',
  'december dec',
];
const MONTHS: ReadonlyMap<string, number> = new Map(
  NAMES.flatMap((names, index) => names.split(' ').map((name): [string, number] => [name, index + 1])),
);

/** Days of the month a date may name; where it stands in words or in figures. */
interface DayOfMonth {
  value: number;
  last: number;
  /** Said as a rank: `14th`, `fourteenth`. */
  ranked: boolean;
}

function readDayOfMonth(context: TimeContext, at: number): DayOfMonth | null {
  const number = context.numberAt.get(at);
  if (!number || !Number.isInteger(number.value) || number.value < 1 || number.value > 31) return null;
  if (number.form !== 'cardinal' && number.form !== 'ordinal') return null;
  return { value: number.value, last: number.last, ranked: number.form === 'ordinal' };
}

const MODAL_NEXT = new Set(
  'be have need not come go get want still also well lodge spread take help'.split(' '),
);

function monthAt(context: TimeContext, at: number): number | null {
  const word = wordAt(context, at);
  const month = MONTHS.get(word);
  if (!month || (word === 'may' && MODAL_NEXT.has(wordAt(context, at + 1)))) return null;
  return month;
}

/** `14 March`, `14th of March`, `March 14`, `the 14th`, `14/3`, `2031-03-14`; tries each in turn. */
export const datePoint: ReadPoint = (context, at) => {
  const start = /^(on|the|d|of)$/.test(wordAt(context, at))
    ? wordAt(context, at) === 'on' && wordAt(context, at + 1) === 'the'
      ? at + 2
      : at + 1
    : at;
  return (
    isoDate(context, start) ??
    slashDate(context, start, start > at && wordAt(context, at) === 'on') ??
    dayThenMonth(context, start) ??
    monthThenDay(context, start) ??
    dayAlone(context, start, start > at ? wordAt(context, at) !== 'of' : endsClause(context, start))
  );
};

/** A bare `20th` is a date only where its clause ends. */
function endsClause(context: TimeContext, at: number): boolean {
  const number = context.numberAt.get(at);
  const next = number && context.tokens[number.last + 1];
  return number !== undefined && /^\d/.test(wordAt(context, at)) && (!next || next.kind === 'mark');
}

/** The date that goes on from a weekday: `Tuesday 2nd of September`, `Friday the 14th`, `Fri 14/3`. */
export function monthDateAfter(context: TimeContext, end: number): Point | null {
  const comma = wordAt(context, end + 1) === ',' ? end + 2 : end + 1;
  const start = wordAt(context, comma) === 'the' ? comma + 1 : comma;
  const dated =
    isoDate(context, start) ??
    slashDate(context, start, true) ??
    dayThenMonth(context, start) ??
    monthThenDay(context, start);
  if (dated) return dated;
  const alone = readDayOfMonth(context, start);
  return alone?.ranked ? dayAlone(context, start, true) : null;
}

function dayThenMonth(context: TimeContext, at: number): Point | null {
  const dayOfMonth = readDayOfMonth(context, at);
  if (!dayOfMonth) return null;
  const name = /^(of|-)$/.test(wordAt(context, dayOfMonth.last + 1))
    ? dayOfMonth.last + 2
    : dayOfMonth.last + 1;
  const shifted = monthByWords(context, name, dayOfMonth);
  if (shifted) return shifted;
  const month = monthAt(context, name);
  return month ? inMonth(context, month, dayOfMonth.value, name) : null;
}

/** `the 3rd of next month`, `14th of this month`. */
function monthByWords(context: TimeContext, at: number, dayOfMonth: DayOfMonth): Point | null {
  if (wordAt(context, at + 1) !== 'month') return null;
  const word = wordAt(context, at);
  const shift = word === 'next' ? 1 : word === 'this' ? 0 : word === 'last' ? -1 : null;
  if (shift === null) return null;
  const { year, month } = civilOf(context.day);
  const [toYear, toMonth] =
    month + shift > 12 ? [year + 1, 1] : month + shift < 1 ? [year - 1, 12] : [year, month + shift];
  if (dayOfMonth.value > daysInMonth(toYear, toMonth)) return null;
  const that = dayOf(toYear, toMonth, dayOfMonth.value);
  return { last: at + 1, rule: 'date', toCome: [that, that], done: [that, that] };
}

function monthThenDay(context: TimeContext, at: number): Point | null {
  const month = monthAt(context, at);
  if (!month) return null;
  const start = wordAt(context, at + 1) === 'the' ? at + 2 : at + 1;
  const dayOfMonth = readDayOfMonth(context, start);
  if (!dayOfMonth) return null;
  const unit = wordAt(context, dayOfMonth.last + 1);
  return /^(cm|kg|bags?|hills?|mm|am|pm|percent|%)$/.test(unit)
    ? null
    : inMonth(context, month, dayOfMonth.value, dayOfMonth.last);
}

/** A day of a named month, with its year where one follows. */
function inMonth(context: TimeContext, month: number, value: number, last: number): Point | null {
  const comma = wordAt(context, last + 1) === ',' ? last + 2 : last + 1;
  const year = /^(19|20)\d\d$/.test(wordAt(context, comma)) ? Number(wordAt(context, comma)) : null;
  if (year) return value <= daysInMonth(year, month) ? exactly(dayOf(year, month, value), comma) : null;
  const now = civilOf(context.day).year;
  const candidates = [now - 1, now, now + 1, now + 4]
    .filter((each) => value <= daysInMonth(each, month))
    .map((each) => dayOf(each, month, value));
  const later = candidates.filter((day) => day >= context.day).sort((a, b) => a - b)[0];
  const earlier = candidates.filter((day) => day <= context.day).sort((a, b) => b - a)[0];
  return {
    last,
    rule: 'date',
    toCome: later === undefined ? null : [later, later],
    done: earlier === undefined ? null : [earlier, earlier],
  };
}

const exactly = (day: number, last: number): Point => ({
  last,
  rule: 'date',
  toCome: [day, day],
  done: [day, day],
});

/** A rank before one of these counts things: `the third leaf`, `the 2nd sheath`, `the first row`. */
const RANKED_THINGS = new Set(
  (
    'leaf leaves sheath node row rows plot bund levee spray pass round walk time visit week day year one hill kanal block acre crop flush shot dose split weeding irrigation topdressing top check bay ' +
    'tiller panicle rep replication pull cut sampling half third quarter terrace strip lot note season gate board irrigation lane line drain nursery'
  ).split(' '),
);

/** `the 14th`, `on the fourteenth`, `on the 3rd`. Words for small ranks (`the third`) want a month beside them. */
function dayAlone(context: TimeContext, at: number, marked: boolean): Point | null {
  const dayOfMonth = readDayOfMonth(context, at);
  if (!marked || !dayOfMonth?.ranked) return null;
  const next = wordAt(context, dayOfMonth.last + 1);
  const inWords = !/^\d/.test(wordAt(context, at));
  if (
    RANKED_THINGS.has(next) ||
    (inWords && dayOfMonth.value < 10 && context.tokens[dayOfMonth.last + 1]?.kind === 'word')
  )
    return null;
  if (inWords && dayOfMonth.value < 4) return null;
  return {
    last: dayOfMonth.last,
    rule: 'day-of-month',
    toCome: nearest(context.day, dayOfMonth.value, 1),
    done: nearest(context.day, dayOfMonth.value, -1),
  };
}

/** The first such day on or after, or the last on or before; months too short for it are passed over. */
function nearest(day: number, value: number, direction: 1 | -1): Days {
  let { year, month } = civilOf(day);
  for (;;) {
    if (value <= daysInMonth(year, month)) {
      const that = dayOf(year, month, value);
      if (direction === 1 ? that >= day : that <= day) return [that, that];
    }
    month += direction;
    if (month === 0 || month === 13) {
      year += direction;
      month = direction === 1 ? 1 : 12;
    }
  }
}

const touching = (context: TimeContext, at: number): boolean =>
  context.tokens[at]?.start === context.tokens[at - 1]?.end;

function isoDate(context: TimeContext, at: number): Point | null {
  const words = [0, 1, 2, 3, 4].map((step) => wordAt(context, at + step));
  if (!/^\d{4}$/.test(words[0] ?? '') || words[1] !== '-' || words[3] !== '-') return null;
  const [year, month, value] = [Number(words[0]), Number(words[2]), Number(words[4])];
  const exists = month >= 1 && month <= 12 && value >= 1 && value <= daysInMonth(year, month);
  return exists ? exactly(dayOf(year, month, value), at + 4) : null;
}

const DATE_CUES = new Set(
  'on by before b4 till til until from since after due for starting of dated was done'.split(' '),
);

/** `14/3` is 14 March; `3/14` too, as no month has that number; else the note's other dates decide, else day before month. */
function slashDate(context: TimeContext, at: number, marked: boolean): Point | null {
  const words = [0, 1, 2].map((step) => wordAt(context, at + step));
  if (words[1] !== '/' || !/^\d{1,2}$/.test(words[0] ?? '') || !/^\d{1,2}$/.test(words[2] ?? '')) return null;
  if (!touching(context, at + 1) || !touching(context, at + 2) || wordAt(context, at - 1) === '/')
    return null;
  const [one, two] = [Number(words[0]), Number(words[2])];
  const split = monthOf(one, two, context.monthFirst);
  if (!split) return null;
  if (wordAt(context, at + 3) === '/') {
    const year = yearOf(wordAt(context, at + 4), civilOf(context.day).year);
    return year && split.value <= daysInMonth(year, split.month)
      ? exactly(dayOf(year, split.month, split.value), at + 4)
      : null;
  }
  const cued = marked || DATE_CUES.has(wordAt(context, at - 1));
  const next = context.tokens[at + 3];
  const bare = (one > 12 || two > 12) && (!next || next.kind === 'mark') && next?.text !== '%';
  return cued || bare ? inMonth(context, split.month, split.value, at + 2) : null;
}

function monthOf(one: number, two: number, monthFirst: boolean): { month: number; value: number } | null {
  const dayFirst = { month: two, value: one };
  const american = { month: one, value: two };
  const fits = ({ month, value }: { month: number; value: number }): boolean =>
    month >= 1 && month <= 12 && value >= 1 && value <= daysInMonth(2000, month);
  if (fits(dayFirst) && fits(american)) return monthFirst ? american : dayFirst;
  return fits(dayFirst) ? dayFirst : fits(american) ? american : null;
}

function yearOf(word: string, now: number): number | null {
  if (/^20\d\d$/.test(word)) return Number(word);
  return /^\d\d$/.test(word) && Math.abs(2000 + Number(word) - now) <= 2 ? 2000 + Number(word) : null;
}

/** True where some date of the note can only be month first (`3/14`) and none only day first. */
export function isMonthFirst(context: Omit<TimeContext, 'monthFirst'>): boolean {
  const { tokens } = context;
  let american = false;
  for (let at = 0; at + 2 < tokens.length; at++) {
    if (
      tokens[at + 1]?.text !== '/' ||
      tokens[at + 1]?.start !== tokens[at]?.end ||
      tokens[at + 2]?.start !== tokens[at + 1]?.end
    )
      continue;
    const [one, two] = [Number(tokens[at]?.lower), Number(tokens[at + 2]?.lower)];
    if (one > 12 && one <= 31 && two >= 1 && two <= 12) return false;
    if (two > 12 && two <= 31 && one >= 1 && one <= 12 && tokens[at + 3]?.text !== '/') american = true;
  }
  return american;
}

const PART_WORDS: ReadonlyMap<string, 'early' | 'mid' | 'late'> = new Map([
  ['early', 'early'],
  ['beginning', 'early'],
  ['start', 'early'],
  ['mid', 'mid'],
  ['middle', 'mid'],
  ['late', 'late'],
  ['end', 'late'],
]);

/** `in March`, `early March`, `mid-March`, `end of March`: the month or a third of it. */
export const monthPoint: ReadPoint = (context, at) => {
  const word = wordAt(context, at);
  const part = PART_WORDS.get(word) ?? null;
  if (!part && word !== 'in' && word !== 'during' && word !== 'next') return null;
  let name = at + 1;
  while (/^(of|-|the)$/.test(wordAt(context, name)) && name < at + 4) name++;
  const month = monthAt(context, name);
  if (!month || context.numberAt.has(name + 1)) return null;
  const now = civilOf(context.day);
  const start = (year: number): number => dayOf(year, month, 1);
  const span = (year: number): Days =>
    part ? thirdOfMonth(start(year), part) : [start(year), monthEnd(start(year))];
  const coming = span(span(now.year)[1] >= context.day ? now.year : now.year + 1);
  const gone = span(span(now.year)[0] <= context.day ? now.year : now.year - 1);
  return { last: name, rule: 'month', toCome: coming, done: gone };
};
