/** What a photo's file says of itself: where, when, and whether a picture can be made of it. */
import type { PhotoKind } from './kind.ts';

export interface PositionFacts {
  status: 'valid' | 'invalid' | 'ambiguous-no-ref' | 'null-island' | 'removed' | 'absent';
  /** Degrees, north and east positive; kept even where they are not to be trusted. */
  latitude: number | null;
  longitude: number | null;
  source: 'exif' | 'xmp' | null;
  accuracy_m: number | null;
  altitude_m?: number | null;
  altitude_status?: string;
  direction_deg: number | null;
  /** `T` true north, `M` magnetic. */
  direction_ref: string | null;
  /** What EXIF said where XMP had to be used. */
  exif_status?: string;
}

export interface TimeFacts {
  status: 'ok' | 'invalid' | 'absent';
  /** Local wall time `2019-03-26T19:33:47.00`, as the camera wrote it. */
  wall: string | null;
  /** The tag that it came from: `ExifIFD:DateTimeOriginal`. */
  source: string | null;
  /** `-04:00`, or null where it is not known. */
  offset: string | null;
  offset_source: string | null;
  /** Known only where the offset is. */
  utc: string | null;
  flags: string[];
  gps_utc?: string;
  gps_inferred_offset?: string;
}

export interface Examined {
  /** Null where it is no photo that is taken here. */
  kind: PhotoKind | null;
  position: PositionFacts;
  time: TimeFacts;
  ingest: { decision: 'accept' | 'reject'; reason: string };
  width: number | null;
  height: number | null;
}
