import { describe, expect, test } from 'vitest';
import { sure } from '../../src/agronomy/fault.ts';
import {
  METER_THRESHOLDS,
  meterReading,
  sufficiencyPercent,
} from '../../src/agronomy/nutrients/chlorophyll-meter.ts';
import { agronomicEfficiency } from '../../src/agronomy/nutrients/efficiency.ts';
import { LEAF_COLOUR_RULES, leafColourSuggestion } from '../../src/agronomy/nutrients/leaf-colour.ts';
import { bagsFor, portionG, stripPortions } from '../../src/agronomy/nutrients/portion.ts';
import { FERTILISERS, fertiliser } from '../../src/agronomy/nutrients/products.ts';
import { productsForTargets } from '../../src/agronomy/nutrients/products-for-targets.ts';
import { PRINTED_N_KG_PER_HA, siteSpecificNKgPerHa } from '../../src/agronomy/nutrients/site-specific-n.ts';
import { SPLIT_TIMES, splitRate } from '../../src/agronomy/nutrients/splits.ts';

const urea = sure(fertiliser('urea'));
const dap = sure(fertiliser('DAP'));
const potash = sure(fertiliser('muriate of potash'));

describe('products', () => {
  test('are found by every name', () => {
    for (const { name, alsoCalled } of FERTILISERS)
      for (const called of [name, ...alsoCalled])
        expect(fertiliser(called.toUpperCase())).toMatchObject({ name });
  });
  test('an unknown one asks for its percentages', () => {
    expect(fertiliser('moon dust')).toEqual({ fault: expect.stringContaining('percentages') });
  });
  test('nitrogen that comes along beyond the target is shown', () => {
    const shares = sure(
      productsForTargets(
        { nKgPerHa: 10, p2o5KgPerHa: 46, k2oKgPerHa: 0 },
        { nitrogen: urea, phosphorus: dap, potassium: potash },
      ),
    );
    expect(shares).toMatchObject({ nitrogenProductKgPerHa: 0, nOverKgPerHa: 8 });
  });
  test('a compound in the place of a straight product is refused', () => {
    const targets = { nKgPerHa: 90, p2o5KgPerHa: 46, k2oKgPerHa: 30 };
    expect(productsForTargets(targets, { nitrogen: dap, phosphorus: dap, potassium: potash })).toHaveProperty(
      'fault',
    );
    expect(productsForTargets(targets, { nitrogen: urea, phosphorus: urea, potassium: potash })).toEqual({
      fault: 'P2O5 in urea in % must be more than 0, not 0',
    });
  });
});

describe('portions', () => {
  test('65.2 kg/ha of urea on a plot of 100 m2 in four strips', () => {
    expect(portionG(65.2, 100)).toBeCloseTo(652, 9);
    expect(sure(stripPortions(65.2, 100, 4)).eachG).toBeCloseTo(163, 9);
  });
  test.each([
    [100, 10_000, 50, 2, 0],
    [100, 12_500, 50, 2, 25],
    [65, 2000, 50, 0, 13],
    [3, 1000, 0.1, 3, 0],
  ])('%f kg/ha on %f m2 in bags of %f kg: %i bags and %f kg', (rate, area, bag, full, rest) => {
    const bags = sure(bagsFor(rate, area, bag));
    expect(bags.full).toBe(full);
    expect(bags.restKg).toBeCloseTo(rest, 6);
  });
});

describe('splits', () => {
  test('a third, a third, a third of 90 kg', () => {
    const parts = ['early', 'tillering', 'panicle initiation'].map((when) => ({
      when,
      sharePercent: 100 / 3,
    }));
    expect(sure(splitRate(90, parts)).map(({ rateKgPerHa }) => Math.round(rateKgPerHa))).toEqual([
      30, 30, 30,
    ]);
  });
  test('shares that do not add up are refused', () => {
    expect(splitRate(90, [{ when: 'early', sharePercent: 60 }])).toEqual({
      fault: 'the shares add up to 60 %, not to 100 %',
    });
  });
  test('their times are marked as common practice', () => {
    expect(SPLIT_TIMES.every(({ unconfirmed }) => unconfirmed)).toBe(true);
  });
});

describe('site-specific nitrogen', () => {
  test('the quotient is calculated; printed cells lie at or below it, never by more than 5 kg', () => {
    for (const [response, cells] of Object.entries(PRINTED_N_KG_PER_HA))
      for (const [index, printed] of cells.entries()) {
        if (printed === null) continue;
        const exact = sure(siteSpecificNKgPerHa(Number(response), [15, 18, 20, 25][index]!));
        expect(exact - printed).toBeGreaterThanOrEqual(0);
        expect(exact - printed).toBeLessThanOrEqual(5);
      }
  });
});

describe('leaf colour and chlorophyll', () => {
  const hybrids = LEAF_COLOUR_RULES[2]!;
  test('below the critical value the rule suggests its rate and names its chart', () => {
    expect(leafColourSuggestion([3, 3.5, 3, 4, 3, 3.5, 3, 3, 3.5, 3], hybrids)).toMatchObject({
      mean: 3.25,
      suggestedNKgPerHa: 35,
      remarks: ['holds for a chart with six shades'],
      source: expect.stringContaining('Sudhalakshmi'),
    });
  });
  test('at the critical value nothing is due; few readings are said', () => {
    expect(leafColourSuggestion([4, 4], hybrids)).toMatchObject({
      belowCritical: false,
      suggestedNKgPerHa: null,
      remarks: [expect.anything(), 'only 2 of 10 hills were read'],
    });
  });
  test('thirds of a shade and shade 9 are no readings', () => {
    expect(leafColourSuggestion([3.3], hybrids)).toEqual({ fault: expect.stringContaining('halves') });
    expect(leafColourSuggestion([9], hybrids)).toHaveProperty('fault');
  });
  test('35 carries that it is from memory', () => {
    expect(meterReading([33, 34], METER_THRESHOLDS[0]!)).toMatchObject({
      belowThreshold: true,
      unconfirmed: true,
    });
  });
  test('against a reference strip', () => {
    expect(sufficiencyPercent([36], [40])).toBe(90);
  });
});

test('a fertilised plot that gave less has an efficiency below 0', () => {
  expect(agronomicEfficiency(4000, 4300, 100)).toBe(-3);
});
