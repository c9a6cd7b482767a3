/**
 * Reference evapotranspiration of a day, mm: FAO-56 Penman-Monteith, eq. 6. Takes what the station has; what is missing
 * is filled in by the paper's own ways (chapter 3, Missing climatic data) and named in `assumed`.
 */
import { atLeast0, between } from '../check-number.ts';
import { type Fault, fault, firstFault, isFault, sure } from '../fault.ts';
import type { Sourced } from '../source.ts';
import {
  airPressureKPa,
  meanSaturationKPa,
  psychrometricKPaPerC,
  slopeKPaPerC,
  vapourFromDewPointKPa,
  vapourFromHumidityRangeKPa,
  vapourFromMeanHumidityKPa,
  windAt2mMPerS,
} from './air.ts';
import {
  clearSky,
  netLongwave,
  netShortwave,
  RANGE_COEFFICIENTS,
  solarFromSunshine,
  solarFromTemperatures,
} from './radiation.ts';
import { daylightH, extraterrestrialMJPerM2 } from './sun.ts';
import { elevation, latitude, radiation, temperature, vapour, wind, yearDay } from './weather-limits.ts';

export type AirMoisture =
  | { maxPercent: number; minPercent: number }
  | { meanPercent: number }
  | { dewPointC: number }
  | { vapourKPa: number };

export interface DayWeather {
  latitudeDeg: number;
  elevationM: number;
  dayOfYear: number;
  maxC: number;
  minC: number;
  moisture?: AirMoisture;
  /** Height matters: 10 km/h at 10 m is 2.08 m/s at 2 m. */
  wind?: { mPerS: number; heightM: number };
  sun?: { sunshineH: number } | { solarMJPerM2: number };
  /** 0 unless given: right for a day, not for a month. */
  soilHeatMJPerM2?: number;
  /** For days without a record of the sun: `inland` unless given. */
  site?: keyof typeof RANGE_COEFFICIENTS;
}

export interface ReferenceEvapotranspiration extends Sourced {
  mmPerDay: number;
  method: 'full record' | 'partly filled in' | 'temperatures only';
  /** In words, one for each thing that the station did not have. */
  assumed: string[];
  /** The paper's own symbols, so that each step can be looked up: MJ/m2 a day, kPa, kPa per C, m/s, hours. */
  steps: EvaporationSteps;
}

export interface EvaporationSteps {
  delta: number;
  gamma: number;
  pressure: number;
  es: number;
  ea: number;
  u2: number;
  daylightH: number;
  Ra: number;
  Rs: number;
  Rso: number;
  Rns: number;
  Rnl: number;
  Rn: number;
  G: number;
}

const SOURCE = 'Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage Paper 56, eq. 6';

export function referenceEvapotranspiration(day: DayWeather): ReferenceEvapotranspiration | Fault {
  const wrong = checked(day);
  if (wrong) return wrong;
  const ea = vapourOf(day);
  if (isFault(ea)) return ea;
  const es = sure(meanSaturationKPa(day.maxC, day.minC));
  if (ea > es * 1.05) return fault(`vapour pressure ${ea.toFixed(2)} kPa is more than the air can hold`);
  const Ra = sure(extraterrestrialMJPerM2(day.latitudeDeg, day.dayOfYear));
  if (Ra === 0) return fault('the sun does not rise there on that day');
  const Rs = solarOf(day, Ra);
  if (isFault(Rs)) return Rs;
  const Rso = sure(clearSky(Ra, day.elevationM));
  const Rns = sure(netShortwave(Rs));
  const Rnl = sure(netLongwave({ maxC: day.maxC, minC: day.minC, vapourKPa: ea, clearness: Rs / Rso }));
  const pressure = sure(airPressureKPa(day.elevationM));
  const steps: EvaporationSteps = {
    delta: sure(slopeKPaPerC((day.maxC + day.minC) / 2)),
    gamma: sure(psychrometricKPaPerC(pressure)),
    pressure,
    es,
    ea,
    u2: day.wind ? sure(windAt2mMPerS(day.wind.mPerS, day.wind.heightM)) : WORLD_MEAN_WIND_M_PER_S,
    daylightH: sure(daylightH(day.latitudeDeg, day.dayOfYear)),
    Ra,
    Rs,
    Rso,
    Rns,
    Rnl,
    Rn: Rns - Rnl,
    G: day.soilHeatMJPerM2 ?? 0,
  };
  return { mmPerDay: penmanMonteith(steps, day), ...fillings(day), steps, source: SOURCE };
}

/** FAO-56 chapter 3: the mean of some 2000 stations, used where nothing is known of the wind. */
const WORLD_MEAN_WIND_M_PER_S = 2;

/** Condensation on cold clear nights would come out below 0; it is no evapotranspiration. */
function penmanMonteith(steps: EvaporationSteps, day: DayWeather): number {
  const { delta, gamma, Rn, G, u2, es, ea } = steps;
  const meanC = (day.maxC + day.minC) / 2;
  const radiant = 0.408 * delta * (Rn - G);
  const drying = ((gamma * 900) / (meanC + 273)) * u2 * Math.max(0, es - ea);
  return Math.max(0, (radiant + drying) / (delta + gamma * (1 + 0.34 * u2)));
}

function fillings(day: DayWeather): Pick<ReferenceEvapotranspiration, 'method' | 'assumed'> {
  const assumed = [
    ...(day.moisture ? [] : ['dew point as the lowest temperature (eq. 48)']),
    ...(day.wind ? [] : ['wind 2 m/s']),
    ...(day.sun ? [] : [`sun from the range of temperature, kRs ${kRs(day)} (eq. 50)`]),
  ];
  const method =
    assumed.length === 0 ? 'full record' : assumed.length === 3 ? 'temperatures only' : 'partly filled in';
  return { method, assumed };
}

const kRs = (day: DayWeather): number => RANGE_COEFFICIENTS[day.site ?? 'inland'];

function solarOf(day: DayWeather, Ra: number): number | Fault {
  if (!day.sun) return solarFromTemperatures(day.maxC, day.minC, Ra, kRs(day));
  if ('solarMJPerM2' in day.sun) {
    const mj = day.sun.solarMJPerM2;
    const wrong = atLeast0(mj, 'solar radiation in MJ/m2');
    if (wrong) return wrong;
    return mj > Ra ? fault(`solar radiation ${mj} MJ/m2 is more than reaches the air, ${Ra.toFixed(1)}`) : mj;
  }
  return solarFromSunshine(day.sun.sunshineH, sure(daylightH(day.latitudeDeg, day.dayOfYear)), Ra);
}

function vapourOf(day: DayWeather): number | Fault {
  const { moisture, maxC, minC } = day;
  if (!moisture) return vapourFromDewPointKPa(minC);
  if ('maxPercent' in moisture) return vapourFromHumidityRangeKPa({ maxC, minC, ...moisture });
  if ('meanPercent' in moisture) return vapourFromMeanHumidityKPa(maxC, minC, moisture.meanPercent);
  if ('dewPointC' in moisture) return vapourFromDewPointKPa(moisture.dewPointC);
  return vapour(moisture.vapourKPa) ?? moisture.vapourKPa;
}

function checked(day: DayWeather): Fault | null {
  return (
    firstFault(
      latitude(day.latitudeDeg),
      elevation(day.elevationM),
      yearDay(day.dayOfYear),
      temperature(day.maxC, 'highest temperature'),
      temperature(day.minC, 'lowest temperature'),
      day.wind ? wind(day.wind.mPerS) : null,
      day.wind ? between(day.wind.heightM, 0.5, 200, 'height of the wind gauge in m') : null,
      radiation(day.soilHeatMJPerM2 ?? 0, 'heat into the soil'),
    ) ??
    (day.maxC < day.minC
      ? fault(`the highest temperature (${day.maxC} C) is below the lowest (${day.minC} C)`)
      : null)
  );
}
