/** Words that are a time by themselves. The lists are the row; the reckoning beside them says which days they mean. */
import {
  beforeWeekend,
  lastOfMonth,
  monthSoFar,
  onDay,
  pastDays,
  type Reckon,
  restOfMonth,
  restOfWeek,
  restOfWeekPart,
  upTo,
  weekendGone,
  weekendToCome,
  weekPart,
  weekSoFar,
  wholeMonth,
} from './reckon.ts';

export interface DayPhrase {
  rule: string;
  phrases: readonly string[];
  toCome: Reckon | null;
  done: Reckon | null;
}

const row = (rule: string, toCome: Reckon | null, done: Reckon | null, phrases: string): DayPhrase => ({
  rule,
  toCome,
  done,
  phrases: phrases.split(',').map((phrase) => phrase.trim()),
});

export const DAY_PHRASES: readonly DayPhrase[] = [
  row(
    'today',
    onDay(0),
    onDay(0),
    `today, 2day, tday, todays date, tonight, tonite, 2 nite, 2nite, 2nyt, to night, to day, this day, this morning, this mornin, this forenoon, this noon, this afternoon, this arvo,
     this evening, this eve, this night, this pm, this am, later today, later on today, later this morning, later this afternoon, later this evening, today morning, today evening, today night, today noon,
     earlier today, before dark, before nightfall, before sunset, before sundown, by dark, by nightfall, by sundown, by sunset, before it gets dark, before knocking off, before knock off,
     after lunch, before lunch, by lunch, by lunchtime, by lunch time, at lunch, after work, by noon, before noon, after breakfast, after tea, by close of day, by close of play, by cob, by eod, eod,
     end of day, end of the day, by end of day, by the end of the day, before the end of the day, before the day is out, before we leave, before we go home, before i leave, in the afternoon,
     in the evening, at night, at noon, at midday, same day, the same day, this minute, in an hour, in a few hours, in the next hour, in half an hour, in a bit, in a minute`,
  ),
  row(
    'at-once',
    onDay(0),
    onDay(0),
    `straight away, straightaway, straight off, right away, rightaway, right now, immediately, immediatly, at once, asap, a s a p, as soon as possible, without delay, urgent, urgently, on the double,
     pronto, forthwith, this instant, from now on, from now, starting now, as of now, just now, quick as you can, right off, soonest, emergency, from today, now itself, now now, now only`,
  ),
  row('now', onDay(0), null, 'now, nw'),
  row(
    'tomorrow',
    onDay(1),
    onDay(1),
    `tomorrow, tomorow, tommorow, tommorrow, tomorrows, tmrw, tmrrw, tmw, tmr, tmrow, tomo, 2 moro, 2moro, 2 morrow, 2morrow, 2 mrw, 2mrw, 2 mro, to morrow, the morrow, morrow, first thing, first thing tomorrow, first light, at first light,
     in the morning, first thing in the morning, next day, the next day, the following day, by morning, at dawn, at daybreak, at sunrise, before breakfast, crack of dawn, the crack of dawn`,
  ),
  row(
    'day-after-tomorrow',
    onDay(2),
    null,
    `day after tomorrow, the day after tomorrow, day after tmrw, day after tmr, day after 2 moro, one day after tomorrow, overmorrow, after tomorrow, after tmrw, tomorrow next, next tomorrow, next to tomorrow, day after next`,
  ),
  row(
    'yesterday',
    null,
    onDay(-1),
    `yesterday, yest, yday, ystdy, yesterdays, yst, yesterday morning, last night, last nite, last nyt, last evening, yesterday night, yesternight, the day before, overnight last night, the previous day, previous day`,
  ),
  row(
    'day-before-yesterday',
    null,
    onDay(-2),
    `day before yesterday, the day before yesterday, day before yest, night before last, the night before last, before yesterday, two nights ago, other yesterday`,
  ),
  row(
    'day-or-two',
    (day) => [day + 1, day + 2],
    null,
    `in a day or two, a day or two, in one or two days, within a day or two, in 1 or 2 days, in a day or 2, day or two, the next day or two, in the next day or two, in 1 2 days, in one two days, in 1 - 2 days, next day or two, tomorrow or the day after, tomorrow or day after, tmrw or the day after, tomorrow or the next day`,
  ),
  row(
    'this-week',
    restOfWeek,
    weekSoFar,
    `this week, dis week, this wk, ths wk, in this week, within this week, during this week, in the week, later this week, later in the week, during the week, by the end of the week, by end of the week, by end of week,
     before the end of the week, before end of week, before the end of this week, by the end of this week, end of this week, before the week is out, before the week ends, eow, by eow, before eow, b4 eow, end of the week,
     end of week, at the end of the week, by this week, this week itself, in the course of the week, by weeks end, by week's end, before week's end, before the week's out, the rest of the week, rest of the week, the remainder of the week`,
  ),
  row(
    'late-this-week',
    restOfWeekPart(3, 6),
    null,
    `late this week, towards the end of the week, toward the end of the week, latter part of the week, second half of the week, latter part of this week`,
  ),
  row(
    'early-this-week',
    restOfWeekPart(0, 2),
    weekPart(0, 0, 2),
    `early this week, earlier this week, start of the week, the start of the week, beginning of the week, the beginning of the week, at the start of the week`,
  ),
  row(
    'midweek',
    restOfWeekPart(2, 2),
    weekPart(0, 2, 2),
    `midweek, mid week, mid-week, middle of the week, the middle of the week`,
  ),
  row(
    'before-weekend',
    beforeWeekend,
    null,
    `before the weekend, before the week end, before the week-end, before weekend, b4 the weekend, b4 wkend, b4 wknd, before the wknd, by the wknd, b4 the wkend, b4 weekend, before wkend, before the wkend, by the weekend, by weekend, by wkend, by the week end, ahead of the weekend, before this weekend, by this weekend, prior to the weekend`,
  ),
  row(
    'weekend',
    weekendToCome,
    weekendGone,
    `weekend, the weekend, wknd, the wknd, this wknd, wkend, the wkend, wkd, this weekend, this wkend, this coming weekend, the coming weekend, coming weekend, this week end, the week end, this week-end, the week-end, over the weekend, at the weekend, during the weekend, on the weekend, on weekend, at weekend, over weekend`,
  ),
  row(
    'next-weekend',
    weekPart(1, 5, 6),
    null,
    `next weekend, nxt wkend, next wkend, next week end, the following weekend, the weekend after, the weekend after next, weekend after this`,
  ),
  row(
    'last-weekend',
    null,
    weekendGone,
    `last weekend, last wkend, past weekend, the past weekend, this past weekend, last week end`,
  ),
  row(
    'next-week',
    weekPart(1, 0, 6),
    null,
    `next week, nxt wk, next wk, nxt week, nex week, the next week, the coming week, coming week, this coming week, the following week, following week, sometime next week, some time next week, during next week, in next week, the week ahead, within next week, in the coming week, the week to come, incoming week`,
  ),
  row(
    'early-next-week',
    weekPart(1, 0, 2),
    null,
    `early next week, early nxt wk, early next wk, beginning of next week, the beginning of next week, start of next week, the start of next week, first half of next week, the first half of next week, early in the next week, early part of next week, early the coming week, first thing next week, next week early, early in next week, first days of next week, next week beginning, begin next week, beginning next week`,
  ),
  row(
    'late-next-week',
    weekPart(1, 3, 6),
    null,
    `late next week, late nxt wk, end of next week, the end of next week, later next week, second half of next week, the second half of next week, latter part of next week, the latter half of next week, latter half of next week, late in the next week, next week end of, next week late, towards the end of next week, toward the end of next week, late next wk, end of nxt wk`,
  ),
  row(
    'mid-next-week',
    weekPart(1, 2, 2),
    null,
    `mid next week, mid-next week, middle of next week, the middle of next week, midweek next week, midway through next week`,
  ),
  row(
    'week-after-next',
    weekPart(2, 0, 6),
    null,
    `week after next, the week after next, next to next week, next next week, the week after, week after, in the week after next, the week following next`,
  ),
  row(
    'by-next-week',
    (day) => [day, (weekPart(1, 0, 6)(day) ?? [day, day])[1]],
    null,
    `by next week, by the end of next week, by end of next week, before the end of next week, by nxt wk, by late next week`,
  ),
  row(
    'before-next-week',
    (day) => [day, (weekPart(0, 0, 6)(day) ?? [day, day])[1]],
    null,
    `before next week, b4 next week, before nxt wk, before the new week`,
  ),
  row(
    'last-week',
    null,
    weekPart(-1, 0, 6),
    `last week, last wk, lst wk, the last week, past week, previous week, the previous week, the week before, during last week, the other week`,
  ),
  row(
    'week-before-last',
    null,
    weekPart(-2, 0, 6),
    `week before last, the week before last, last to last week`,
  ),
  row(
    'this-month',
    restOfMonth,
    monthSoFar,
    `this month, by the end of the month, by end of the month, by end of month, before the end of the month, before month end, by month end, before the month is out, by the end of this month, eom, by eom, within this month`,
  ),
  row(
    'month-end',
    lastOfMonth(0),
    null,
    `end of the month, the end of the month, at the end of the month, end of this month, at month end, month end, end of month, on the last of the month, the last day of the month, on the last day of the month`,
  ),
  row(
    'next-month',
    wholeMonth(1),
    null,
    `next month, nxt month, the coming month, coming month, the following month`,
  ),
  row('next-month-end', lastOfMonth(1), null, `end of next month, the end of next month`),
  row(
    'start-next-month',
    (day) => {
      const [from] = wholeMonth(1)(day) ?? [day];
      return [from, from + 9];
    },
    null,
    `early next month, beginning of next month, the beginning of next month, start of next month, the start of next month`,
  ),
  row('last-month', null, wholeMonth(-1), `last month, the previous month, previous month, past month`),
  row(
    'fortnight',
    onDay(14),
    null,
    `in a fortnight, a fortnight from now, in a fortnight's time, in two weeks time, fortnight from now, in a fortnights time, after a fortnight, a fortnight today, this day fortnight, today fortnight, in fortnight, after fortnight, fortnight hence`,
  ),
  row(
    'week-today',
    onDay(7),
    null,
    `today week, a week today, week from today, a week from today, this day week, this time next week, same day next week, same time next week, in a weeks time, in a week's time, a week from now, one week from now, in week's time`,
  ),
  row('week-tomorrow', onDay(8), null, `tomorrow week, a week tomorrow, a week from tomorrow`),
  row(
    'within-week',
    upTo(7),
    null,
    `within a week, within the week, inside a week, within one week, within 7 days, in the next week or so, inside of a week, in under a week`,
  ),
  row('within-fortnight', upTo(14), null, `within a fortnight, within the fortnight, inside a fortnight`),
  row(
    'past-week',
    null,
    pastDays(7),
    `in the last week, in the past week, over the past week, over the last week`,
  ),
  row(
    'done-today',
    null,
    onDay(0),
    `an hour ago, a few hours ago, half an hour ago, a minute ago, a few minutes ago, a little while ago, since morning, since this morning, all morning, all day`,
  ),
  row(
    'no-date',
    null,
    null,
    `the other day, other day, some day, someday, one of these days, one day, sometime, some time, the other night, these days, nowadays, every day, everyday, each day, daily, every week, each week, weekly, every morning, every evening, each morning, every other day, in the past, until now, till now, up to now, by now, for now, for the time being, now and then, every now and then, now and again, so far, before now, in a few days, a few days ago, in a while, a while ago, a while back, in due course, long ago, for the moment, in some days, next season, next year, nxt yr, next yr, last year, last yr, last season, this season, this year, day by day, day after day, any day, any day now, any time now, every time, last time, this time, all night, day and night, present day, in the next few days, a few days, next few days, the next few days, the coming days, in the coming days, in the days ahead, another day, until further notice`,
  ),
];
