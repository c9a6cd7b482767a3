import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findNumbers, type NumberFound } from '../../../src/reading/numbers/find-numbers.ts';
import { tokenise } from '../../../src/reading/text.ts';
import { rowsOf } from './rows-of.ts';

const told = ({ form, value, of }: NumberFound): string => {
  const figure = String(Number(value.toFixed(3)));
  return form === 'cardinal' ? figure : `${form} ${figure}${of === undefined ? '' : ` of ${of}`}`;
};

describe('numbers in digits and in words', () => {
  test.each(rowsOf('numbers.md'))('$at $cells', ({ at, cells: [words = '', reads] }) => {
    const found = findNumbers(tokenise(words)).map(told).join('; ') || '-';
    expect(found, at).toBe(reads);
  });
});

const SMALL =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

function inWords(value: number): string {
  if (value < 20) return SMALL[value] ?? '';
  if (value < 100) return `${TENS[Math.floor(value / 10)]}${value % 10 ? ` ${SMALL[value % 10]}` : ''}`;
  if (value < 1000)
    return `${SMALL[Math.floor(value / 100)]} hundred${value % 100 ? ` and ${inWords(value % 100)}` : ''}`;
  return `${inWords(Math.floor(value / 1000))} thousand${value % 1000 ? ` ${inWords(value % 1000)}` : ''}`;
}

describe('what always holds', () => {
  test('a number in words equals the same in digits', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99999 }), (value) => {
        expect(findNumbers(tokenise(`${inWords(value)} hills`)).map((number) => number.value)).toEqual([
          value,
        ]);
      }),
    );
  });

  test('never throws, and never overlaps', () => {
    const words = fc.constantFrom(
      'one',
      'hundred',
      'and',
      'a',
      'half',
      'to',
      '5',
      '6',
      '-',
      '/',
      'point',
      'third',
      '%',
      'per',
      'cent',
      'of',
      'in',
      'dozen',
      'minus',
      'no',
      '½',
      'x20',
      'every',
      'hill',
    );
    fc.assert(
      fc.property(fc.array(words, { maxLength: 40 }), fc.constantFrom(' ', '', '\n'), (parts, space) => {
        const found = findNumbers(tokenise(parts.join(space)));
        for (const [index, number] of found.entries()) {
          expect(number.last).toBeGreaterThanOrEqual(number.first);
          if (index > 0) expect(number.first).toBeGreaterThan(found[index - 1]?.last ?? -1);
        }
      }),
    );
  });
});
