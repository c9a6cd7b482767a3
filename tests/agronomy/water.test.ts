import { describe, expect, test } from 'vitest';
import { sure } from '../../src/agronomy/fault.ts';
import { inflowHours } from '../../src/agronomy/water/depth-volume.ts';
import { dropSplit } from '../../src/agronomy/water/drop-split.ts';
import { leakingPlots } from '../../src/agronomy/water/leaking-plots.ts';
import { SAFE_RULE, tubeFall, wettingDryingAdvice } from '../../src/agronomy/water/safe-wetting-drying.ts';
import { dailyNeedMm, waterLedger } from '../../src/agronomy/water/water-ledger.ts';
import { waterProductivity } from '../../src/agronomy/water/water-productivity.ts';

describe('amounts', () => {
  test('5 mm a day at 1.2, 3 mm lost, 2 mm rain: 7 mm', () => {
    expect(dailyNeedMm(6, 3, 2)).toBe(7);
    expect(dailyNeedMm(6, 3, 30)).toBe(0);
  });
  test('50 mm on 720 m2 at 10 L/s takes an hour', () => {
    expect(inflowHours(50, 720, 10)).toBeCloseTo(1, 9);
  });
  test('no grain has no litres a kg', () => {
    expect(waterProductivity(0, 900)).toEqual({ kgPerM3: 0, litresPerKg: null });
  });
});

describe('ledger', () => {
  test('what stands over the outlet runs off', () => {
    const ledger = sure(
      waterLedger(60, 80, [
        { on: '2024-07-01', rainMm: 40, cropUseMm: 5, lossMm: 3 },
        { on: '2024-07-02', cropUseMm: 6, lossMm: 3 },
      ]),
    );
    expect(ledger.days).toEqual([
      { on: '2024-07-01', depthMm: 80, ranOverMm: 12 },
      { on: '2024-07-02', depthMm: 71, ranOverMm: 0 },
    ]);
  });
  test('days out of order are refused', () => {
    const day = { cropUseMm: 5, lossMm: 3 };
    expect(
      waterLedger(0, 80, [
        { on: '2024-07-02', ...day },
        { on: '2024-07-01', ...day },
      ]),
    ).toEqual({
      fault: '2024-07-01 is out of order',
    });
  });
  test('rain below 0 is named with its day', () => {
    expect(waterLedger(0, 80, [{ on: '2024-07-02', rainMm: -1, cropUseMm: 5, lossMm: 3 }])).toEqual({
      fault: 'rain of 2024-07-02 in mm must be 0 or more, not -1',
    });
  });
});

describe('a drop of water', () => {
  test('60 mm in four days: 24 for the crop, 36 lost', () => {
    expect(dropSplit({ startMm: 80, endMm: 20, days: 4, cropUseMmPerDay: 6 })).toEqual({
      totalMm: 60,
      cropUseMm: 24,
      lossMm: 36,
      lossMmPerDay: 9,
    });
  });
  test('rain in between counts', () => {
    expect(dropSplit({ startMm: 80, endMm: 80, days: 2, rainMm: 20, cropUseMmPerDay: 5 })).toMatchObject({
      lossMm: 10,
    });
  });
  test('a fall under the surface is no fall in mm of water', () => {
    expect(dropSplit({ startMm: 20, endMm: -100, days: 2, cropUseMmPerDay: 5 })).toEqual({
      fault: expect.stringContaining('above the soil'),
    });
  });
});

describe('which plot leaks', () => {
  const losses = [
    { plot: 'A1', lossMmPerDay: 4 },
    { plot: 'A2', lossMmPerDay: 15 },
    { plot: 'A3', lossMmPerDay: 5 },
    { plot: 'A4', lossMmPerDay: 3 },
  ];
  test('the one that stands out, over five days', () => {
    expect(sure(leakingPlots(losses, 5)).map(({ plot, leaks }) => [plot, leaks])).toEqual([
      ['A2', true],
      ['A3', false],
      ['A1', false],
      ['A4', false],
    ]);
  });
  test('one day is too short to tell it from a bad reading', () => {
    expect(sure(leakingPlots(losses, 1)).filter(({ leaks }) => leaks)).toEqual([]);
  });
  test('two plots have no middle', () => {
    expect(leakingPlots(losses.slice(0, 2), 5)).toHaveProperty('fault');
  });
});

describe('safe alternate wetting and drying, planted 1 June', () => {
  const crop = { plantedOn: '2024-06-01', floweringOn: '2024-08-10' };
  test.each([
    ['2024-06-05', 3, 'keep ponded'],
    ['2024-06-05', -4, 'irrigate'],
    ['2024-06-20', -14, 'wait'],
    ['2024-06-20', -15, 'irrigate'],
    ['2024-08-03', -5, 'irrigate'],
    ['2024-08-17', 2, 'keep ponded'],
    ['2024-08-18', -5, 'wait'],
  ])('%s, tube at %f cm: %s', (on, levelCm, act) => {
    expect(wettingDryingAdvice(crop, { on, levelCm })).toMatchObject({ act });
  });
  test('says what of the rule is from memory', () => {
    expect(wettingDryingAdvice(crop, { on: '2024-06-20', levelCm: -16 })).toMatchObject({
      fillToCm: SAFE_RULE.fillToCm,
      unconfirmed: true,
      unread: expect.stringContaining('memory'),
    });
  });
  test('a reading before planting is refused', () => {
    expect(wettingDryingAdvice(crop, { on: '2024-05-20', levelCm: -5 })).toEqual({
      fault: '2024-05-20 is before planting, 2024-06-01',
    });
  });
  test('the tube has its own pace', () => {
    expect(tubeFall({ on: '2024-06-20', levelCm: -3 }, { on: '2024-06-22', levelCm: -9 })).toMatchObject({
      cmPerDay: 3,
      daysToLimit: 2,
    });
    expect(tubeFall({ on: '2024-06-20', levelCm: -9 }, { on: '2024-06-22', levelCm: -3 })).toMatchObject({
      daysToLimit: null,
    });
    expect(tubeFall({ on: '2024-06-20', levelCm: -9 }, { on: '2024-06-20', levelCm: -3 })).toHaveProperty(
      'fault',
    );
  });
});
