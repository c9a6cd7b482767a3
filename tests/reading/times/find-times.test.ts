import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import type { When } from '../../../src/reading/record.ts';
import { type Token, tokenise } from '../../../src/reading/text.ts';
import {
  addMonths,
  dayFromIso,
  daysInMonth,
  isoOf,
  mondayOf,
  monthEnd,
  weekdayOf,
} from '../../../src/reading/times/days.ts';
import { type EventAt, findTimes, type TimedEvent } from '../../../src/reading/times/find-times.ts';
import { rowsOf } from '../numbers/rows-of.ts';

const EVENTS: ReadonlyMap<string, TimedEvent> = new Map([
  ['heads', 'heading'],
  ['heading', 'heading'],
  ['weeding', 'hand_weed'],
  ['urea', 'fertilise'],
  ['topdressing', 'fertilise'],
]);
const eventAt: EventAt = (tokens: Token[], index: number) => {
  const event = EVENTS.get(tokens[index]?.lower ?? '');
  return event ? { event, last: index } : null;
};

function told(when: When | null): string | null {
  if (!when) return null;
  if ('trigger' in when) return when.days ? `${when.trigger} + ${when.days}` : when.trigger;
  return when.from === when.to ? when.from : `${when.from} to ${when.to}`;
}

describe('words for a time', () => {
  test.each(rowsOf('times.md'))('$at $cells', ({ at, cells: [words = '', day = '', reads = ''] }) => {
    const isDone = reads.startsWith('done ');
    const found = findTimes(tokenise(words), `${day}T08:00`, eventAt).map((time) =>
      told(isDone ? time.done : time.toCome),
    );
    expect(found.filter(Boolean).join(', ') || '-', at).toBe(reads.replace('done ', ''));
  });

  test('spacing and case do not matter', () => {
    const words = rowsOf('times.md').map(({ cells }) => cells[0] ?? '');
    for (const line of words) {
      const plain = findTimes(tokenise(line), '2031-03-12T08:00', eventAt);
      const loud = findTimes(
        tokenise(line.toUpperCase().replaceAll(' ', '   ')),
        '2031-03-12T08:00',
        eventAt,
      );
      expect(loud, line).toEqual(plain);
    }
  });

  test('what is said first ends before what is said next begins, and no day lies before its first', () => {
    const words = fc.constantFrom(
      'by',
      'before',
      'friday',
      'or',
      'next',
      'week',
      'in',
      'two',
      'days',
      'after',
      'heading',
      'the',
      '14',
      'th',
      '/',
      '3',
      'if',
      'it',
      'passes',
      'ten',
      'until',
      'march',
      'late',
      'from',
      'now',
      '-',
      '.',
    );
    fc.assert(
      fc.property(fc.array(words, { maxLength: 30 }), fc.integer({ min: 0, max: 60000 }), (parts, day) => {
        const found = findTimes(tokenise(parts.join(' ')), `${isoOf(day)}T08:00`, eventAt);
        for (const [index, time] of found.entries()) {
          if (index > 0) expect(time.first).toBeGreaterThan(found[index - 1]?.last ?? -1);
          for (const when of [time.toCome, time.done])
            if (when && 'from' in when) expect(when.to >= when.from).toBe(true);
          if (time.toCome && 'to' in time.toCome && /^(by|within)/.test(time.rule))
            expect(time.toCome.from >= isoOf(day)).toBe(true);
        }
      }),
    );
  });

  test('a note without a day has no times', () => {
    expect(findTimes(tokenise('tomorrow'), 'whenever', eventAt)).toEqual([]);
  });
});

describe('civil days, held against a calendar library', () => {
  const days = fc.integer({ min: -700000, max: 700000 });
  const dateOf = (day: number) => Temporal.PlainDate.from('1970-01-01').add({ days: day });

  test('dates, weekdays, months', () => {
    fc.assert(
      fc.property(days, fc.integer({ min: -30, max: 30 }), (day, months) => {
        const date = dateOf(day);
        expect(isoOf(day)).toBe(date.toString());
        expect(dayFromIso(date.toString())).toBe(day);
        expect(weekdayOf(day)).toBe(date.dayOfWeek - 1);
        expect(weekdayOf(mondayOf(day))).toBe(0);
        expect(daysInMonth(date.year, date.month)).toBe(date.daysInMonth);
        expect(isoOf(addMonths(day, months))).toBe(date.add({ months }).toString());
        expect(isoOf(monthEnd(day))).toBe(date.with({ day: date.daysInMonth }).toString());
      }),
    );
  });

  test('days that do not exist are refused', () => {
    for (const text of ['2031-02-29', '2031-13-01', '2031-00-10', '31-01-01', ''])
      expect(dayFromIso(text)).toBeNull();
  });
});
