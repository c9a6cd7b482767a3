/** What weather can be on a rice farm; outside it the instrument or the typing is wrong. Limits: common practice. */
import { between } from '../check-number.ts';
import type { Fault } from '../fault.ts';

export const temperature = (celsius: number, what: string): Fault | null =>
  between(celsius, -60, 60, `${what} in C`);
export const humidity = (percent: number, what: string): Fault | null =>
  between(percent, 0, 100, `${what} in %`);
export const vapour = (kPa: number): Fault | null => between(kPa, 0, 20, 'vapour pressure in kPa');
export const latitude = (deg: number): Fault | null => between(deg, -90, 90, 'latitude in degrees');
export const longitude = (deg: number, what = 'longitude'): Fault | null =>
  between(deg, -180, 180, `${what} in degrees, east positive`);
export const elevation = (m: number): Fault | null => between(m, -430, 9000, 'height above sea in m');
export const yearDay = (day: number): Fault | null => between(day, 1, 366, 'day of the year');
export const wind = (mPerS: number): Fault | null => between(mPerS, 0, 60, 'wind in m/s');
/** Nothing at the ground gets more than about 50 MJ/m2 a day. */
export const radiation = (mj: number, what: string): Fault | null => between(mj, -20, 60, `${what} in MJ/m2`);
