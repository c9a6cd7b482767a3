/** What a photo's file says of itself: where, when, and whether a picture can be made of it. */
import type { Ingest } from './ingest.ts';
import type { PhotoKind } from './kind.ts';
import type { PositionFact } from './position-fact.ts';
import type { TimeFact } from './time-fact.ts';

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
