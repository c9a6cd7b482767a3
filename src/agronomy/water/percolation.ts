import type { Sourced } from '../source.ts';

export interface PercolationFigure extends Sourced {
  soil: string;
  fromMmPerDay: number;
  toMmPerDay: number;
}

/** Published rates, to hold a measured loss against. */
export const PERCOLATION: readonly PercolationFigure[] = [
  {
    soil: 'well drained',
    fromMmPerDay: 6,
    toMmPerDay: 6,
    source: 'Department of Agriculture Sri Lanka, RRDI',
  },
  {
    soil: 'poorly drained',
    fromMmPerDay: 3,
    toMmPerDay: 3,
    source: 'Department of Agriculture Sri Lanka, RRDI',
  },
  {
    soil: 'rainfed lowland',
    fromMmPerDay: 0,
    toMmPerDay: 3,
    source: 'Tsubo et al. 2005, Plant Prod. Sci. 8:354',
  },
  {
    soil: 'clay',
    fromMmPerDay: 1,
    toMmPerDay: 5,
    source: 'Bouman, Lampayan & Tuong 2007, from memory',
    unconfirmed: true,
  },
  {
    soil: 'sandy',
    fromMmPerDay: 25,
    toMmPerDay: 30,
    source: 'Bouman, Lampayan & Tuong 2007, from memory',
    unconfirmed: true,
  },
];

/** Medium puddling cut percolation by 54-58 % on sandy loam, more puddling gained nothing. */
export const PUDDLING_EFFECT = {
  lessPercent: [54, 58],
  source: 'Kukal & Aggarwal 2002, Agric. Water Manage. 57:49',
} as const;
