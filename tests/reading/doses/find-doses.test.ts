import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findDoses } from '../../../src/reading/doses/find-doses.ts';
import { findNumbers } from '../../../src/reading/numbers/find-numbers.ts';
import { DOSE_UNITS } from '../../../src/reading/record.ts';
import { tokenise } from '../../../src/reading/text.ts';
import { rowsOf } from '../numbers/rows-of.ts';

function dosed(words: string): string {
  const tokens = tokenise(words);
  return (
    findDoses(tokens, findNumbers(tokens))
      .map(({ dose }) => `${dose.value} ${dose.unit}${dose.of ? ` of ${dose.of}` : ''}`)
      .join('; ') || '-'
  );
}

describe('doses', () => {
  test.each(rowsOf('doses.md'))('$at $cells', ({ at, cells: [words = '', reads] }) => {
    expect(dosed(words), at).toBe(reads);
  });

  test('of is in the words of the note, or what was meant', () => {
    expect(dosed('Zinc Sulphate 12 kg per ha')).toBe('12 kg/ha of Zinc Sulphate');
  });

  test('three equals 3, and every dose is in a unit of the vocabulary', () => {
    const count = fc.constantFrom(['two', '2'], ['three', '3'], ['twelve', '12'], ['forty five', '45']);
    const unit = fc.constantFrom('kg', 'bags', 'lb', 'litres');
    const per = fc.constantFrom('', 'per ha', 'an acre', '/ha');
    fc.assert(
      fc.property(count, unit, per, ([word, digits], of, area) => {
        expect(dosed(`${word} ${of} of urea ${area}`)).toBe(dosed(`${digits} ${of} of urea ${area}`));
        const tokens = tokenise(`${digits} ${of} ${area} urea`);
        for (const { dose } of findDoses(tokens, findNumbers(tokens)))
          expect(DOSE_UNITS).toContain(dose.unit);
      }),
    );
  });
});
