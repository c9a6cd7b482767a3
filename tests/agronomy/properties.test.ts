/** What must hold for all values, not only for the published ones. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sure } from '../../src/agronomy/fault.ts';
import { geodesicArea } from '../../src/agronomy/geometry/geodesic-area.ts';
import { weightAt14, weightAtMoisture } from '../../src/agronomy/harvest/moisture.ts';
import { k2oFromKKg, kFromK2oKg, p2o5FromPKg, pFromP2o5Kg } from '../../src/agronomy/nutrients/oxides.ts';
import { portionG, rateFromPortionKgPerHa } from '../../src/agronomy/nutrients/portion.ts';
import { nutrientFromProductKg, productFromNutrientKg } from '../../src/agronomy/nutrients/product-rate.ts';
import { sesScore } from '../../src/agronomy/pests/ses-score.ts';
import {
  seasonDamageFromRipeningCount,
  yieldLossFromRipeningCount,
} from '../../src/agronomy/rodents/yield-loss-from-rats.ts';
import { hillsPerM2 } from '../../src/agronomy/stand/hills.ts';
import { blockAnalysis } from '../../src/agronomy/statistics/block-analysis.ts';
import { fCritical, fUpperP, tCritical, tTwoSidedP } from '../../src/agronomy/statistics/distributions.ts';
import { pairedTTest } from '../../src/agronomy/statistics/t-tests.ts';
import { TRANSFORMATIONS } from '../../src/agronomy/statistics/transformations.ts';
import { depthFromVolumeMm, volumeFromDepthM3 } from '../../src/agronomy/water/depth-volume.ts';
import { dropSplit } from '../../src/agronomy/water/drop-split.ts';
import { type WaterDay, waterLedger } from '../../src/agronomy/water/water-ledger.ts';
import { referenceEvapotranspiration } from '../../src/agronomy/weather/reference-evapotranspiration.ts';
import { degreeDays } from '../../src/agronomy/weather/thermal-time.ts';
import { sprayVolumeLPerHa } from '../../src/agronomy/weeds/sprayer.ts';

const from = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const holds = <T extends unknown[]>(
  values: { [K in keyof T]: fc.Arbitrary<T[K]> },
  check: (...given: T) => void,
) => fc.assert(fc.property(...(values as [fc.Arbitrary<unknown>]), check as (...given: unknown[]) => void));

describe('there and back', () => {
  test('grain weight to 14 % moisture', () => {
    holds([from(0, 1e4), from(5, 40)], (kg: number, moisture: number) => {
      expect(sure(weightAtMoisture(sure(weightAt14(kg, moisture)), moisture))).toBeCloseTo(kg, 6);
    });
  });

  test('depth of water and volume', () => {
    holds([from(0, 2000), from(1, 1e6)], (mm: number, m2: number) => {
      expect(sure(depthFromVolumeMm(sure(volumeFromDepthM3(mm, m2)), m2))).toBeCloseTo(mm, 6);
    });
  });

  test('nutrient and product', () => {
    holds([from(0, 1000), from(1, 100)], (kg: number, percent: number) => {
      expect(sure(nutrientFromProductKg(sure(productFromNutrientKg(kg, percent)), percent))).toBeCloseTo(
        kg,
        6,
      );
    });
  });

  test('rate and weighed portion', () => {
    holds([from(0, 1000), from(1, 1e5)], (rate: number, m2: number) => {
      expect(sure(rateFromPortionKgPerHa(sure(portionG(rate, m2)), m2))).toBeCloseTo(rate, 6);
    });
  });

  test('oxide and element', () => {
    holds([from(0, 1000)], (kg: number) => {
      expect(sure(p2o5FromPKg(sure(pFromP2o5Kg(kg))))).toBeCloseTo(kg, 8);
      expect(sure(k2oFromKKg(sure(kFromK2oKg(kg))))).toBeCloseTo(kg, 8);
    });
  });

  test.each(TRANSFORMATIONS)('$name', ({ apply, back }) => {
    holds([from(0, 100)], (value: number) => {
      expect(sure(back(sure(apply(value))))).toBeCloseTo(value, 6);
    });
  });

  test('t and F and their chances', () => {
    holds([from(0.001, 0.5), from(1, 200), from(1, 200)], (p: number, df1: number, df2: number) => {
      expect(sure(tTwoSidedP(sure(tCritical(p, df1)), df1))).toBeCloseTo(p, 9);
      expect(sure(fUpperP(sure(fCritical(p, df1, df2)), df1, df2))).toBeCloseTo(p, 9);
    });
  });
});

describe('more of one is more, or less, of the other', () => {
  test('method 1 never gives more degree days than method 2, without a cap', () => {
    holds([from(-20, 35), from(0, 24), from(0, 15)], (minC: number, range: number, baseC: number) => {
      const day = { maxC: minC + range, minC };
      const [one, two] = [1, 2].map((method) => sure(degreeDays(day, { method: method as 1 | 2, baseC })));
      expect(one).toBeLessThanOrEqual(two! + 1e-9);
    });
  });

  test('both methods are one where nights stay above the base', () => {
    holds([from(12, 30), from(0, 20)], (minC: number, range: number) => {
      const day = { maxC: minC + range, minC };
      expect(sure(degreeDays(day, { method: 1, baseC: 10 }))).toBeCloseTo(
        sure(degreeDays(day, { method: 2, baseC: 10 })),
        9,
      );
    });
  });

  test('wider spacing, fewer hills', () => {
    holds([from(5, 100), from(3, 100), from(0.1, 50)], (rowCm: number, hillCm: number, wider: number) => {
      const hills = sure(hillsPerM2({ rowCm, hillCm }));
      expect(sure(hillsPerM2({ rowCm: rowCm + wider, hillCm }))).toBeLessThan(hills);
    });
  });

  test('wetter grain is less grain', () => {
    holds([from(0.1, 100), from(5, 35), from(0.1, 5)], (kg: number, moisture: number, wetter: number) => {
      expect(sure(weightAt14(kg, moisture + wetter))).toBeLessThan(sure(weightAt14(kg, moisture)));
    });
  });

  test('faster walking, less spray', () => {
    holds(
      [from(0.1, 5), from(0.2, 3), from(0.5, 5), from(0.1, 3)],
      (flow: number, swath: number, pace: number, by: number) => {
        expect(sure(sprayVolumeLPerHa(flow, swath, pace + by))).toBeLessThan(
          sure(sprayVolumeLPerHa(flow, swath, pace)),
        );
      },
    );
  });

  test('more wind in dry air evaporates more', () => {
    holds([from(0, 4), from(0.5, 5)], (mPerS: number, more: number) => {
      const mm = (wind: number) =>
        sure(
          referenceEvapotranspiration({
            latitudeDeg: 14,
            elevationM: 20,
            dayOfYear: 105,
            maxC: 36,
            minC: 24,
            moisture: { meanPercent: 30 },
            wind: { mPerS: wind, heightM: 2 },
            sun: { sunshineH: 8 },
          }),
        ).mmPerDay;
      expect(mm(mPerS + more)).toBeGreaterThan(mm(mPerS));
    });
  });

  test.each([
    'dead heart',
    'whitehead',
    'leaffolder',
    'brown spot',
    'false smut',
    'sheath blight',
    'panicle blast',
  ])('more %s never scores lower', (trait) => {
    holds([from(0, 100), from(0, 100)], (a: number, b: number) => {
      const [low, high] = [Math.min(a, b), Math.max(a, b)];
      expect(sure(sesScore(trait, low)).score).toBeLessThanOrEqual(sure(sesScore(trait, high)).score);
    });
  });

  test('every whole percentage of those traits has a score', () => {
    for (const trait of [
      'dead heart',
      'whitehead',
      'leaffolder',
      'brown spot',
      'false smut',
      'sheath blight',
      'panicle blast',
    ])
      for (let percent = 0; percent <= 100; percent++)
        expect(sesScore(trait, percent)).toHaveProperty('score');
  });

  test('the two rat figures differ by their own factors', () => {
    holds([from(0, 12)], (percent: number) => {
      expect(sure(seasonDamageFromRipeningCount(percent))).toBeCloseTo(percent * 6.5, 9);
      expect(sure(yieldLossFromRipeningCount(percent)).lossPercent).toBeCloseTo(percent * 4.2, 9);
    });
  });
});

describe('sums close', () => {
  test('water in is water out and what stands', () => {
    const day = fc.record({
      irrigationMm: from(0, 60),
      rainMm: from(0, 120),
      cropUseMm: from(0, 10),
      lossMm: from(0, 30),
      drainedMm: from(0, 20),
    });
    holds(
      [from(-50, 80), from(0, 150), fc.array(day, { minLength: 1, maxLength: 28 })],
      (start: number, spill: number, days: Omit<WaterDay, 'on'>[]) => {
        const dated = days.map((one, index) => ({
          on: `2024-02-${String(index + 1).padStart(2, '0')}`,
          ...one,
        }));
        const { days: closed, totals } = sure(waterLedger(start, spill, dated));
        const out = totals.cropUseMm + totals.lossMm + totals.drainedMm + totals.ranOverMm;
        expect(start + totals.irrigationMm + totals.rainMm - out).toBeCloseTo(closed.at(-1)!.depthMm, 6);
        expect(Math.max(...closed.map(({ depthMm }) => depthMm))).toBeLessThanOrEqual(spill + 1e-9);
      },
    );
  });

  test('a drop is crop use and loss', () => {
    holds(
      [from(0, 200), from(0, 200), from(0.1, 30), from(0, 12)],
      (startMm: number, endMm: number, days: number, cropUseMmPerDay: number) => {
        const { totalMm, cropUseMm, lossMm } = sure(dropSplit({ startMm, endMm, days, cropUseMmPerDay }));
        expect(cropUseMm + lossMm).toBeCloseTo(totalMm, 9);
      },
    );
  });

  test('blocks, treatments and error add up to the total; order of plots does not matter', () => {
    holds([fc.array(from(1, 1000), { minLength: 12, maxLength: 12 })], (values: number[]) => {
      const plots = values.map((value, index) => ({
        treatment: `T${index % 3}`,
        block: `B${Math.floor(index / 3)}`,
        value,
      }));
      const analysis = blockAnalysis(plots);
      if ('fault' in analysis) return;
      const { blocks, treatments, error, total } = analysis;
      expect(blocks.ss + treatments.ss + error.ss).toBeCloseTo(total.ss, 3);
      expect(blocks.df + treatments.df + error.df).toBe(total.df);
      expect(sure(blockAnalysis([...plots].reverse())).treatments.f).toBeCloseTo(treatments.f, 4);
    });
  });

  test('exchanging the two sides of a paired test turns its sign', () => {
    holds(
      [
        fc.array(from(1, 100), { minLength: 5, maxLength: 5 }),
        fc.array(from(1, 100), { minLength: 5, maxLength: 5 }),
      ],
      (a: number[], b: number[]) => {
        const [there, back] = [pairedTTest(a, b), pairedTTest(b, a)];
        if ('fault' in there || 'fault' in back) return;
        expect(back.t).toBeCloseTo(-there.t, 6);
        expect(back.p).toBeCloseTo(there.p, 9);
      },
    );
  });

  test('an outline has one area whichever way round and wherever begun', () => {
    holds(
      [from(-60, 60), from(-170, 170), from(1e-4, 0.01), from(1e-4, 0.01)],
      (latitude: number, longitude: number, up: number, across: number) => {
        const corners = [
          { latitude, longitude },
          { latitude, longitude: longitude + across },
          { latitude: latitude + up, longitude: longitude + across },
          { latitude: latitude + up, longitude },
        ];
        const area = sure(geodesicArea(corners)).areaM2;
        expect(area).toBeGreaterThan(0);
        expect(sure(geodesicArea([...corners].reverse())).areaM2 / area).toBeCloseTo(1, 6);
        expect(sure(geodesicArea([...corners.slice(1), corners[0]!])).areaM2 / area).toBeCloseTo(1, 6);
      },
    );
  });
});
