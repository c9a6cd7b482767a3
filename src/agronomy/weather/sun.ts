/** Where the sun stands and what reaches the top of the air: FAO-56 eqs 21-34. Angles in radians unless named. */
import { between } from '../check-number.ts';
import { type Fault, firstFault, sure } from '../fault.ts';
import { latitude, longitude, yearDay } from './weather-limits.ts';

/** Solar constant, MJ per m2 and minute (FAO-56 eq. 21). */
const SOLAR_MJ_PER_M2_MIN = 0.082;

/** Inverse relative distance of the earth from the sun, dr. Eq. 23. */
export function sunDistance(dayOfYear: number): number | Fault {
  return yearDay(dayOfYear) ?? 1 + 0.033 * Math.cos((2 * Math.PI * dayOfYear) / 365);
}

/** Solar declination. Eq. 24. */
export function declinationRad(dayOfYear: number): number | Fault {
  return yearDay(dayOfYear) ?? 0.409 * Math.sin((2 * Math.PI * dayOfYear) / 365 - 1.39);
}

/** Sunset hour angle; 0 in the polar night and pi under the midnight sun. Eq. 25. */
export function sunsetAngleRad(latitudeDeg: number, dayOfYear: number): number | Fault {
  const wrong = firstFault(latitude(latitudeDeg), yearDay(dayOfYear));
  if (wrong) return wrong;
  const cosine = -Math.tan(rad(latitudeDeg)) * Math.tan(sure(declinationRad(dayOfYear)));
  return Math.acos(Math.min(1, Math.max(-1, cosine)));
}

/** Longest possible sunshine N, hours. Eq. 34. */
export function daylightH(latitudeDeg: number, dayOfYear: number): number | Fault {
  const wrong = firstFault(latitude(latitudeDeg), yearDay(dayOfYear));
  return wrong ?? (24 / Math.PI) * sure(sunsetAngleRad(latitudeDeg, dayOfYear));
}

/** Radiation above the air in a day Ra, MJ per m2. Eq. 21. */
export function extraterrestrialMJPerM2(latitudeDeg: number, dayOfYear: number): number | Fault {
  const wrong = firstFault(latitude(latitudeDeg), yearDay(dayOfYear));
  if (wrong) return wrong;
  const sunset = sure(sunsetAngleRad(latitudeDeg, dayOfYear));
  return throughAngles(latitudeDeg, dayOfYear, -sunset, sunset);
}

export interface SunAtHour {
  latitudeDeg: number;
  /** East positive. */
  longitudeDeg: number;
  /** Meridian of the clock's time zone, east positive: 15 degrees an hour from Greenwich. */
  zoneLongitudeDeg: number;
  dayOfYear: number;
  /** Clock time at the middle of the period in hours: 14.5 for 14 to 15 h. */
  middleH: number;
  /** Length of the period in hours; 1 unless given. */
  lengthH?: number;
}

export interface SunOfHour {
  /** Hour angle at the middle; 0 when the sun stands highest. Eq. 31. */
  hourAngleRad: number;
  /** Eqs 28-30; 0 when the sun is down at the middle of the period. */
  extraterrestrialMJPerM2: number;
  isUp: boolean;
}

/** The sun within an hour or less. */
export function sunOfHour(at: SunAtHour): SunOfHour | Fault {
  const lengthH = at.lengthH ?? 1;
  const wrong = firstFault(
    latitude(at.latitudeDeg),
    longitude(at.longitudeDeg),
    longitude(at.zoneLongitudeDeg, 'meridian of the time zone'),
    yearDay(at.dayOfYear),
    between(at.middleH, 0, 24, 'hour of the day'),
    between(lengthH, 0.01, 1, 'length of the period in hours'),
  );
  if (wrong) return wrong;
  const hoursFromNoon =
    at.middleH + (at.longitudeDeg - at.zoneLongitudeDeg) / 15 + seasonalCorrectionH(at.dayOfYear) - 12;
  const hourAngleRad = wrapped((Math.PI / 12) * hoursFromNoon);
  const sunset = sure(sunsetAngleRad(at.latitudeDeg, at.dayOfYear));
  const isUp = Math.abs(hourAngleRad) < sunset;
  const half = (Math.PI * lengthH) / 24;
  const from = Math.max(-sunset, hourAngleRad - half);
  const to = Math.min(sunset, hourAngleRad + half);
  const mj = isUp ? throughAngles(at.latitudeDeg, at.dayOfYear, from, to) : 0;
  return { hourAngleRad, extraterrestrialMJPerM2: mj, isUp };
}

/** Eqs 32, 33. */
function seasonalCorrectionH(dayOfYear: number): number {
  const b = (2 * Math.PI * (dayOfYear - 81)) / 364;
  return 0.1645 * Math.sin(2 * b) - 0.1255 * Math.cos(b) - 0.025 * Math.sin(b);
}

function throughAngles(latitudeDeg: number, dayOfYear: number, from: number, to: number): number {
  const declination = sure(declinationRad(dayOfYear));
  const phi = rad(latitudeDeg);
  const upright = (to - from) * Math.sin(phi) * Math.sin(declination);
  const slanting = Math.cos(phi) * Math.cos(declination) * (Math.sin(to) - Math.sin(from));
  const minutes = (12 * 60) / Math.PI;
  return Math.max(0, minutes * SOLAR_MJ_PER_M2_MIN * sure(sunDistance(dayOfYear)) * (upright + slanting));
}

function wrapped(angle: number): number {
  const turn = 2 * Math.PI;
  return angle - turn * Math.round(angle / turn);
}

const rad = (deg: number): number => (deg * Math.PI) / 180;
