import fc from 'fast-check';
import { expect, test } from 'vitest';
import { excessGreen, excessRed, rawExcessGreen } from '../../src/agronomy/canopy-indices.ts';

test.each([
  ['exg-60-120-40', 60, 120, 40, 0.636364],
  ['exg-90-110-70', 90, 110, 70, 0.222222],
  ['exg-200-200-200', 200, 200, 200, 0],
  ['exg-0-255-0', 0, 255, 0, 2],
  ['exg-255-0-0', 255, 0, 0, -1],
  ['bare soil', 120, 100, 80, 0],
  ['black', 0, 0, 0, 0],
])('%s: excess green of (%i, %i, %i) is %f', (_, red, green, blue, expected) => {
  expect(excessGreen(red, green, blue)).toBeCloseTo(expected, 6);
});

test('exg-raw-vs-norm: without division the first of them is 140', () => {
  expect(rawExcessGreen(60, 120, 40)).toBe(140);
});

test('excess red of the bare soil (120, 100, 80) is 1.4 times 0.4 less 0.3333', () => {
  expect(excessRed(120, 100, 80)).toBeCloseTo(0.226667, 6);
  expect(excessRed(0, 0, 0)).toBe(0);
});

test('half the light, the same greenness', () => {
  const channel = fc.integer({ min: 1, max: 255 });
  fc.assert(
    fc.property(channel, channel, channel, (red, green, blue) => {
      expect(excessGreen(red / 2, green / 2, blue / 2)).toBeCloseTo(excessGreen(red, green, blue), 9);
      expect(excessGreen(red, green, blue)).toBeCloseTo((3 * green) / (red + green + blue) - 1, 9);
    }),
  );
});
