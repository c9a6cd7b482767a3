import type { Sourced } from '../source.ts';

export interface LodgingFactor extends Sourced {
  words: string;
  towards: 'lodging' | 'standing';
}

/** What makes a crop lean, without weights: nobody has published any that hold from place to place. */
export const LODGING_FACTORS: readonly LodgingFactor[] = [
  { words: 'taller plants', towards: 'lodging', source: 'IREC, New South Wales, 2017' },
  { words: 'thin stems, light for their length', towards: 'lodging', source: 'IREC, New South Wales, 2017' },
  {
    words: 'dense stand: 250 plants/m2 more than 100',
    towards: 'lodging',
    source: 'IREC, New South Wales, 2017',
  },
  {
    words: 'sown from the air rather than drilled',
    towards: 'lodging',
    source: 'IREC, New South Wales, 2017',
  },
  {
    words: 'flooded from germination on rather than later',
    towards: 'lodging',
    source: 'IREC, New South Wales, 2017',
  },
  {
    words: 'thick stem wall for its diameter',
    towards: 'standing',
    source: 'Sci. Rep. 2023, s41598-023-37992-3',
  },
  { words: 'much nitrogen', towards: 'lodging', source: 'memory', unconfirmed: true },
];

/** The factors that somebody saw in a plot, parted by direction; no sum is drawn. */
export function lodgingFactorsSeen(
  words: readonly string[],
): Record<LodgingFactor['towards'], LodgingFactor[]> {
  const seen = LODGING_FACTORS.filter((factor) => words.includes(factor.words));
  return {
    lodging: seen.filter(({ towards }) => towards === 'lodging'),
    standing: seen.filter(({ towards }) => towards === 'standing'),
  };
}
