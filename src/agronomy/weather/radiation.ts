/** From sunshine to the energy left for evaporation: FAO-56 eqs 35-45, 50. All amounts MJ per m2 and day unless named. */
import { above0, atLeast0, between } from '../check-number.ts';
import { type Fault, fault, firstFault } from '../fault.ts';
import { elevation, radiation, temperature, vapour } from './weather-limits.ts';

/** Stefan-Boltzmann constant, MJ per K4, m2 and day (FAO-56 eq. 39). */
const STEFAN_MJ_PER_K4_M2_DAY = 4.903e-9;
/** Reflected by the reference grass (FAO-56 eq. 38). */
const GRASS_ALBEDO = 0.23;

/** Solar radiation Rs from hours of sunshine. Eq. 35 with a = 0.25 and b = 0.50. */
export function solarFromSunshine(sunshineH: number, daylightH: number, aboveAir: number): number | Fault {
  const wrong = firstFault(
    atLeast0(sunshineH, 'sunshine in hours'),
    above0(daylightH, 'daylight in hours'),
    between(daylightH, 0, 24, 'daylight in hours'),
    radiation(aboveAir, 'radiation above the air'),
  );
  if (wrong) return wrong;
  if (sunshineH > daylightH + 0.5)
    return fault(`${sunshineH} h of sunshine is more than the ${daylightH.toFixed(1)} h of daylight`);
  return (0.25 + 0.5 * Math.min(1, sunshineH / daylightH)) * aboveAir;
}

/** kRs of eq. 50: how much of the daily range of temperature speaks for sun. */
export const RANGE_COEFFICIENTS = { inland: 0.16, coast: 0.19 } as const;

/** Solar radiation Rs from the daily range of temperature. Eq. 50. */
export function solarFromTemperatures(
  maxC: number,
  minC: number,
  aboveAir: number,
  kRs: number = RANGE_COEFFICIENTS.inland,
): number | Fault {
  const wrong = firstFault(
    temperature(maxC, 'highest temperature'),
    temperature(minC, 'lowest temperature'),
    radiation(aboveAir, 'radiation above the air'),
    between(kRs, 0.1, 0.25, 'kRs'),
  );
  if (wrong) return wrong;
  if (maxC < minC) return fault(`the highest temperature (${maxC} C) is below the lowest (${minC} C)`);
  return kRs * Math.sqrt(maxC - minC) * aboveAir;
}

/** Radiation under a clear sky Rso. Eq. 37. */
export function clearSky(aboveAir: number, elevationM: number): number | Fault {
  return (
    firstFault(radiation(aboveAir, 'radiation above the air'), elevation(elevationM)) ??
    (0.75 + 2e-5 * elevationM) * aboveAir
  );
}

/** What the grass keeps of the solar radiation Rns. Eq. 38. */
export function netShortwave(solar: number): number | Fault {
  return radiation(solar, 'solar radiation') ?? (1 - GRASS_ALBEDO) * solar;
}

/** What goes back to the sky as heat in a day Rnl. `clearness` is Rs/Rso, taken as 1 where more. Eq. 39. */
export function netLongwave(day: {
  maxC: number;
  minC: number;
  vapourKPa: number;
  clearness: number;
}): number | Fault {
  const wrong = firstFault(
    temperature(day.maxC, 'highest temperature'),
    temperature(day.minC, 'lowest temperature'),
    vapour(day.vapourKPa),
    atLeast0(day.clearness, 'Rs/Rso'),
  );
  if (wrong) return wrong;
  const kelvin4 = (kelvin(day.maxC) ** 4 + kelvin(day.minC) ** 4) / 2;
  return STEFAN_MJ_PER_K4_M2_DAY * kelvin4 * skyFactor(day.vapourKPa, day.clearness);
}

/** The same for one hour, MJ per m2 and hour. Eq. 39 with the constant over 24. */
export function netLongwaveOfHour(airC: number, vapourKPa: number, clearness: number): number | Fault {
  const wrong = firstFault(
    temperature(airC, 'air temperature'),
    vapour(vapourKPa),
    atLeast0(clearness, 'Rs/Rso'),
  );
  return wrong ?? (STEFAN_MJ_PER_K4_M2_DAY / 24) * kelvin(airC) ** 4 * skyFactor(vapourKPa, clearness);
}

/** Net radiation Rn. Eq. 40. */
export function netRadiation(netShort: number, netLong: number): number | Fault {
  return (
    firstFault(radiation(netShort, 'net shortwave'), radiation(netLong, 'net longwave')) ?? netShort - netLong
  );
}

/** Heat into the soil G in a month, from the means of the months before and after. Eq. 43. */
export function soilHeatOfMonth(previousC: number, nextC: number): number | Fault {
  return monthPair(previousC, nextC) ?? 0.07 * (nextC - previousC);
}

/** The same where the next month is not known yet: from the month before and the month itself. Eq. 44. */
export function soilHeatSinceLastMonth(previousC: number, thisC: number): number | Fault {
  return monthPair(previousC, thisC) ?? 0.14 * (thisC - previousC);
}

/** Heat into the soil in an hour: a tenth of net radiation by day, half by night. Eqs 45, 46. */
export function soilHeatOfHour(netRadiationMJ: number, sunIsUp: boolean): number | Fault {
  return radiation(netRadiationMJ, 'net radiation') ?? (sunIsUp ? 0.1 : 0.5) * netRadiationMJ;
}

function skyFactor(vapourKPa: number, clearness: number): number {
  return humidityPart(vapourKPa) * (1.35 * Math.min(1, clearness) - 0.35);
}

const humidityPart = (kPa: number): number => 0.34 - 0.14 * Math.sqrt(kPa);
const kelvin = (c: number): number => c + 273.16;

function monthPair(firstC: number, secondC: number): Fault | null {
  return firstFault(temperature(firstC, 'mean of a month'), temperature(secondC, 'mean of a month'));
}
