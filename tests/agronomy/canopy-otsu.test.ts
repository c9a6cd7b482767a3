import fc from 'fast-check';
import { expect, test } from 'vitest';
import { otsuSplit, withinVariance } from '../../src/agronomy/canopy-otsu.ts';

// check-values: otsu-6
const counts = [8, 7, 2, 6, 9, 4];

test.each([
  [0, 3.1196],
  [1, 1.5268],
  [2, 0.5561],
  [3, 0.4909],
  [4, 0.9779],
  [5, 2.2491],
])('otsu-6: parted below level %i, the variance within is %f', (firstUpper, within) => {
  expect(withinVariance(counts, firstUpper)).toBeCloseTo(within, 3);
});

test('otsu-6: best parted below level 3', () => {
  const split = otsuSplit(counts);
  expect(split.firstUpper).toBe(3);
  expect(split.between).toBeCloseTo(2.6287, 3);
  expect(split.total).toBeCloseTo(3.1196, 3);
  expect(split.lower.share).toBeCloseTo(17 / 36, 9);
});

test('one level only, or nothing at all: nothing to part', () => {
  expect(otsuSplit([0, 40, 0]).between).toBe(0);
  expect(otsuSplit([])).toMatchObject({ firstUpper: 0, between: 0, total: 0 });
});

test('no other level parts better, and the two variances add up to the total', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(500), { minLength: 1, maxLength: 24 }), (heap) => {
      const split = otsuSplit(heap);
      expect(split.within + split.between).toBeCloseTo(split.total, 6);
      for (let level = 0; level < heap.length; level++)
        expect(withinVariance(heap, level)).toBeGreaterThanOrEqual(split.within - 1e-6);
    }),
  );
});
