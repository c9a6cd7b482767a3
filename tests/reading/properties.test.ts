/** What must hold for any note whatever. */

import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readNote } from '../../src/reading/read.ts';
import type { NoteToRead } from '../../src/reading/record.ts';
import { annotated } from './scores.ts';

const plots = ['T1R1', 'B2', '12', 'North-1'].map((code) => ({
  code,
  names: code === 'B2' ? ['the late strip'] : [],
}));
const note = (text: string, channel: NoteToRead['channel'] = 'typed'): NoteToRead => ({
  id: 'any',
  observedAt: '2031-03-14T07:00',
  plots,
  plot: null,
  channel,
  text,
});
const TRADE =
  'rats weeds B2 no maybe urea 3 three in the corner spray tomorrow T1R1 heading , . ? not done yesterday leaning gap by Friday if it passes ten hills of 20 the bund leaks both all plots next season'.split(
    ' ',
  );
const tradeText = fc.array(fc.constantFrom(...TRADE), { maxLength: 40 }).map((words) => words.join(' '));
const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc.string({ unit: 'grapheme', maxLength: 120 }),
  tradeText,
  fc.constantFrom(
    '\u0000\u0007\u001b',
    'مرحبا B2 فئران',
    '🐀🐀 in B2 🌾',
    '\u202Erats\u202C',
    '\ud800 weeds',
    'NaN',
    '….…',
    '😀'.repeat(50),
  ),
);

describe('any note', () => {
  test('is read without an error, and its evidence is its own words', () => {
    fc.assert(
      fc.property(anyText, fc.constantFrom('typed' as const, 'dictated' as const), (text, channel) => {
        const { entries, record } = readNote(note(text, channel));
        for (const { evidence, trace } of entries) {
          expect(evidence.length).toBeGreaterThan(0);
          for (const { start, end } of evidence) {
            expect(start).toBeGreaterThanOrEqual(0);
            expect(end).toBeGreaterThan(start);
            expect(end).toBeLessThanOrEqual(text.length);
          }
          expect(text).toContain(trace.words);
        }
        expect(Object.values(record).flat()).toHaveLength(entries.length);
      }),
      { numRuns: 400 },
    );
  });

  test('is read the same twice', () => {
    fc.assert(
      fc.property(tradeText, (text) => {
        expect(readNote(note(text))).toEqual(readNote(note(text)));
      }),
    );
  });

  test('does not depend on spacing', () => {
    fc.assert(
      fc.property(tradeText, (text) => {
        expect(readNote(note(text.replaceAll(' ', '  '))).record).toEqual(
          withSpaces(readNote(note(text)).record),
        );
      }),
      { numRuns: 60 },
    );
  });
});

/** Words quoted from the note keep its spacing; compare them with the spaces that the other note has. */
const withSpaces = (record: object): unknown =>
  JSON.parse(
    JSON.stringify(record, (key, value) =>
      typeof value === 'string' && ['where', 'cause', 'who', 'text', 'of'].includes(key)
        ? value.replaceAll(' ', '  ')
        : value,
    ),
  );

describe('the same words said otherwise', () => {
  const same: [string, string][] = [
    ['B2 three of 20 hills cut by rats', 'B2 3 of 20 hills cut by rats'],
    ['B2 water three cm', 'B2 water 3 cm'],
    ['B2: NO WEEDS', 'b2: no weeds'],
    ['Plot B-2 rats in the corner', 'plot b2 rats in the corner'],
  ];
  test.each(same)('%s = %s', (a, b) => expect(readNote(note(a)).record).toEqual(readNote(note(b)).record));
});

describe('a negation', () => {
  const problems = [
    'rats',
    'weeds',
    'sheath blight',
    'stem borer',
    'lodging',
    'gaps',
    'snails',
    'birds',
    'cracks',
    'off-types',
  ];
  test.each(problems)('`no %s` changes the status alone', (problem) => {
    const seen = readNote(note(`B2 ${problem}`)).record.findings;
    const none = readNote(note(`B2 no ${problem}`)).record.findings;
    expect(none).toEqual(seen.map((finding) => ({ ...finding, status: 'absent' })));
  });
});

describe('annotated notes', () => {
  const off = annotated(fileURLToPath(new URL('./notes/tuned.jsonl', import.meta.url))).filter(({ record }) =>
    Object.values(record).every((list) => (list ?? []).length === 0),
  );
  test('most notes about other things yield nothing', () => {
    const wrong = off.filter((one) => readNote(one.note).entries.length > 0);
    expect(wrong.length / off.length).toBeLessThan(0.25);
  });
});
