/** Hours of weeding, and hand weeding held against going to the spots only. */
import { above0, atLeast0, between } from '../check-number.ts';
import { type Fault, firstFault, isFault } from '../fault.ts';
import type { Sourced } from '../source.ts';

/** The decimal of South Asia, m2 (1/100 acre). */
export const DECIMAL_M2 = 40.4686;

export interface WeedingRate extends Sourced {
  how: string;
  hoursPerHa: number;
}

/** A station's own hours go before these. */
export const WEEDING_RATES: readonly WeedingRate[] = [
  {
    how: 'by hand',
    hoursPerHa: 200,
    source: 'from 0.04 ha/h by machine being 8 times as fast (power-weeder study, Sri Lanka)',
  },
  { how: 'push weeder, slow', hoursPerHa: 71, source: 'Burkina Faso, 0.014 ha/h' },
  { how: 'push weeder, fast', hoursPerHa: 42, source: 'Burkina Faso, 0.024 ha/h' },
  {
    how: 'push weeder, 8 h days',
    hoursPerHa: 26.7,
    source: 'Ahiduzzaman et al. 2006, 74 decimal a man-day; the 8 h are ours',
    unconfirmed: true,
  },
];

/** Hours for one hectare from the hectares of one hour. */
export function hoursPerHa(haPerHour: number): number | Fault {
  return above0(haPerHour, 'ha an hour') ?? 1 / haPerHour;
}

/** Person-days for a hectare from what one person does in a day. */
export function personDaysPerHa(m2PerDay: number): number | Fault {
  return above0(m2PerDay, 'm2 a day') ?? 10_000 / m2PerDay;
}

/** Person-hours for an area. */
export function weedingHours(areaM2: number, hoursEachHa: number): number | Fault {
  return (
    firstFault(above0(areaM2, 'area in m2'), above0(hoursEachHa, 'hours a hectare')) ??
    (areaM2 * hoursEachHa) / 10_000
  );
}

export interface SpotWork {
  areaM2: number;
  /** Share of the plot where weeds stand, %. */
  infestedPercent: number;
  /** Of the spots themselves. */
  hoursPerHaOfSpots: number;
  /** For finding them: width looked over and pace. */
  swathM: number;
  walkKmPerH: number;
}

export interface WeedingChoice {
  handHours: number;
  spotHours: number;
  /** By hours alone; cost, herbicide and treatment are not weighed. */
  fewerHours: 'hand weeding' | 'spot treatment';
}

/** Whole plot by hand against walking it and treating the infested share. All rates are the caller's. */
export function weedingChoice(spot: SpotWork, handHoursPerHa: number): WeedingChoice | Fault {
  const handHours = weedingHours(spot.areaM2, handHoursPerHa);
  if (isFault(handHours)) return handHours;
  const wrong = firstFault(
    between(spot.infestedPercent, 0, 100, 'infested share in %'),
    atLeast0(spot.hoursPerHaOfSpots, 'hours a hectare of spots'),
    above0(spot.swathM, 'width looked over in m'),
    above0(spot.walkKmPerH, 'pace in km/h'),
  );
  if (wrong) return wrong;
  const walking = spot.areaM2 / spot.swathM / (spot.walkKmPerH * 1000);
  const treating = (spot.areaM2 * spot.infestedPercent * spot.hoursPerHaOfSpots) / 1_000_000;
  const spotHours = walking + treating;
  return { handHours, spotHours, fewerHours: spotHours < handHours ? 'spot treatment' : 'hand weeding' };
}
