import type { Sourced } from '../source.ts';

export interface SeedlingAge extends Sourced {
  who: string;
  fromDays: number;
  toDays: number;
}

/** Age of seedlings at transplanting, days after sowing. */
export const SEEDLING_AGES: readonly SeedlingAge[] = [
  { who: 'wet bed', fromDays: 21, toDays: 25, source: 'PhilRice' },
  { who: 'short duration', fromDays: 18, toDays: 22, source: 'TNAU' },
  { who: 'medium duration', fromDays: 25, toDays: 30, source: 'TNAU' },
  { who: 'long duration', fromDays: 35, toDays: 40, source: 'TNAU' },
  { who: 'wet or dry bed', fromDays: 30, toDays: 35, source: 'RKMP-DRR' },
  { who: 'dapog', fromDays: 11, toDays: 11, source: 'Yoshida 1981, Table 1.6 note' },
];

export interface EstablishmentLag extends Sourced {
  season: string;
  fromDays: number;
  toDays: number;
}

/** Days that a transplanted crop stands still. Against direct seeding about a week later ripe (Yoshida 1981 p. 4). */
export const ESTABLISHMENT_LAGS: readonly EstablishmentLag[] = [
  { season: 'warm (Aus, Aman)', fromDays: 5, toDays: 7, source: 'BRRI/IRRI training slides, Dhaka 2011' },
  { season: 'cool (Boro)', fromDays: 10, toDays: 15, source: 'BRRI/IRRI training slides, Dhaka 2011' },
  { season: 'direct seeded', fromDays: 0, toDays: 0, source: 'BRRI/IRRI training slides, Dhaka 2011' },
];
