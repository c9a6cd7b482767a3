import geodesic from 'geographiclib-geodesic';
import { describe, expect, test } from 'vitest';
import { cropAge, expectedStages } from '../../src/plots/expected-stages.ts';
import { outlineInMetres } from '../../src/plots/outline-in-metres.ts';
import { plotFromCorner } from '../../src/plots/plot-from-corner.ts';
import { seasonStrip } from '../../src/plots/season-strip.ts';

describe('when stages are expected', () => {
  const stages = expectedStages({ sownOn: '2031-06-01', plantedOn: null, daysToMaturity: 110 });
  const start = (stage: string): string | undefined => stages.find((one) => one.stage === stage)?.from;

  // IRRI growth-stage guide: a 110-day variety is 45 days vegetative, 35 to flowering, 30 ripening.
  test('a 110-day variety initiates panicles on day 45 and flowers on day 80', () => {
    expect(start('panicle_initiation')).toBe('2031-07-16');
    expect(start('flowering')).toBe('2031-08-20');
  });
  test('stages follow each other without a gap', () => {
    for (const [at, { to }] of stages.slice(0, -1).entries()) {
      expect(new Date(`${to}T00:00Z`).getTime() + 86_400_000).toBe(
        new Date(`${stages[at + 1]!.from}T00:00Z`).getTime(),
      );
    }
  });
  test('nothing is expected of a crop without dates', () => {
    expect(expectedStages({ sownOn: null, plantedOn: '2031-07-01', daysToMaturity: 110 })).toEqual([]);
    expect(expectedStages({ sownOn: '2031-06-01', plantedOn: null, daysToMaturity: null })).toEqual([]);
  });
});

test.each([
  ['2031-06-10', '2031-07-02', '2031-08-04', '33 DAT'],
  ['2031-06-10', '2031-07-02', '2031-07-02', '0 DAT'],
  ['2031-06-10', '2031-07-02', '2031-06-30', '20 DAS'],
  ['2031-06-10', null, '2031-07-04', '24 DAS'],
  ['2031-06-10', '2031-07-02', '2031-06-01', null],
  [null, null, '2031-07-04', null],
])('sown %s, planted %s: on %s it is %s', (sownOn, plantedOn, day, age) => {
  expect(cropAge({ sownOn, plantedOn }, day)).toBe(age);
});

describe('a plot from one corner', () => {
  // 20 x 5 m at 14.17 N 121.25 E encloses 99.99996 m2 on WGS84 (GeographicLib, planimeter).
  test('has the area and the sides that were asked for', () => {
    const corners = plotFromCorner(
      { latitude: 14.17, longitude: 121.25, bearingDeg: 12 },
      { widthM: 5, lengthM: 20 },
    );
    const polygon = geodesic.Geodesic.WGS84.Polygon(false);
    for (const [lon, lat] of corners) polygon.AddPoint(lat, lon);
    const { area, perimeter } = polygon.Compute(false, true);
    expect(Math.abs(area!)).toBeCloseTo(100, 0);
    expect(perimeter).toBeCloseTo(50, 1);
  });
  test('runs clockwise: the width lies to the right of the length', () => {
    const [near, far, , right] = plotFromCorner(
      { latitude: 14.17, longitude: 121.25, bearingDeg: 0 },
      { widthM: 5, lengthM: 20 },
    );
    expect(far![1]).toBeGreaterThan(near![1]);
    expect(right![0]).toBeGreaterThan(near![0]);
  });
});

describe('the plan in metres', () => {
  test('keeps sizes and puts north up', () => {
    const south = plotFromCorner({ latitude: 15, longitude: 120, bearingDeg: 0 }, { widthM: 4, lengthM: 10 });
    const north = plotFromCorner(
      { latitude: 15.001, longitude: 120, bearingDeg: 0 },
      { widthM: 4, lengthM: 10 },
    );
    const { shapes, known } = outlineInMetres([
      { code: 'S', boundary: south, widthM: null, lengthM: null },
      { code: 'N', boundary: north, widthM: null, lengthM: null },
    ]);
    const [first, far] = shapes.get('S')!;
    expect(known).toBe(true);
    expect(first![1] - far![1]).toBeCloseTo(10, 1);
    expect(shapes.get('N')![0]![1]).toBeLessThan(first![1]);
  });
  test('says so where boundaries are missing', () => {
    const plan = outlineInMetres([{ code: 'A', boundary: null, widthM: 3, lengthM: 8 }]);
    expect(plan.known).toBe(false);
    expect(plan.shapes.get('A')).toHaveLength(4);
    expect(outlineInMetres([])).toMatchObject({ widthM: 0, heightM: 0 });
  });
});

describe('the season strip', () => {
  const crop = { sownOn: '2031-06-01', plantedOn: '2031-06-22', daysToMaturity: 110 };
  test('runs from sowing past maturity and shows today', () => {
    const strip = seasonStrip(crop, [{ stage: 'tillering', day: '2031-07-01' }], [], '2031-07-10')!;
    expect(strip).toMatchObject({
      from: '2031-06-01',
      today: '2031-07-10',
      observed: [{ stage: 'tillering', day: '2031-07-01' }],
    });
    expect(strip.to > '2031-09-19').toBe(true);
  });
  test('has no today line outside the season, and none at all where nothing is known', () => {
    expect(seasonStrip(crop, [], [], '2032-07-10')!.today).toBeNull();
    expect(seasonStrip(null, [], [], '2031-07-10')).toBeNull();
  });
});
