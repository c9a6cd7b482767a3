import { type Fault, fault, firstFault, sure } from '../fault.ts';
import { extraterrestrialMJPerM2 } from './sun.ts';
import { latitude, temperature, yearDay } from './weather-limits.ts';

/** Water evaporated by one MJ, mm per MJ and m2 (FAO-56 eq. 20). */
export const MM_PER_MJ = 0.408;

/**
 * Reference evapotranspiration of a day, mm, from temperatures and the date alone: Hargreaves as in FAO-56 eq. 52. Tends
 * to be too low in wind and too high in damp air; the paper advises to hold it against measured days first.
 */
export function hargreavesMmPerDay(day: {
  latitudeDeg: number;
  dayOfYear: number;
  maxC: number;
  minC: number;
}): number | Fault {
  const wrong = firstFault(
    latitude(day.latitudeDeg),
    yearDay(day.dayOfYear),
    temperature(day.maxC, 'highest temperature'),
    temperature(day.minC, 'lowest temperature'),
  );
  if (wrong) return wrong;
  if (day.maxC < day.minC)
    return fault(`the highest temperature (${day.maxC} C) is below the lowest (${day.minC} C)`);
  const meanC = (day.maxC + day.minC) / 2;
  const aboveAirMm = MM_PER_MJ * sure(extraterrestrialMJPerM2(day.latitudeDeg, day.dayOfYear));
  return Math.max(0, 0.0023 * (meanC + 17.8) * Math.sqrt(day.maxC - day.minC) * aboveAirMm);
}
