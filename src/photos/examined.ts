/** What a photo's file says of itself: where, when, and whether a picture can be made of it. */
import { type Ingest, type RefusalReason, refused } from './ingest.ts';
import type { PhotoKind } from './kind.ts';
import { type PositionFact, positionFact } from './position-fact.ts';
import { positionWords } from './position-words.ts';
import { noTags, type RawTags } from './raw-tags.ts';
import { type TimeFact, timeFact } from './time-fact.ts';

export interface Examined {
  /** Null where it is no photo that is taken here. */
  kind: PhotoKind | null;
  position: PositionFact;
  /** Why there is no position, for people; null where there is one. */
  positionWords: string | null;
  time: TimeFact;
  ingest: Ingest;
  /** Pixels as stored, before any turning; null where they can't be told. */
  width: number | null;
  height: number | null;
}

export function facts(tags: RawTags): Pick<Examined, 'position' | 'positionWords' | 'time'> {
  const position = positionFact(tags);
  return { position, positionWords: positionWords(position, tags.gps), time: timeFact(tags) };
}

/** A file that could not be opened at all. */
export const notOpened = (reason: RefusalReason): Examined => ({
  kind: null,
  ...facts(noTags()),
  ingest: refused(reason),
  width: null,
  height: null,
});
