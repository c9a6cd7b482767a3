import type { Sourced } from '../source.ts';

export interface TopdressingWater extends Sourced {
  words: string;
}

/** How to hold the water when urea is given. */
export const WATER_AT_TOPDRESSING: readonly TopdressingWater[] = [
  {
    words: 'drain, or give it to nearly dry soil, and flood again after 2-3 days',
    source: 'common practice in Asia',
    unconfirmed: true,
  },
  {
    words: 'on dry soil, flood within 2-3 days on loam and 7 on clay, else with an inhibitor',
    source: 'Rice Farming, United States',
  },
  {
    words: 'a flood 5 days late loses 20-25 %; spread into water while tillering up to 75 %',
    source: 'Delta Farm Press',
  },
  { words: 'uptake of about 10, 20 and 30 % in the first three weeks', source: 'Farm Progress' },
];
