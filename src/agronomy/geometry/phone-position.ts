import type { Sourced } from '../source.ts';

export interface PositionErrorFigure extends Sourced {
  where: string;
  fromM: number;
  toM: number;
}

/** How far off a phone is. Plots are told by number, label or layout; a position alone never decides between plots 5 m wide. */
export const POSITION_ERRORS: readonly PositionErrorFigure[] = [
  { where: 'open sky', fromM: 4.9, toM: 4.9, source: 'GPS.gov figure, by way of a second page' },
  { where: 'among houses', fromM: 7, toM: 13, source: 'Merry & Bettinger 2019, PLoS ONE 14:e0219890' },
  { where: 'older phones', fromM: 2.7, toM: 18, source: 'Skidmore 2012' },
];
