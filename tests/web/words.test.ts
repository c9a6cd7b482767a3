import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Fact } from '../../src/reading/record.ts';
import { answersOf, readFactForm } from '../../src/web/fact-form.ts';
import { backTo } from '../../src/web/form.ts';
import { markedText } from '../../src/web/marked-text.ts';
import { fieldOf, readSeasonForm } from '../../src/web/season-forms.ts';

const span = fc.record({ start: fc.integer({ min: -3, max: 60 }), end: fc.integer({ min: -3, max: 60 }) });

describe('Marked text', () => {
  test('whatever the spans, the pieces put together are the text', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 50 }), fc.array(span, { maxLength: 8 }), (text, spans) => {
        const pieces = markedText(text, spans);
        expect(pieces.map((piece) => piece.text).join('')).toBe(text);
      }),
    );
  });

  test('spans that touch or overlap are one mark', () => {
    const marks = markedText('gap along the bund', [
      { start: 0, end: 3 },
      { start: 2, end: 9 },
      { start: 14, end: 18 },
    ]);
    expect(marks.filter((piece) => piece.marked).map((piece) => piece.text)).toEqual(['gap along', 'bund']);
  });
});

describe('The form of a fact', () => {
  test.each<Fact>([
    { list: 'findings', fact: { plot: 'B2', kind: 'gap', status: 'present', where: 'north bund' } },
    {
      list: 'actions',
      fact: { plot: null, kind: 'fertilise', status: 'planned', hearsay: true, who: 'Celso' },
    },
    {
      list: 'actions',
      fact: { plot: 'B2', kind: 'drain', status: 'planned', when: { from: '2031-07-14', to: '2031-07-16' } },
    },
    {
      list: 'actions',
      fact: { plot: 'B2', kind: 'irrigate', status: 'planned', when: { trigger: 'after:fertilise' } },
    },
    { list: 'comparisons', fact: { attribute: 'height', more: 'B2', less: 'B3' } },
    { list: 'unvisited', fact: { plot: 'B4' } },
  ])('what it shows of $list is what it reads back', (fact) => {
    expect(readFactForm(answersOf(fact))).toEqual(fact);
  });

  test('one day alone stands for both ends', () => {
    const form = { list: 'actions', kind: 'drain', status: 'done', 'when.to': '2031-07-14' };
    expect(readFactForm(form).fact.when).toEqual({ from: '2031-07-14', to: '2031-07-14' });
  });
});

describe('The form of a plot', () => {
  test('lines become names, factors and corners with longitude first', () => {
    const form = {
      code: 'B2',
      names: 'one\n\n two ',
      treatment: 'nitrogen: 90N',
      boundary: '15.5, 120.7',
      'size.widthM': '5',
    };
    expect(readSeasonForm('plots', form)).toEqual({
      code: 'B2',
      names: ['one', 'two'],
      treatment: { nitrogen: '90N' },
      boundary: [[120.7, 15.5]],
      size: { widthM: '5' },
    });
  });

  test.each([
    ['names.1', 'names'],
    ['crop.planted', 'crop.planted'],
    ['boundary.0.1', 'boundary'],
    ['size', 'size.widthM'],
    ['crop.spacing.hillCm', 'crop.spacing.hillCm'],
  ])('a fault at %s stands beside %s', (path, field) => {
    expect(fieldOf('plots', path)).toBe(field);
  });
});

describe('Where a form leads back', () => {
  test.each([
    ['/plots/E1?show=work', '/plots/E1?show=work'],
    ['https://elsewhere.example/', '/notes'],
    ['//elsewhere.example', '/notes'],
    ['/\\elsewhere.example', '/notes'],
    ['javascript:alert(1)', '/notes'],
    ['', '/notes'],
  ])('%s leads to %s', (back, path) => {
    expect(backTo({ body: { back } } as never, '/notes')).toBe(path);
  });
});
