import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { calendarText } from '../../src/followups/calendar.ts';
import type { FollowUp } from '../../src/followups/item.ts';

const FRAME = {
  name: 'Kestrel Bottom',
  source: 'bundwalk.example',
  writtenAt: '2031-07-14T01:02:03Z',
  today: '2031-07-14',
};
const item = (change: Partial<FollowUp> = {}): FollowUp => ({
  id: 'note-1:actions:hand_weed:B1',
  alsoKnownAs: [],
  plot: 'B1',
  kind: 'hand_weed',
  state: 'open',
  openedAt: '2031-07-14T07:00',
  openedByHand: false,
  due: { from: '2031-07-16', to: '2031-07-18', forecast: false, because: 'the day that was said' },
  bucket: 'soon',
  timing: 'soon',
  hearsay: false,
  cautions: [],
  steps: [],
  ...change,
});

/** ical.js is a public parser of RFC 5545. */
const events = (text: string): ICAL.Event[] =>
  new ICAL.Component(ICAL.parse(text))
    .getAllSubcomponents('vevent')
    .map((component) => new ICAL.Event(component));

describe('the calendar of follow-ups', () => {
  test('holds an all-day event from the first day to the last', () => {
    const [event] = events(calendarText([item()], FRAME));
    expect(event!.startDate.toString()).toBe('2031-07-16');
    expect(event!.endDate.toString()).toBe('2031-07-19');
    expect(event!.startDate.isDate).toBe(true);
    expect(event!.summary).toMatch(/weed/i);
  });

  test('leaves out what is settled and what has no day', () => {
    const { due, ...undated } = item({ id: 'b' });
    expect(due).toBeDefined();
    expect(events(calendarText([item({ bucket: 'settled' }), undated], FRAME))).toEqual([]);
  });

  test('carries the cautions of work that can hurt', () => {
    const [event] = events(
      calendarText([item({ kind: 'spray', cautions: ['Label and local law rule; ask, first.'] })], FRAME),
    );
    expect(event!.description).toContain('Label and local law rule; ask, first.');
  });

  test('no line is longer than 75 octets, and any words come back as they were', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (words) => {
        const clean = words.replace(/\p{Cc}/gu, ' ').trim();
        const text = calendarText([item({ place: clean })], FRAME);
        for (const line of text.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
        expect(events(text)[0]!.summary).toContain(clean);
      }),
      { numRuns: 200 },
    );
  });
});
