/** Reference evapotranspiration of an hour, mm: FAO-56 eq. 53. */
import { between } from '../check-number.ts';
import { type Fault, fault, firstFault, isFault, sure } from '../fault.ts';
import type { Sourced } from '../source.ts';
import { airPressureKPa, psychrometricKPaPerC, saturationKPa, slopeKPaPerC } from './air.ts';
import { clearSky, netLongwaveOfHour, netShortwave, soilHeatOfHour } from './radiation.ts';
import { type SunAtHour, sunOfHour } from './sun.ts';
import { elevation, humidity, temperature, wind } from './weather-limits.ts';

export interface HourWeather extends Omit<SunAtHour, 'lengthH'> {
  elevationM: number;
  airC: number;
  humidityPercent: number;
  /** At 2 m. */
  windMPerS: number;
  /** MJ per m2 and hour. */
  solarMJPerM2: number;
  /** Rs/Rso of the hours before sunset; needed while the sun is down, 0.4-0.8 damp to dry (FAO-56 chapter 4). */
  clearnessBeforeSunset?: number;
}

export interface HourlyEvapotranspiration extends Sourced {
  mmPerHour: number;
  steps: {
    delta: number;
    gamma: number;
    e0: number;
    ea: number;
    hourAngleRad: number;
    Ra: number;
    Rso: number;
    clearness: number;
    Rns: number;
    Rnl: number;
    Rn: number;
    G: number;
  };
}

const SOURCE = 'Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage Paper 56, eq. 53';

/** Night hours with dew come out a little below 0 and are left so, for sums over the day. */
export function hourlyEvapotranspiration(hour: HourWeather): HourlyEvapotranspiration | Fault {
  const wrong = checked(hour);
  if (wrong) return wrong;
  const sun = sunOfHour(hour);
  if (isFault(sun)) return sun;
  const Rso = sure(clearSky(sun.extraterrestrialMJPerM2, hour.elevationM));
  const clearness = sun.isUp && Rso > 0 ? hour.solarMJPerM2 / Rso : hour.clearnessBeforeSunset;
  if (clearness === undefined) return fault('the sun is down: Rs/Rso of the hours before sunset is needed');
  const e0 = sure(saturationKPa(hour.airC));
  const ea = (e0 * hour.humidityPercent) / 100;
  const Rns = sure(netShortwave(hour.solarMJPerM2));
  const Rnl = sure(netLongwaveOfHour(hour.airC, ea, clearness));
  const Rn = Rns - Rnl;
  const G = sure(soilHeatOfHour(Rn, sun.isUp));
  const delta = sure(slopeKPaPerC(hour.airC));
  const gamma = sure(psychrometricKPaPerC(sure(airPressureKPa(hour.elevationM))));
  const u2 = hour.windMPerS;
  const drying = ((gamma * 37) / (hour.airC + 273)) * u2 * (e0 - ea);
  const mmPerHour = (0.408 * delta * (Rn - G) + drying) / (delta + gamma * (1 + 0.34 * u2));
  const { hourAngleRad, extraterrestrialMJPerM2: Ra } = sun;
  const steps = { delta, gamma, e0, ea, hourAngleRad, Ra, Rso, clearness, Rns, Rnl, Rn, G };
  return { mmPerHour, steps, source: SOURCE };
}

function checked(hour: HourWeather): Fault | null {
  return firstFault(
    elevation(hour.elevationM),
    temperature(hour.airC, 'air temperature'),
    humidity(hour.humidityPercent, 'humidity'),
    wind(hour.windMPerS),
    between(hour.solarMJPerM2, 0, 6, 'solar radiation in MJ/m2 an hour'),
    between(hour.clearnessBeforeSunset ?? 0.5, 0, 1, 'Rs/Rso before sunset'),
  );
}
