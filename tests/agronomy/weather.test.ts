import { describe, expect, test } from 'vitest';
import { sure } from '../../src/agronomy/fault.ts';
import { coefficientOnDay } from '../../src/agronomy/weather/crop-coefficient.ts';
import { hourlyEvapotranspiration } from '../../src/agronomy/weather/hourly-evapotranspiration.ts';
import {
  type DayWeather,
  referenceEvapotranspiration,
} from '../../src/agronomy/weather/reference-evapotranspiration.ts';
import { daylightH } from '../../src/agronomy/weather/sun.ts';
import { degreeDaySum, thermalRuleWords } from '../../src/agronomy/weather/thermal-time.ts';

/** FAO-56 Example 18. */
const uccle: DayWeather = {
  latitudeDeg: 50.8,
  elevationM: 100,
  dayOfYear: 187,
  maxC: 21.5,
  minC: 12.3,
  moisture: { maxPercent: 84, minPercent: 63 },
  wind: { mPerS: 10 / 3.6, heightM: 10 },
  sun: { sunshineH: 9.25 },
};
const mm = (day: DayWeather) => sure(referenceEvapotranspiration(day)).mmPerDay;

describe('reference evapotranspiration', () => {
  test('wind taken as if measured at 2 m is the mistake seen in print: 3.97 instead of 3.88', () => {
    expect(mm(uccle)).toBeCloseTo(3.88, 2);
    expect(mm({ ...uccle, wind: { mPerS: 10 / 3.6, heightM: 2 } })).toBeCloseTo(3.97, 2);
  });

  test('mean humidity lowers it: 3.787 with longwave radiation worked out anew', () => {
    expect(mm({ ...uccle, moisture: { meanPercent: 73.5 } })).toBeCloseTo(3.787, 3);
  });

  test('what was filled in is named', () => {
    const { method, assumed } = sure(referenceEvapotranspiration({ ...uccle, wind: undefined }));
    expect({ method, assumed }).toEqual({ method: 'partly filled in', assumed: ['wind 2 m/s'] });
    expect(sure(referenceEvapotranspiration(uccle))).toMatchObject({ method: 'full record', assumed: [] });
    const bare = { ...uccle, wind: undefined, sun: undefined, moisture: undefined };
    expect(sure(referenceEvapotranspiration(bare))).toMatchObject({ method: 'temperatures only' });
  });

  test.each<[string, Partial<DayWeather>, RegExp]>([
    ['lowest above highest', { minC: 30 }, /below the lowest/],
    ['humidity of 140 %', { moisture: { meanPercent: 140 } }, /from 0 to 100/],
    ['more sun than day', { sun: { sunshineH: 20 } }, /more than the 16.1 h of daylight/],
    ['more radiation than above the air', { sun: { solarMJPerM2: 45 } }, /more than reaches the air/],
    ['vapour that air cannot hold', { moisture: { vapourKPa: 5 } }, /more than the air can hold/],
    ['latitude of 95', { latitudeDeg: 95 }, /latitude/],
    ['polar night', { latitudeDeg: 85, dayOfYear: 10 }, /does not rise/],
  ])('%s is refused in words', (_, change, words) => {
    expect(referenceEvapotranspiration({ ...uccle, ...change })).toEqual({
      fault: expect.stringMatching(words),
    });
  });

  test('an hour at night needs what the sky was like before sunset', () => {
    const night = {
      latitudeDeg: 16.2,
      longitudeDeg: -16.25,
      zoneLongitudeDeg: -15,
      elevationM: 8,
      dayOfYear: 274,
      middleH: 2.5,
      airC: 28,
      humidityPercent: 90,
      windMPerS: 1.9,
      solarMJPerM2: 0,
    };
    expect(hourlyEvapotranspiration(night)).toEqual({ fault: expect.stringContaining('before sunset') });
    expect(hourlyEvapotranspiration({ ...night, clearnessBeforeSunset: 0.8 })).toHaveProperty('mmPerHour');
  });

  test('the longest day ends at 24 h and the shortest at 0', () => {
    expect(daylightH(80, 172)).toBeCloseTo(24, 6);
    expect(daylightH(80, 355)).toBeCloseTo(0, 6);
  });
});

describe('crop coefficient through the season', () => {
  const parts = { initialDays: 30, developmentDays: 30, midDays: 40, lateDays: 20 };
  const level = { initial: 1.05, mid: 1.2, end: 0.6 };
  test.each([
    [0, 1.05],
    [30, 1.05],
    [45, 1.125],
    [60, 1.2],
    [100, 1.2],
    [110, 0.9],
    [120, 0.6],
  ])('day %i: %f', (day, expected) => {
    expect(coefficientOnDay(day, parts, level)).toBeCloseTo(expected, 9);
  });
  test('past the season there is none', () => {
    expect(coefficientOnDay(121, parts, level)).toHaveProperty('fault');
  });
});

describe('thermal time', () => {
  test('says by which rule, and that a cap is from memory', () => {
    expect(thermalRuleWords({ method: 1, baseC: 8 })).toBe('method 1, base 8 C, no cap');
    expect(thermalRuleWords({ method: 2, baseC: 8, capC: 30 })).toContain('from memory');
  });

  test('a bad day is named', () => {
    const days = [
      { maxC: 33, minC: 24 },
      { maxC: 20, minC: 25 },
    ];
    expect(degreeDaySum(days, { method: 1, baseC: 8 })).toEqual({ fault: expect.stringMatching(/^day 2: /) });
  });
});
