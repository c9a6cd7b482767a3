/**
 * What the air is like: pressure, vapour, wind at 2 m. Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage
 * Paper 56 (FAO-56 below), chapter 3; equation numbers beside each. Temperatures in C, pressures in kPa.
 */
import { between } from '../check-number.ts';
import { type Fault, fault, firstFault, sure } from '../fault.ts';
import { elevation, humidity, temperature, wind } from './weather-limits.ts';

/** Mean pressure of the air at a height above sea. Eq. 7. */
export function airPressureKPa(elevationM: number): number | Fault {
  return elevation(elevationM) ?? 101.3 * ((293 - 0.0065 * elevationM) / 293) ** 5.26;
}

/** Psychrometric constant gamma, kPa per C. Eq. 8. */
export function psychrometricKPaPerC(pressureKPa: number): number | Fault {
  return between(pressureKPa, 20, 120, 'air pressure in kPa') ?? 0.000665 * pressureKPa;
}

/** Saturation vapour pressure e0. Eq. 11. */
export function saturationKPa(airC: number): number | Fault {
  return temperature(airC, 'air temperature') ?? 0.6108 * Math.exp((17.27 * airC) / (airC + 237.3));
}

/** Mean saturation vapour pressure of a day es: of the two extremes, never of their mean. Eq. 12. */
export function meanSaturationKPa(maxC: number, minC: number): number | Fault {
  return maxAboveMin(maxC, minC, temperature) ?? (sure(saturationKPa(maxC)) + sure(saturationKPa(minC))) / 2;
}

/** Slope of the saturation curve delta, kPa per C. Eq. 13. */
export function slopeKPaPerC(airC: number): number | Fault {
  return temperature(airC, 'air temperature') ?? (4098 * sure(saturationKPa(airC))) / (airC + 237.3) ** 2;
}

/** Vapour pressure from the dew point. Eq. 14. */
export const vapourFromDewPointKPa = (dewPointC: number): number | Fault => saturationKPa(dewPointC);

/** Vapour pressure from a ventilated psychrometer (Assmann type, 0.000662 per C). Eqs 15, 16. */
export function vapourFromPsychrometerKPa(dryC: number, wetC: number, pressureKPa: number): number | Fault {
  const wrong = firstFault(
    temperature(dryC, 'dry bulb'),
    temperature(wetC, 'wet bulb'),
    between(pressureKPa, 20, 120, 'air pressure in kPa'),
  );
  if (wrong) return wrong;
  if (wetC > dryC) return fault(`the wet bulb (${wetC} C) cannot be warmer than the dry one (${dryC} C)`);
  const kPa = sure(saturationKPa(wetC)) - 0.000662 * pressureKPa * (dryC - wetC);
  return kPa < 0 ? fault('the wet bulb is too far below the dry one for any air') : kPa;
}

/** Vapour pressure from the highest and lowest humidity of the day; to be preferred. Eq. 17. */
export function vapourFromHumidityRangeKPa(day: {
  maxC: number;
  minC: number;
  maxPercent: number;
  minPercent: number;
}): number | Fault {
  const wrong =
    maxAboveMin(day.maxC, day.minC, temperature) ?? maxAboveMin(day.maxPercent, day.minPercent, humidity);
  if (wrong) return wrong;
  const atNight = (sure(saturationKPa(day.minC)) * day.maxPercent) / 100;
  const byDay = (sure(saturationKPa(day.maxC)) * day.minPercent) / 100;
  return (atNight + byDay) / 2;
}

/** Vapour pressure from mean humidity only: a shortcut that lowers evapotranspiration somewhat. Eq. 19. */
export function vapourFromMeanHumidityKPa(maxC: number, minC: number, meanPercent: number): number | Fault {
  return (
    firstFault(maxAboveMin(maxC, minC, temperature), humidity(meanPercent, 'mean humidity')) ??
    (sure(meanSaturationKPa(maxC, minC)) * meanPercent) / 100
  );
}

/** Wind at 2 m from wind at another height over short grass. Eq. 47. */
export function windAt2mMPerS(mPerS: number, heightM: number): number | Fault {
  return (
    firstFault(wind(mPerS), between(heightM, 0.5, 200, 'height of the wind gauge in m')) ??
    (mPerS * 4.87) / Math.log(67.8 * heightM - 5.42)
  );
}

function maxAboveMin(
  max: number,
  min: number,
  check: (value: number, what: string) => Fault | null,
): Fault | null {
  return (
    firstFault(check(max, 'highest of the day'), check(min, 'lowest of the day')) ??
    (max < min ? fault(`the highest of the day (${max}) is below the lowest (${min})`) : null)
  );
}
