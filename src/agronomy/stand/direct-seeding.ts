/** Sown stands: seeds, plants, and what counts as enough. */
import { above0, atLeast0, between } from '../check-number.ts';
import { type Fault, firstFault, isFault } from '../fault.ts';
import type { Sourced } from '../source.ts';

/** 100 x kg/ha over the weight of a thousand grains in g. */
export function seedsPerM2(rateKgPerHa: number, thousandGrainG: number): number | Fault {
  const wrong = firstFault(
    between(rateKgPerHa, 0, 1000, 'seed rate in kg/ha'),
    above0(thousandGrainG, 'thousand-grain weight in g'),
    between(thousandGrainG, 5, 60, 'thousand-grain weight in g'),
  );
  return wrong ?? (100 * rateKgPerHa) / thousandGrainG;
}

/** Plants of the seeds sown, %. Over 100 means a wrong rate, weight or count; it is given all the same, to be seen. */
export function establishmentPercent(sown: {
  rateKgPerHa: number;
  thousandGrainG: number;
  plantsPerM2: number;
}): number | Fault {
  const seeds = seedsPerM2(sown.rateKgPerHa, sown.thousandGrainG);
  if (isFault(seeds)) return seeds;
  const wrong = firstFault(above0(seeds, 'seeds per m2'), atLeast0(sown.plantsPerM2, 'plants per m2'));
  return wrong ?? (100 * sown.plantsPerM2) / seeds;
}

/** Plants per m2 from plants counted along a row. */
export function plantsPerM2FromRow(plants: number, lengthM: number, rowCm: number): number | Fault {
  const wrong = firstFault(
    atLeast0(plants, 'plants counted'),
    above0(lengthM, 'length of row in m'),
    above0(rowCm, 'row spacing in cm'),
  );
  return wrong ?? (100 * plants) / (lengthM * rowCm);
}

export interface StandMinimum extends Sourced {
  /** kg/ha; absent where the source names none. */
  seedRateKgPerHa?: number;
  plantsPerM2: number;
  remark: string;
}

/** They contradict one another: the first rows imply that nine in ten seeds grow, the third about one in four. */
export const STAND_MINIMA: readonly StandMinimum[] = [
  {
    seedRateKgPerHa: 40,
    plantsPerM2: 150,
    remark: 'at 15 days, at least',
    source: 'PhilRice, PalayCheck Key Check 4',
  },
  {
    seedRateKgPerHa: 80,
    plantsPerM2: 300,
    remark: 'at 15 days, at least',
    source: 'PhilRice, PalayCheck Key Check 4',
  },
  {
    seedRateKgPerHa: 135,
    plantsPerM2: 100,
    remark: '100-150 from 120-150 kg/ha, dry seeding',
    source: 'RKMP',
  },
  { seedRateKgPerHa: 50, plantsPerM2: 100, remark: 'about', source: 'IREC, New South Wales, 2017' },
  {
    seedRateKgPerHa: 150,
    plantsPerM2: 250,
    remark: 'about; dense stands lodge more',
    source: 'IREC, New South Wales, 2017',
  },
  {
    plantsPerM2: 30,
    remark: 'uniform; still more than 12 t/ha',
    source: 'Dunn et al. 2020, Crop Pasture Sci. 71:219',
  },
];
