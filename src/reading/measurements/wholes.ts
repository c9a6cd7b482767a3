/** What a share can be a share of. */
import { type Surroundings, wordOf } from './surroundings.ts';

export type Whole = 'hills' | 'tillers' | 'panicles' | 'area' | 'other' | null;

export const WHOLES: ReadonlyMap<string, Whole> = new Map(
  (
    [
      ['hills', 'hill hills stool stools clump clumps plants plant'],
      ['tillers', 'tiller tillers stems stem culms culm shoots'],
      ['panicles', 'panicle panicles ears ear heads head'],
      [
        'area',
        'plot plots field fields area bay stand crop check strip block surface it patch parcel terrace paddy acre corner end side half place grandpas',
      ],
      [
        'other',
        'grains grain spikelets leaves leaf seed seeds tomatoes tomato people farmers plants. water labour crew visitors rows seedlings traps light sky sweeps sweep samples traps trap days weeks visits farms nets squares points photos',
      ],
    ] as const
  ).flatMap(([whole, words]) => words.split(' ').map((word): [string, Whole] => [word, whole])),
);

/** `flowering is one hundred percent`: the share is of what stands before. */
export function isSaidOfAnother(around: Surroundings, first: number): boolean {
  let at = first - 1;
  while (/^(is|at|about|around|now|=|:|nearly|almost|maybe)$/.test(wordOf(around, at))) at--;
  return (
    at < first - 1 &&
    /^(flowering|germination|emergence|maturity|survival|humidity|shade)$/.test(wordOf(around, at))
  );
}
