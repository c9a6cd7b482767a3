/** Why a photo has no position, in words for the person who took it. */
import type { PositionFact } from './position-fact.ts';
import type { GpsTags } from './raw-tags.ts';

/** Null where it has one. */
export function positionWords(fact: PositionFact, gps: GpsTags): string | null {
  if (fact.status === 'valid') return null;
  return hasBlankRefs(gps) ? words.removed : words[fact.status];
}

/** Written but blank, whatever stands in the numbers: zeros, or 0/0 where a phone overwrote them. */
const hasBlankRefs = (gps: GpsTags): boolean =>
  ['GPSLatitudeRef', 'GPSLongitudeRef'].every((name) => name in gps && !gps[name as keyof GpsTags]);

const words: Record<Exclude<PositionFact['status'], 'valid'>, string> = {
  absent: 'The photo carries no position. Many phones leave it out of photos that are sent from a browser.',
  removed: 'The phone took the position out of this photo before it was sent.',
  invalid: 'The photo carries a position that is no place on the earth.',
  'ambiguous-no-ref': 'The photo carries numbers without north or south, east or west: four places fit.',
  'null-island': 'The phone had no position yet when the photo was taken and wrote 0, 0.',
};
