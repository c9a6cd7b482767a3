import { describe, expect, test } from 'vitest';
import { EPPO_CODES, eppoCode, eppoFormatFault } from '../../src/agronomy/eppo-codes.ts';
import { sure } from '../../src/agronomy/fault.ts';
import { LODGING_FACTORS, lodgingFactorsSeen } from '../../src/agronomy/lodging/lodging-factors.ts';
import { stemLodgingSharePercent } from '../../src/agronomy/lodging/lodging-index.ts';
import { lodgingScore } from '../../src/agronomy/lodging/lodging-scales.ts';
import {
  APPLICATION_FACTS,
  missingFromApplication,
} from '../../src/agronomy/pesticide/application-record.ts';
import { earliestHarvestOn, harvestAfterAll } from '../../src/agronomy/pesticide/pre-harvest.ts';
import { reentryFrom, reentryHours } from '../../src/agronomy/pesticide/re-entry.ts';
import { whoClass2009, whoClassBefore2009 } from '../../src/agronomy/pesticide/who-class.ts';
import { againstThreshold, thresholdsFor } from '../../src/agronomy/pests/against-threshold.ts';
import { panicleBlastSeverity } from '../../src/agronomy/pests/disease-indices.ts';
import { sesScore } from '../../src/agronomy/pests/ses-score.ts';
import { testIsValid } from '../../src/agronomy/pests/test-validity.ts';
import { cutTillersByStrata } from '../../src/agronomy/rodents/cut-tillers.ts';
import { activeBurrowsPerHa, trapSuccess } from '../../src/agronomy/rodents/trapping.ts';
import { yieldLossKgPerHaFromCutTillers } from '../../src/agronomy/rodents/yield-loss-from-rats.ts';
import { mixForPlot } from '../../src/agronomy/weeds/tank-mix.ts';
import { coverClass, weedControlPercent } from '../../src/agronomy/weeds/weed-counts.ts';
import { weedFreePeriodsOn } from '../../src/agronomy/weeds/weed-free-periods.ts';
import { weedingChoice, weedingHours } from '../../src/agronomy/weeds/weeding-labour.ts';

describe('weeds', () => {
  test.each([
    [0.5, '+'],
    [1, '+'],
    [5, '1'],
    [25, '2'],
    [76, '5'],
  ])('%f % is class %s', (cover, sign) => {
    expect(coverClass(cover)).toMatchObject({ sign, unconfirmed: true });
  });
  test('a tenth of a hectare by hand takes 20 hours at 200 a hectare', () => {
    expect(weedingHours(1000, 200)).toBe(20);
  });
  test('few weeds are quicker spot by spot, many by hand', () => {
    const work = { areaM2: 1000, hoursPerHaOfSpots: 300, swathM: 1, walkKmPerH: 2 };
    expect(weedingChoice({ ...work, infestedPercent: 5 }, 200)).toMatchObject({
      handHours: 20,
      spotHours: 2,
      fewerHours: 'spot treatment',
    });
    expect(weedingChoice({ ...work, infestedPercent: 90 }, 200)).toMatchObject({
      fewerHours: 'hand weeding',
    });
  });
  test('control below 0 is shown', () => {
    expect(weedControlPercent(40, 50)).toBe(-25);
  });
  test('1000 m2 from a tank of 16 L: one full tank and 4 L', () => {
    const mix = sure(mixForPlot(1000, { tankL: 16, volumeLPerHa: 200, dosePerHa: 1000 }));
    expect(mix).toMatchObject({ sprayL: 20, dose: 100, fullTanks: 1, lastTankL: 4, lastTankDose: 20 });
    expect(mix.caution).toContain('label');
  });
  test('day 30 of a dry-sown crop must be clean', () => {
    expect(sure(weedFreePeriodsOn(30, 'sowing')).map(({ crop }) => crop)).toEqual([
      'lowland',
      'dry direct seeded',
    ]);
  });
});

describe('EPPO codes', () => {
  test('each has a right form; most are marked as not looked up', () => {
    expect(EPPO_CODES.filter(({ code }) => eppoFormatFault(code))).toEqual([]);
    expect(eppoCode('nilalu')).toMatchObject({ name: 'Nilaparvata lugens', unconfirmed: true });
    expect(eppoCode('Oryza sativa')).toMatchObject({ code: 'ORYSA' });
    expect(eppoCode('ORYSA')).not.toMatchObject({ unconfirmed: true });
  });
  test.each(['rice', 'ORYSAAA', 'ORY5A', ''])('"%s" is none', (code) => {
    expect(eppoFormatFault(code)).toHaveProperty('fault');
    expect(eppoCode(`${code}?`)).toHaveProperty('fault');
  });
});

describe('rats', () => {
  test('5.77 % cut is 335 kg/ha', () => {
    expect(sure(yieldLossKgPerHaFromCutTillers((100 * 18) / 312))).toBeCloseTo(334.6, 1);
  });
  test('strata count by area', () => {
    const edge = { name: 'edge', areaM2: 360, cut: 9, uncut: 91 };
    const interior = { name: 'interior', areaM2: 640, cut: 5, uncut: 195 };
    expect(cutTillersByStrata([edge, interior])).toBeCloseTo(4.84, 9);
    expect(cutTillersByStrata([edge])).toEqual({ fault: expect.stringContaining('two strata') });
    expect(cutTillersByStrata([edge, { ...interior, cut: 0, uncut: 0 }])).toEqual({
      fault: expect.stringMatching(/^interior: /),
    });
  });
  test('20 traps, 3 nights, 6 rats: 10 for 100 trap-nights; sprung ones cost half a night', () => {
    expect(trapSuccess(20, 3, 6)).toMatchObject({ trapNights: 60, per100TrapNights: 10 });
    expect(trapSuccess(20, 3, 6, 4)).toMatchObject({ trapNights: 55, unconfirmed: true });
    expect(trapSuccess(2, 1, 5)).toHaveProperty('fault');
  });
  test('5 burrows reopened on 2000 m2', () => {
    expect(activeBurrowsPerHa(5, 2000)).toBe(25);
  });
});

describe('lodging', () => {
  test('9 is best on one scale and worst on the other, and says so', () => {
    expect(lodgingScore('descriptor lodging', 9)).toMatchObject({
      words: 'all vertical',
      direction: '9 is best',
    });
    expect(lodgingScore('SES culm strength', 9)).toMatchObject({
      words: 'very weak, all flat',
      direction: '1 is best',
    });
    expect(lodgingScore('SES culm strength', 4)).toHaveProperty('fault');
  });
  test('an ellipse of 0.64 : 1 is stem lodging alone, a circle none', () => {
    expect(stemLodgingSharePercent(0.64, 1)).toBeCloseTo(100, 9);
    expect(stemLodgingSharePercent(1, 1)).toBe(0);
  });
  test('factors are parted and not summed', () => {
    const seen = lodgingFactorsSeen(LODGING_FACTORS.map(({ words }) => words));
    expect([seen.lodging.length, seen.standing.length]).toEqual([6, 1]);
  });
});

describe('SES scores', () => {
  test.each([
    ['dead heart', 0, 0],
    ['dead heart', 0.4, 1],
    ['dead heart', 10.4, 1],
    ['dead heart', 10.5, 3],
    ['dead heart', 61, 9],
    ['gall midge, field', 0.6, 1],
    ['gall midge, field', 1, 3],
    ['brown spot', 3.5, 3],
    ['spikelet fertility', 0, 9],
    ['spikelet fertility', 95, 1],
    ['tillering', 26, 1],
    ['height, lowland', 120, 5],
    ['leaf blast', 30, 7],
  ])('%s at %f scores %i', (trait, value, score) => {
    expect(sesScore(trait, value)).toMatchObject({ score });
  });
  test('rounding is marked as ours, whole numbers are not', () => {
    expect(sesScore('dead heart', 10.4)).toMatchObject({ scoredAs: 10, unconfirmed: true });
    expect(sure(sesScore('dead heart', 10)).unconfirmed).toBeUndefined();
  });
  test.each([
    ['rice bug', 13, 'two printed bands'],
    ['rice bug', 3, 'no printed band'],
    ['spikelet fertility', 90, 'no printed band'],
    ['dead heart', 140, 'from 0 to 100'],
    ['bacterial blight, field', 0, 'no printed band'],
  ])('%s at %f is not guessed', (trait, value, words) => {
    expect(sesScore(trait, value)).toEqual({ fault: expect.stringContaining(words) });
  });
  test('panicle blast of 100 panicles', () => {
    expect(panicleBlastSeverity({ 1: 20, 3: 15, 5: 10, 7: 3, 9: 2 }, 100)).toBeCloseTo(13.1, 9);
    expect(panicleBlastSeverity({ 1: 60, 3: 60 }, 100)).toHaveProperty('fault');
  });
  test('a test needs a check that suffers', () => {
    expect([
      testIsValid('dead heart', 20),
      testIsValid('dead heart', 21),
      testIsValid('leaffolder', 40),
    ]).toEqual([false, true, true]);
  });
});

describe('thresholds', () => {
  test('regions disagree about dead hearts and both are shown', () => {
    expect(
      thresholdsFor('stem borer')
        .filter(({ measure }) => measure === '% dead hearts')
        .map(({ region, from }) => [region, from]),
    ).toEqual([
      ['Kerala, India', 10],
      ['Punjab, India', 5],
    ]);
  });
  test.each([
    [14, 'below'],
    [15, 'within the printed range'],
    [20, 'at or above'],
  ])('%i hoppers a hill at booting: %s', (counted, stands) => {
    const [row] = thresholdsFor('brown planthopper', 'PI-booting');
    expect(againstThreshold(counted, 'per hill', row!)).toMatchObject({
      stands,
      words: expect.stringContaining('natural enemies'),
    });
  });
  test('another measure is not compared', () => {
    const [row] = thresholdsFor('brown planthopper', 'PI-booting');
    expect(againstThreshold(20, 'per m2', row!)).toHaveProperty('fault');
  });
});

describe('spray intervals', () => {
  test('the label goes before the default', () => {
    expect(reentryHours({ labelHours: 4, category: 'I' })).toMatchObject({ hours: 4, fromLabel: true });
    expect(reentryHours({ category: 'II' })).toMatchObject({ hours: 24, fromLabel: false });
    expect(reentryHours({})).toEqual({ fault: expect.stringContaining('label') });
  });
  test('over midnight and month', () => {
    expect(reentryFrom('2024-02-28T18:30', 48)).toBe('2024-03-01T18:30');
    expect(reentryFrom('yesterday', 48)).toHaveProperty('fault');
  });
  test('10 March and 21 days: not before 31 March', () => {
    expect(earliestHarvestOn('2024-03-10', 21)).toBe('2024-03-31');
  });
  test('of several the last to open', () => {
    const base = { appliedAt: '2024-03-10T06:30', reentryHours: 24 };
    expect(
      harvestAfterAll([
        { ...base, product: 'first', preHarvestDays: 21 },
        { ...base, product: 'second', appliedAt: '2024-03-20T06:30', preHarvestDays: 7 },
      ]),
    ).toEqual({ on: '2024-03-31', because: 'first, pre-harvest interval' });
    expect(harvestAfterAll([{ ...base, product: 'x', reentryHours: 72, preHarvestDays: 2 }])).toEqual({
      on: '2024-03-13',
      because: 'x, re-entry interval',
    });
  });
  test('300 mg/kg solid is III of old and II of new', () => {
    expect(whoClassBefore2009(600, 'solid')).toMatchObject({ name: 'III' });
    expect(whoClass2009(600)).toMatchObject({ name: 'II', unconfirmed: true });
    expect(whoClassBefore2009(600, 'liquid')).toMatchObject({ name: 'II' });
  });
  test('what is still to be written down', () => {
    expect(missingFromApplication(new Set(['dose', 'wind'])).length).toBe(APPLICATION_FACTS.length - 2);
  });
});
