import { describe, expect, test } from 'vitest';
import { likelyPlots, positionSettles, sayLikely } from '../../src/plots/likely-plots.ts';
import { plotFromCorner } from '../../src/plots/plot-from-corner.ts';
import { betweenTwoNotesOf, walkPrior } from '../../src/plots/walk-prior.ts';

/** Five strips side by side, 3 m wide and 20 m long, the first corner at 15 N 120 E; strip n begins 3 n metres to the east. */
const METRES_PER_DEGREE_EAST = 107_550;
const east = (metres: number): number => 120 + metres / METRES_PER_DEGREE_EAST;
const strips = [0, 1, 2, 3, 4].map((n) => ({
  code: `S${n}`,
  boundary: plotFromCorner(
    { latitude: 15, longitude: east(3 * n), bearingDeg: 0 },
    { widthM: 3, lengthM: 20 },
  ),
}));
/** In the middle of strip 2. */
const middle = { latitude: 15.00009, longitude: east(7.5) };

describe('a position among strips 3 m wide', () => {
  test('good to 5 m leaves the plot open', () => {
    const likely = likelyPlots({ ...middle, accuracyM: 5 }, strips);
    expect(likely[0]!.code).toBe('S2');
    expect(likely[0]!.share).toBeGreaterThan(0.4);
    expect(likely[0]!.share).toBeLessThan(0.7);
    expect(positionSettles(likely, { ...middle, accuracyM: 5 }, () => 3)).toBeNull();
  });
  test('never settles it, however sure it looks: the strip is narrower than the error', () => {
    expect(positionSettles([{ code: 'S2', share: 0.99 }], { ...middle, accuracyM: 2 }, () => 3)).toBeNull();
  });
  // Share of a normal error within +-1.5 m at sigma = 5 / 2.4477 = 2.043 m: erf(1.5 / (2.043 * sqrt 2)) = 0.537.
  test('gives the middle strip the share of a normal error', () => {
    expect(likelyPlots({ ...middle, accuracyM: 5 }, strips)[0]!.share).toBeCloseTo(0.537, 1);
  });
  test('shares make one', () => {
    const shares = likelyPlots({ ...middle, accuracyM: 8 }, strips).map(({ share }) => share);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 6);
  });
});

test('a position in a field far wider than the error settles it', () => {
  const field = {
    code: 'F',
    boundary: plotFromCorner({ latitude: 15, longitude: 120, bearingDeg: 0 }, { widthM: 80, lengthM: 80 }),
  };
  const fix = { latitude: 15.00036, longitude: east(40), accuracyM: 5 };
  expect(positionSettles(likelyPlots(fix, [field, ...strips.slice(1)].slice(0, 1)), fix, () => 80)).toBe('F');
});

test('a position far from every plot says so', () => {
  expect(likelyPlots({ latitude: 15.1, longitude: 120, accuracyM: 5 }, strips)).toEqual([]);
  expect(sayLikely([])).toBe('No plot near by.');
});

test('the walk turns the scale between neighbours', () => {
  const prior = walkPrior(
    '2031-07-14T07:10',
    [{ at: '2031-07-14T07:08', plot: 'S3' }],
    ['S0', 'S1', 'S2', 'S3', 'S4'],
  );
  const likely = likelyPlots({ latitude: 15.00009, longitude: east(9), accuracyM: 6 }, strips, prior);
  expect(likely[0]!.code).toBe('S3');
  expect(sayLikely(likely)).toMatch(/^S3 \(about \d+ %\) or S2$/);
});

describe('the walk', () => {
  const order = ['A', 'B', 'C', 'D'];
  const seen = [
    { at: '2031-07-14T07:00', plot: 'A' },
    { at: '2031-07-14T07:10', plot: 'C' },
  ];
  test.each([
    ['2031-07-14T07:00', 'A'],
    ['2031-07-14T07:05', 'B'],
    ['2031-07-14T07:09', 'C'],
    ['2031-07-14T07:20', 'C'],
  ])('at %s it is most likely in %s', (at, plot) => {
    const prior = walkPrior(at, seen, order);
    expect([...order].sort((a, b) => prior(b) - prior(a))[0]).toBe(plot);
  });
  test('says nothing about another day', () => {
    const prior = walkPrior('2031-07-15T07:05', seen, order);
    expect(order.map(prior)).toEqual([1, 1, 1, 1]);
  });
  test('between two notes of one plot it is that plot', () => {
    expect(
      betweenTwoNotesOf('2031-07-14T07:05', [
        { at: '2031-07-14T07:00', plot: 'A' },
        { at: '2031-07-14T07:09', plot: 'A' },
      ]),
    ).toBe('A');
    expect(betweenTwoNotesOf('2031-07-14T07:05', seen)).toBeNull();
  });
});
