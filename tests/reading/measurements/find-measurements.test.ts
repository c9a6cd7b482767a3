import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findMeasurements } from '../../../src/reading/measurements/find-measurements.ts';
import { findNumbers } from '../../../src/reading/numbers/find-numbers.ts';
import { unitAt } from '../../../src/reading/numbers/units.ts';
import { tokenise } from '../../../src/reading/text.ts';
import { rowsOf } from '../numbers/rows-of.ts';

function measured(words: string): string {
  const tokens = tokenise(words);
  const isPlot = (index: number): boolean => /^b[12]$/.test(tokens[index]?.lower ?? '');
  const found = findMeasurements(tokens, findNumbers(tokens), isPlot);
  return found.map(({ quantity, value }) => `${quantity} ${Number(value.toPrecision(4))}`).join('; ') || '-';
}

const ROWS = rowsOf('measurements.md');

describe('figures of a note', () => {
  test.each(ROWS)('$at $cells', ({ at, cells: [words = '', reads] }) => {
    expect(measured(words), at).toBe(reads);
  });

  test('case and spacing do not matter', () => {
    for (const { at, cells } of ROWS) {
      if (/ (F|in|-12)\b/.test(cells[0] ?? '')) continue;
      expect(measured((cells[0] ?? '').replaceAll(' ', '  ')), at).toBe(cells[1]);
      expect(measured((cells[0] ?? '').toLowerCase()), at).toBe(cells[1]);
    }
  });

  test('a plot right before its figure is told', () => {
    const tokens = tokenise('LCC: B1 4, B2 3.5');
    const found = findMeasurements(tokens, findNumbers(tokens), (index) =>
      /^b\d$/.test(tokens[index]?.lower ?? ''),
    );
    expect(found.map(({ plotAt }) => tokens[plotAt ?? -1]?.text)).toEqual(['B1', 'B2']);
  });
});

describe('units', () => {
  // NIST Handbook 44 (2024), appendix C: general tables of units of measurement.
  test.each([
    ['inch', 2.54],
    ['foot', 30.48],
    ['yard', 91.44],
    ['acre', 4046.8564224],
    ['square foot', 0.09290304],
    ['pound', 0.45359237],
    ['hundredweight', 45.359237],
    ['gallon', 3.785411784],
    ['quart', 0.946352946],
    ['pint', 0.473176473],
  ])('one %s', (words, base) => {
    expect(unitAt(tokenise(words), 0)?.value.toBase).toBeCloseTo(base, 9);
  });
});

describe('what always holds', () => {
  const words = fc.constantFrom(
    '5',
    'two',
    'cm',
    'of',
    'water',
    'B1',
    ',',
    '.',
    'hills',
    'in',
    '20',
    '%',
    'by',
    'per',
    'hill',
    'rats',
    'cut',
    'tube',
    'below',
    'no',
    'wait',
    'x',
    '/',
    'm2',
    'was',
    'last',
    'week',
    'an',
    'inch',
    'and',
    'a',
    'half',
    '-',
    '12',
    'degrees',
    'lb',
    'acre',
  );

  test('never throws; figures stay finite and in order', () => {
    fc.assert(
      fc.property(fc.array(words, { maxLength: 50 }), (parts) => {
        const tokens = tokenise(parts.join(' '));
        let before = -1;
        for (const { first, last, value } of findMeasurements(
          tokens,
          findNumbers(tokens),
          (index) => tokens[index]?.lower === 'b1',
        )) {
          expect(Number.isFinite(value)).toBe(true);
          expect(first).toBeGreaterThanOrEqual(before);
          expect(last).toBeLessThan(tokens.length);
          before = first;
        }
      }),
    );
  });

  test('any text at all', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        const tokens = tokenise(text);
        expect(Array.isArray(findMeasurements(tokens, findNumbers(tokens)))).toBe(true);
      }),
    );
  });
});
