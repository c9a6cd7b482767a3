/** From grass to rice: crop coefficients. FAO-56 Table 12 (read in an open data set that quotes it), eqs 58, 62, 66. */
import { above0, atLeast0, between, eachOf } from '../check-number.ts';
import { type Fault, firstFault } from '../fault.ts';

export const RICE_COEFFICIENTS = {
  initial: 1.05,
  mid: 1.2,
  /** Which of the two fits is the user's choice: ponded to the end, or drained before harvest (common practice). */
  endPonded: 0.9,
  endDrained: 0.6,
  heightM: 1,
  source: 'FAO-56 Table 12, rice',
} as const;

/** Water use of the crop, mm a day. Eq. 58. */
export function cropUseMmPerDay(referenceMmPerDay: number, coefficient: number): number | Fault {
  return (
    firstFault(
      between(referenceMmPerDay, 0, 20, 'reference evapotranspiration in mm a day'),
      between(coefficient, 0, 2, 'crop coefficient'),
    ) ?? referenceMmPerDay * coefficient
  );
}

/** A mid or end coefficient in other than mild damp weather. Holds for u2 1-6 m/s, humidity 20-80 %, height 0.1-10 m. Eq. 62. */
export function coefficientInClimate(
  coefficient: number,
  air: { windMPerS: number; minHumidityPercent: number; cropHeightM: number },
): number | Fault {
  const wrong = firstFault(
    between(coefficient, 0.45, 2, 'crop coefficient'),
    between(air.windMPerS, 1, 6, 'wind at 2 m in m/s'),
    between(air.minHumidityPercent, 20, 80, 'lowest humidity of the day in %'),
    between(air.cropHeightM, 0.1, 10, 'crop height in m'),
  );
  if (wrong) return wrong;
  const drier = 0.04 * (air.windMPerS - 2) - 0.004 * (air.minHumidityPercent - 45);
  return coefficient + drier * (air.cropHeightM / 3) ** 0.3;
}

export interface SeasonParts {
  initialDays: number;
  developmentDays: number;
  midDays: number;
  lateDays: number;
}

/** Coefficient on a day of the season (0 the first): level, rising, level, falling. Eq. 66. The lengths are the caller's. */
export function coefficientOnDay(
  day: number,
  parts: SeasonParts,
  level: { initial: number; mid: number; end: number },
): number | Fault {
  const { initialDays, developmentDays, midDays, lateDays } = parts;
  const season = initialDays + developmentDays + midDays + lateDays;
  const wrong = firstFault(
    eachOf([initialDays, developmentDays, midDays, lateDays], 4, 'season parts in days', atLeast0),
    above0(season, 'length of the season in days'),
    between(day, 0, season, 'day of the season'),
    eachOf([level.initial, level.mid, level.end], 3, 'crop coefficients', atLeast0),
  );
  if (wrong) return wrong;
  const intoRise = day - initialDays;
  const intoFall = intoRise - developmentDays - midDays;
  if (intoRise <= 0) return level.initial;
  if (intoRise < developmentDays) return onTheWay(level.initial, level.mid, intoRise / developmentDays);
  return intoFall <= 0 ? level.mid : onTheWay(level.mid, level.end, intoFall / lateDays);
}

const onTheWay = (from: number, to: number, share: number): number => from + (to - from) * share;
