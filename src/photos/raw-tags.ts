/**
 * What was written in the file, before anybody judges it. A key that is there with the value `undefined` was written
 * but blank, which says something else than a key that is missing.
 */
export interface RawTags {
  exif: ExifTags;
  gps: GpsTags;
  /** The XMP packet as text, unread. */
  xmp: string | null;
}

/** Strings exactly as in the file, never made into dates. */
export interface ExifTags {
  DateTimeOriginal?: unknown;
  CreateDate?: unknown;
  SubSecTimeOriginal?: unknown;
  SubSecTimeDigitized?: unknown;
  OffsetTime?: unknown;
  OffsetTimeOriginal?: unknown;
  OffsetTimeDigitized?: unknown;
}

/** Degrees as [degrees, minutes, seconds], rationals already divided: 0/0 is NaN. */
export interface GpsTags {
  GPSLatitudeRef?: unknown;
  GPSLatitude?: unknown;
  GPSLongitudeRef?: unknown;
  GPSLongitude?: unknown;
  GPSAltitudeRef?: unknown;
  GPSAltitude?: unknown;
  GPSTimeStamp?: unknown;
  GPSDateStamp?: unknown;
  GPSImgDirectionRef?: unknown;
  GPSImgDirection?: unknown;
  GPSHPositioningError?: unknown;
}

export const noTags = (): RawTags => ({ exif: {}, gps: {}, xmp: null });
