import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plotAreaM2 } from '../../src/plots/plot-area.ts';
import { plotFromCorner } from '../../src/plots/plot-from-corner.ts';
import { type Grid, plotGrid } from '../../src/plots/plot-grid.ts';

const block: Grid = {
  latitude: 15.5107,
  longitude: 120.7203,
  bearingDeg: 12,
  rows: 2,
  columns: 3,
  widthM: 5,
  lengthM: 20,
  betweenColumnsM: 0.5,
  betweenRowsM: 1,
  order: 'always from the left',
};

describe('a block from one corner', () => {
  test('begins with the plot that the corner alone would give', () => {
    expect(plotGrid(block)[0]!.boundary).toEqual(plotFromCorner(block, block));
  });

  test.each([
    ['always from the left', ['1/1', '1/2', '1/3', '2/1', '2/2', '2/3']],
    ['back and forth', ['1/1', '1/2', '1/3', '2/3', '2/2', '2/1']],
  ] as const)('is numbered %s', (order, numbered) => {
    expect(plotGrid({ ...block, order }).map(({ row, column }) => `${row}/${column}`)).toEqual(numbered);
  });

  test('leaves the alley between neighbours and meets them where there is none', () => {
    const [one, two] = plotGrid({ ...block, betweenColumnsM: 0 });
    const [, , , nearRight] = one!.boundary;
    const [nearLeft] = two!.boundary;
    expect(Math.abs(nearRight![0] - nearLeft![0])).toBeLessThan(2e-7);
    expect(Math.abs(nearRight![1] - nearLeft![1])).toBeLessThan(2e-7);
  });

  test('gives every plot its own size, whatever the place, bearing and alleys', () => {
    const anywhere = fc.record({
      latitude: fc.double({ min: -60, max: 60, noNaN: true }),
      longitude: fc.double({ min: -179, max: 179, noNaN: true }),
      bearingDeg: fc.double({ min: 0, max: 360, noNaN: true }),
      rows: fc.integer({ min: 1, max: 5 }),
      columns: fc.integer({ min: 1, max: 5 }),
      widthM: fc.double({ min: 2, max: 50, noNaN: true }),
      lengthM: fc.double({ min: 2, max: 50, noNaN: true }),
      betweenColumnsM: fc.double({ min: 0, max: 5, noNaN: true }),
      betweenRowsM: fc.double({ min: 0, max: 5, noNaN: true }),
      order: fc.constantFrom('always from the left' as const, 'back and forth' as const),
    });
    fc.assert(
      fc.property(anywhere, (grid) => {
        const plots = plotGrid(grid);
        expect(new Set(plots.map(({ row, column }) => `${row}/${column}`)).size).toBe(
          grid.rows * grid.columns,
        );
        // Corners are kept to seven decimals: a centimetre at most along each side.
        const errorM2 = 0.02 * (grid.widthM + grid.lengthM);
        for (const { boundary } of plots) {
          const area = plotAreaM2({ boundary, widthM: null, lengthM: null })!;
          expect(Math.abs(area - grid.widthM * grid.lengthM)).toBeLessThan(errorM2);
        }
      }),
      { numRuns: 60 },
    );
  });
});
