/** Where a photo was taken, by what is written in it. Pure: raw tags in, one settled fact out. */
import { degreesOf, numberOf } from './gps-degrees.ts';
import type { GpsTags, RawTags } from './raw-tags.ts';
import { xmpField } from './xmp-field.ts';

/**
 * - `valid`: both coordinates finite, in range, with their refs, and not exactly 0, 0
 * - `invalid`: written, but no number, out of range, or only one of the two
 * - `ambiguous-no-ref`: numbers without N/S or E/W: four places on the earth fit
 * - `null-island`: exactly 0, 0, which is what a phone without a fix writes
 * - `removed`: blank refs with 0, 0: the phone or the picker took the position out
 * - `absent`: nothing written
 */
export type PositionStatus = 'valid' | 'invalid' | 'ambiguous-no-ref' | 'null-island' | 'removed' | 'absent';

/** Keys as written on the command line. Degrees WGS 84, south and west negative; metres; compass degrees. */
export interface PositionFact {
  status: PositionStatus;
  latitude: number | null;
  longitude: number | null;
  source: 'exif' | 'xmp' | null;
  /** What EXIF alone gave, where XMP was used instead. */
  exif_status?: PositionStatus;
  /** Above sea level; left out where none is written, null where what is written can't be. */
  altitude_m?: number | null;
  altitude_status?: 'implausible';
  accuracy_m: number | null;
  direction_deg: number | null;
  /** `T` true north, `M` magnetic. */
  direction_ref: string | null;
}

interface Place {
  status: PositionStatus;
  latitude: number | null;
  longitude: number | null;
}

export function positionFact(tags: RawTags): PositionFact {
  const exif = placeOfExif(tags.gps);
  const xmp = exif.status === 'valid' || tags.xmp === null ? null : placeOfXmp(tags.xmp);
  const takesXmp =
    xmp !== null && (xmp.status === 'valid' || exif.status === 'absent') && xmp.status !== 'absent';
  const place = takesXmp ? xmp : exif;
  return {
    ...place,
    source: takesXmp ? 'xmp' : exif.status === 'absent' ? null : 'exif',
    ...(takesXmp ? { exif_status: exif.status } : {}),
    ...altitude(tags.gps),
    accuracy_m: atLeastZero(numberOf(tags.gps.GPSHPositioningError)),
    ...direction(tags.gps),
  };
}

function placeOfExif(gps: GpsTags): Place {
  if (!('GPSLatitude' in gps) && !('GPSLongitude' in gps)) return nowhere('absent');
  const latitude = degreesOf(gps.GPSLatitude);
  const longitude = degreesOf(gps.GPSLongitude);
  if (!inRange(latitude, 90) || !inRange(longitude, 180)) return nowhere('invalid');
  const north = sign(gps.GPSLatitudeRef, 'N', 'S');
  const east = sign(gps.GPSLongitudeRef, 'E', 'W');
  if (north === null || east === null)
    return nowhere(isRemoved(gps, latitude, longitude) ? 'removed' : 'ambiguous-no-ref');
  return settled(north * latitude, east * longitude);
}

/** Refs written but blank, with zeros: what the picker of newer phones leaves when it takes the position out. */
const isRemoved = (gps: GpsTags, latitude: number, longitude: number): boolean =>
  latitude === 0 && longitude === 0 && 'GPSLatitudeRef' in gps && 'GPSLongitudeRef' in gps;

function placeOfXmp(packet: string): Place {
  const latitude = xmpField(packet, 'exif', 'GPSLatitude');
  const longitude = xmpField(packet, 'exif', 'GPSLongitude');
  if (latitude === null && longitude === null) return nowhere('absent');
  const north = xmpDegrees(latitude ?? '', 'N', 'S');
  const east = xmpDegrees(longitude ?? '', 'E', 'W');
  if (north === 'no ref' || east === 'no ref') return nowhere('ambiguous-no-ref');
  return inRange(north, 90) && inRange(east, 180) ? settled(north, east) : nowhere('invalid');
}

const xmpCoordinate = /^(\d{1,3}(?:\.\d+)?)(?:,(\d{1,2}(?:\.\d+)?))?(?:,(\d{1,2}(?:\.\d+)?))?\s?([A-Za-z])$/;

/**
 * `14,10.2N` or `14,10,12N` (XMP specification, part 2: GPSCoordinate). Against it, some write a plain signed number,
 * which says all the same, and some copy the fractions of EXIF, `14/1 10/1 12/1`, and lose N and E on the way.
 */
function xmpDegrees(text: string, plus: string, minus: string): number | 'no ref' {
  if (/^[+-]?\d{1,3}\.\d+$/.test(text)) return Number(text);
  if (/^\d+\/\d+([ ,]\d+\/\d+)*$/.test(text)) return 'no ref';
  const [, degrees = '', minutes = '0', seconds = '0', ref = ''] = xmpCoordinate.exec(text) ?? [];
  const factor = sign(ref, plus, minus);
  return factor === null ? Number.NaN : factor * degreesOf([degrees, minutes, seconds].map(Number));
}

const settled = (latitude: number, longitude: number): Place =>
  latitude === 0 && longitude === 0
    ? nowhere('null-island')
    : { status: 'valid', latitude: rounded(latitude, 7), longitude: rounded(longitude, 7) };

const nowhere = (status: PositionStatus): Place => ({ status, latitude: null, longitude: null });

const lowestAltitudeM = -500;
const highestAltitudeM = 9000;

/** GPSAltitudeRef 1 (and 3, Exif 3.0) mean below. */
function altitude(gps: GpsTags): Pick<PositionFact, 'altitude_m' | 'altitude_status'> {
  const height = numberOf(gps.GPSAltitude);
  if (height === null) return {};
  const ref = numberOf(gps.GPSAltitudeRef);
  const signed = ref === 1 || ref === 3 ? -height : height;
  if (signed < lowestAltitudeM || signed > highestAltitudeM)
    return { altitude_m: null, altitude_status: 'implausible' };
  return { altitude_m: rounded(signed, 3) };
}

function direction(gps: GpsTags): Pick<PositionFact, 'direction_deg' | 'direction_ref'> {
  const degrees = numberOf(gps.GPSImgDirection);
  if (degrees === null || degrees < 0 || degrees > 360) return { direction_deg: null, direction_ref: null };
  const ref = letter(gps.GPSImgDirectionRef);
  return { direction_deg: tenDigits(degrees), direction_ref: ref === 'T' || ref === 'M' ? ref : null };
}

const inRange = (degrees: number, most: number): boolean =>
  Number.isFinite(degrees) && Math.abs(degrees) <= most;

function sign(ref: unknown, plus: string, minus: string): 1 | -1 | null {
  const written = letter(ref);
  return written === plus ? 1 : written === minus ? -1 : null;
}

/** First letter of `N`, `n` or `North`. */
const letter = (ref: unknown): string => (typeof ref === 'string' ? ref.trim().charAt(0).toUpperCase() : '');

const atLeastZero = (metres: number | null): number | null =>
  metres !== null && metres >= 0 ? tenDigits(metres) : null;

// Adding zero turns -0 into 0.
const rounded = (value: number, places: number): number => Number(value.toFixed(places)) + 0;
const tenDigits = (value: number): number => Number(value.toPrecision(10));
