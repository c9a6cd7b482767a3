import { describe, expect, test } from 'vitest';
import { sure } from '../../src/agronomy/fault.ts';
import { rectangleAreaError } from '../../src/agronomy/geometry/area-error.ts';
import { geodesicArea } from '../../src/agronomy/geometry/geodesic-area.ts';
import { cropCutYield, meanCropCutYield } from '../../src/agronomy/harvest/crop-cut.ts';
import { harvestIndex } from '../../src/agronomy/harvest/harvest-index.ts';
import { weightAt14 } from '../../src/agronomy/harvest/moisture.ts';
import { yieldFromComponents } from '../../src/agronomy/harvest/yield-components.ts';
import { blockAnalysis } from '../../src/agronomy/statistics/block-analysis.ts';
import { fCritical, fUpperP, tCritical, tTwoSidedP } from '../../src/agronomy/statistics/distributions.ts';
import { incompleteBeta, logGamma } from '../../src/agronomy/statistics/incomplete-beta.ts';
import { oneWayAnalysis } from '../../src/agronomy/statistics/one-way-analysis.ts';
import { studentisedRangeCritical } from '../../src/agronomy/statistics/studentised-range.ts';
import { pairedTTest } from '../../src/agronomy/statistics/t-tests.ts';
import { seedRateTrial } from './checks/published-data.ts';

describe('harvest', () => {
  test('moisture of 140 % is refused in words', () => {
    expect(weightAt14(3, 140)).toEqual({ fault: 'grain moisture in % must be from 5 to 40, not 140' });
  });
  test('small cuts and impossible yields are remarked', () => {
    expect(cropCutYield({ grainKg: 1, moisturePercent: 14, areaM2: 2 })).toMatchObject({
      tPerHa: 5,
      remarks: ['less than 5 m2 was cut'],
    });
    expect(sure(cropCutYield({ grainKg: 20, moisturePercent: 14, areaM2: 5 })).remarks).toHaveLength(1);
  });
  test('a bad cut among several is named', () => {
    const good = { grainKg: 3, moisturePercent: 20, areaM2: 5 };
    expect(meanCropCutYield([good, { ...good, areaM2: 0 }])).toEqual({
      fault: expect.stringMatching(/^cut 2: /),
    });
  });
  test('filled spikelets are a fraction, not a percentage', () => {
    const parts = { paniclesPerM2: 350, spikeletsPerPanicle: 100, filledFraction: 85, thousandGrainG: 25 };
    expect(yieldFromComponents(parts)).toEqual({ fault: expect.stringContaining('filled fraction') });
  });
  test('more grain than crop is refused', () => {
    expect(harvestIndex(20, 10)).toHaveProperty('fault');
  });
});

describe('distributions against tables', () => {
  test.each([
    [0.05, 1, 12.7062],
    [0.05, 10, 2.228139],
    [0.01, 30, 2.749996],
    [0.05, 1000, 1.962339],
  ])('t at %f with %i df is %f', (p, df, t) => {
    expect(tCritical(p, df)).toBeCloseTo(t, 4);
  });
  test.each([
    [0.05, 1, 1, 161.4476],
    [0.05, 3, 20, 3.098391],
    [0.01, 10, 10, 4.849147],
  ])('F at %f with %i and %i df is %f', (p, df1, df2, f) => {
    expect(fCritical(p, df1, df2)).toBeCloseTo(f, 4);
  });
  test.each([
    [3, 10, 3.877],
    [6, 15, 4.595],
    [10, 60, 4.646],
    [2, 1, 17.97],
  ])('studentised range of %i means with %i df is %f', (k, df, q) => {
    expect(Math.abs(sure(studentisedRangeCritical(0.05, k, df)) - q)).toBeLessThan(0.005);
  });
  test('of two means it is t times the root of two', () => {
    expect(studentisedRangeCritical(0.05, 2, 12)).toBeCloseTo(sure(tCritical(0.05, 12)) * Math.SQRT2, 7);
  });
  test('t squared is F with one degree of freedom above', () => {
    expect(sure(tTwoSidedP(2.3, 17))).toBeCloseTo(sure(fUpperP(2.3 ** 2, 1, 17)), 12);
  });
  test('known values of beta and gamma', () => {
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.sqrt(Math.PI)), 13);
    expect(Math.exp(logGamma(6))).toBeCloseTo(120, 9);
    expect(incompleteBeta(0.5, 3, 3)).toBeCloseTo(0.5, 14);
    expect(incompleteBeta(0.3, 1, 4)).toBeCloseTo(1 - 0.7 ** 4, 14);
  });
});

describe('complete blocks: seed rates of Gomez & Gomez 1984 p. 26', () => {
  const analysis = sure(blockAnalysis(seedRateTrial));
  test('the table of variance', () => {
    expect(analysis.blocks.ss).toBeCloseTo(1_944_360.83, 2);
    expect(analysis.treatments.ss).toBeCloseTo(1_198_330.83, 2);
    expect(analysis.error.ss).toBeCloseTo(1_658_376.17, 2);
    expect(analysis.blocks.f).toBeCloseTo(5.862, 3);
    expect(analysis.treatments.f).toBeCloseTo(2.168, 3);
    expect(analysis.treatments.p).toBeCloseTo(0.1128, 4);
    expect([analysis.blocks.df, analysis.treatments.df, analysis.error.df, analysis.total.df]).toEqual([
      3, 5, 15, 23,
    ]);
    expect(analysis.cvPercent).toBeCloseTo(6.7, 2);
  });
  test('the LSD comes with the warning that F found nothing', () => {
    expect(analysis.words).toContain('must not be used');
  });
  test('a missing and a doubled plot are named', () => {
    expect(blockAnalysis(seedRateTrial.slice(1))).toEqual({
      fault: '25 is missing in block R1: complete blocks need every plot',
    });
    expect(blockAnalysis([...seedRateTrial, seedRateTrial[0]!])).toEqual({
      fault: '25 stands 2 times in block R1',
    });
  });
  test('values without error are refused', () => {
    const plots = seedRateTrial.map((plot) => ({ ...plot, value: Number(plot.treatment) }));
    expect(blockAnalysis(plots)).toEqual({ fault: expect.stringContaining('no error') });
  });
});

test('treatments that hardly differ do not come out below 0', () => {
  const values = [-49.999999999704414, -49.9999999999406, 0, 0];
  const plots = values.map((value, index) => ({ treatment: String(index % 2), value }));
  expect(sure(oneWayAnalysis(plots)).treatments.f).toBeGreaterThanOrEqual(0);
});

test('pairs that do not vary, and unlike lengths', () => {
  expect(pairedTTest([1, 2, 3], [2, 3, 4])).toEqual({ fault: expect.stringContaining('do not vary') });
  expect(pairedTTest([1, 2, 3], [2, 3])).toEqual({ fault: expect.stringContaining('3 and 2') });
});

describe('areas', () => {
  test('a phone walked round a plot of 5 m x 20 m is 62 % off', () => {
    expect(sure(rectangleAreaError(20, 5, 3)).sdPercent).toBeCloseTo(61.8, 1);
  });
  test('two corners and a latitude of 95 are refused', () => {
    const corner = { latitude: 14, longitude: 121 };
    expect(geodesicArea([corner, corner])).toHaveProperty('fault');
    expect(geodesicArea([corner, corner, { ...corner, latitude: 95 }])).toHaveProperty('fault');
  });
});
