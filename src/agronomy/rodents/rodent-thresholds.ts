import type { Sourced } from '../source.ts';

export interface RodentThreshold extends Sourced {
  measure: string;
  value: number;
  unit: string;
  where: string;
}

/** For information, with source and place; a station sets its own. */
export const RODENT_THRESHOLDS: readonly RodentThreshold[] = [
  {
    measure: 'cut tillers',
    value: 2,
    unit: '%',
    where: 'research farms, tolerated',
    source: 'Int. Biodeter. Biodegr. 49:125-132, 2002',
  },
  { measure: 'missing tillers', value: 15, unit: '%', where: 'unknown', source: 'memory', unconfirmed: true },
  {
    measure: 'live burrows',
    value: 25,
    unit: 'per ha',
    where: 'unknown',
    source: 'memory',
    unconfirmed: true,
  },
];

export interface RodentCaution extends Sourced {
  words: string;
}

export const RODENTICIDE_CAUTIONS: readonly RodentCaution[] = [
  {
    words:
      'Registered products only, in covered bait stations, out of reach of children, pets and livestock.',
    source: 'IRRI',
  },
  {
    words: 'Zinc phosphide gives off phosphine when damp: prepare it fresh, in the open air.',
    source: 'PAU',
  },
  {
    words:
      'Gloves; collect carcasses; no bait in water; birds and dogs that eat poisoned rats are poisoned too.',
    source: 'memory',
    unconfirmed: true,
  },
  { words: 'Follow the label and local law.', source: 'common practice', unconfirmed: true },
];
