import { describe, expect, test } from 'vitest';
import { isFault, sure } from '../../src/agronomy/fault.ts';
import { establishmentPercent, plantsPerM2FromRow } from '../../src/agronomy/stand/direct-seeding.ts';
import { harvestAreaVerdict } from '../../src/agronomy/stand/harvest-area.ts';
import {
  expectedHills,
  hillsPerM2,
  missingHillsPercent,
  shareOfHillsPercent,
} from '../../src/agronomy/stand/hills.ts';
import { refillNeed } from '../../src/agronomy/stand/refill-need.ts';
import {
  REPLANT_RULES,
  replantWindow,
  strictestReplantWindow,
} from '../../src/agronomy/stand/replant-window.ts';
import { standSurvey } from '../../src/agronomy/stand/stand-survey.ts';

const rule = (name: string) => REPLANT_RULES.find((one) => one.name === name)!;

describe('hills', () => {
  test('a plot of 10 m2 at 20 cm x 20 cm holds 250', () => {
    expect(expectedHills(10, { rowCm: 20, hillCm: 20 })).toBe(250);
  });

  test('2 in 10 hills', () => {
    expect(shareOfHillsPercent(2, 10)).toBe(20);
  });

  test.each([
    ['spacing of 0', hillsPerM2({ rowCm: 0, hillCm: 20 }), 'row spacing in cm must be more than 0, not 0'],
    [
      'spacing that is none',
      hillsPerM2({ rowCm: 20, hillCm: Number.NaN }),
      'spacing in the row in cm must be a number, not NaN',
    ],
    [
      'more hills than expected',
      missingHillsPercent(250, 260),
      '260 hills were counted where 250 were expected',
    ],
    ['more affected than looked at', shareOfHillsPercent(11, 10), '11 of 10 hills is more than all of them'],
    ['half a hill', missingHillsPercent(250, 1.5), 'hills counted must be a whole number, not 1.5'],
  ])('%s is answered in words', (_, result, words) => {
    expect(isFault(result) && result.fault).toContain(words);
  });
});

describe('gaps', () => {
  test('22 hills of 3 seedlings, a tenth to spare', () => {
    expect(refillNeed({ expected: 250, present: 228, seedlingsPerHill: 3 })).toEqual({
      hills: 22,
      seedlings: 73,
      missingPercent: 8.8,
    });
  });

  test('whole spare does not grow by rounding', () => {
    expect(sure(refillNeed({ expected: 20, present: 10, seedlingsPerHill: 1 })).seedlings).toBe(11);
  });

  test.each([
    ['PhilRice', '2024-06-01', '2024-06-08', undefined],
    ['TNAU', '2024-06-08', '2024-06-11', undefined],
    ['RKMP-DRR', '2024-06-08', '2024-06-08', '2024-06-23'],
  ])('planted on 1 June, after %s', (name, from, to, againOn) => {
    expect(replantWindow('2024-06-01', rule(name))).toMatchObject({ rule: name, from, to, againOn });
  });

  test('the strictest closes first; a station may bring its own', () => {
    expect(strictestReplantWindow('2024-06-01')).toMatchObject({ to: '2024-06-08' });
    const own = { name: 'station', fromDays: 2, toDays: 5, source: 'station' };
    expect(strictestReplantWindow('2024-06-01', [...REPLANT_RULES, own])).toMatchObject({
      rule: 'station',
      to: '2024-06-06',
    });
    expect(strictestReplantWindow('2024-06-01', [])).toHaveProperty('fault');
  });
});

describe('20 % rule', () => {
  test.each([
    [0, true],
    [19.9, true],
    [20, false],
    [60, false],
  ])('%f % missing: harvest %s', (missing, harvest) => {
    expect(sure(harvestAreaVerdict(missing)).harvest).toBe(harvest);
  });
});

describe('surveys', () => {
  test('mean and spread of three frames', () => {
    expect(standSurvey([24, 26, 22])).toMatchObject({ n: 3, mean: 24, sd: 2, tooFew: false });
  });
  test('one frame has no spread and is too few', () => {
    expect(standSurvey([24])).toMatchObject({ mean: 24, se: null, tooFew: true });
    expect(standSurvey([])).toEqual({ fault: 'needs at least 1 counts, not 0' });
  });
  test('frames of a quarter of a square metre', () => {
    expect(standSurvey([6, 7, 5], 0.25)).toMatchObject({ mean: 24 });
  });
  test('plants along 2 m of row, 20 cm apart', () => {
    expect(plantsPerM2FromRow(40, 2, 20)).toBe(100);
  });
  test('more plants than seeds is shown, not hidden', () => {
    expect(establishmentPercent({ rateKgPerHa: 40, thousandGrainG: 25, plantsPerM2: 320 })).toBe(200);
  });
});
