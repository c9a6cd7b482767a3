/** What a photo's file says of itself: where, when, and whether a picture can be made of it. */
import { type Ingest, type RefusalReason, refused } from './ingest.ts';
import type { PhotoKind } from './kind.ts';
import { type PositionFact, positionFact } from './position-fact.ts';
import { noTags, type RawTags } from './raw-tags.ts';
import { type TimeFact, timeFact } from './time-fact.ts';

export interface Examined {
  /** Null where it is no photo that is taken here. */
  kind: PhotoKind | null;
  position: PositionFact;
  time: TimeFact;
  ingest: Ingest;
  /** Pixels as stored, before any turning; null where they can't be told. */
  width: number | null;
  height: number | null;
}

export const facts = (tags: RawTags): Pick<Examined, 'position' | 'time'> => ({
  position: positionFact(tags),
  time: timeFact(tags),
});

/** A file that could not be opened at all. */
export const notOpened = (reason: RefusalReason): Examined => ({
  kind: null,
  ...facts(noTags()),
  ingest: refused(reason),
  width: null,
  height: null,
});
