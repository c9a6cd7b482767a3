import type { Sourced } from '../source.ts';

export interface CardinalTemperatures extends Sourced {
  use: string;
  baseC: number;
  optimumC?: number;
  maximumC?: number;
}

/**
 * Bases in use for rice. Development is not linear in temperature (Yoshida 1981 p. 48), and under a flood the growing point
 * follows the water until booting, so a sum is a yardstick within one site, not between sites.
 */
export const CARDINAL_TEMPERATURES: readonly CardinalTemperatures[] = [
  {
    use: 'leaf appearance',
    baseC: 11,
    optimumC: 26,
    maximumC: 40,
    source: 'Agronomy Journal 100(3):490 (2008), Fig. 1',
  },
  {
    use: 'phenology models',
    baseC: 8,
    optimumC: 30,
    maximumC: 42,
    source: 'Bouman et al. 2001, from memory',
    unconfirmed: true,
  },
  { use: 'degree-day practice in the United States', baseC: 10, source: 'extension pages, 50 F' },
];
