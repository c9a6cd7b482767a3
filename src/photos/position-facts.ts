/** PURE. Where a photo was taken, as far as its tags say and no further. */
import type { PositionFacts } from './examined.ts';
import type { RawTags } from './read-metadata.ts';

const NOWHERE: PositionFacts = {
  status: 'absent',
  latitude: null,
  longitude: null,
  source: null,
  accuracy_m: null,
  direction_deg: null,
  direction_ref: null,
};

/** EXIF first; XMP where EXIF gives nothing usable. */
export function positionFacts({ gps, xmp }: RawTags): PositionFacts {
  const exif = fromExif(gps);
  if (exif.status === 'valid') return exif;
  const second = fromXmp(xmp);
  return second
    ? {
        ...second,
        accuracy_m: exif.accuracy_m,
        direction_deg: exif.direction_deg,
        direction_ref: exif.direction_ref,
        exif_status: exif.status,
      }
    : exif;
}

function fromExif(gps: Record<string, unknown>): PositionFacts {
  const rest = { accuracy_m: finite(gps.GPSHPositioningError), ...direction(gps) };
  if (gps.GPSLatitude === undefined && gps.GPSLongitude === undefined) return { ...NOWHERE, ...rest };
  const latitude = degrees(gps.GPSLatitude, gps.GPSLatitudeRef, 'S');
  const longitude = degrees(gps.GPSLongitude, gps.GPSLongitudeRef, 'W');
  const status = statusOf(
    latitude,
    longitude,
    isRef(gps.GPSLatitudeRef, 'NS') && isRef(gps.GPSLongitudeRef, 'EW'),
  );
  return {
    ...NOWHERE,
    ...rest,
    status,
    latitude: status === 'invalid' ? null : rounded(latitude),
    longitude: status === 'invalid' ? null : rounded(longitude),
    source: 'exif',
    ...altitude(gps),
  };
}

function statusOf(latitude: number, longitude: number, refs: boolean): PositionFacts['status'] {
  if (!Number.isFinite(latitude) || !Number.isFinite(longitude)) return refs ? 'invalid' : 'removed';
  if (Math.abs(latitude) > 90 || Math.abs(longitude) > 180) return 'invalid';
  if (latitude === 0 && longitude === 0) return 'null-island';
  return refs ? 'valid' : 'ambiguous-no-ref';
}

/** Degrees, minutes, seconds, each a number; minus for the south and the west. */
function degrees(value: unknown, ref: unknown, minus: string): number {
  const parts = Array.from((value as ArrayLike<unknown>) ?? [], Number);
  if (parts.length === 0 || parts.length > 3 || parts.some((part) => !Number.isFinite(part)))
    return Number.NaN;
  const [whole = 0, minutes = 0, seconds = 0] = parts;
  const size = whole + minutes / 60 + seconds / 3600;
  return isRef(ref, minus) ? -size : size;
}

const isRef = (ref: unknown, of: string): boolean =>
  typeof ref === 'string' && ref.trim() !== '' && of.includes(ref.trim().charAt(0).toUpperCase());

/** Below sea level where the reference says so; outside -500 to 9000 m it is no altitude. */
function altitude(gps: Record<string, unknown>): Pick<PositionFacts, 'altitude_m' | 'altitude_status'> {
  const size = finite(gps.GPSAltitude);
  if (size === null) return {};
  const below =
    Number(Array.from((gps.GPSAltitudeRef as ArrayLike<number>) ?? [0])[0] ?? gps.GPSAltitudeRef) === 1;
  const metres = below ? -Math.abs(size) : size;
  if (metres < -500 || metres > 9000) return { altitude_m: null, altitude_status: 'implausible' };
  return { altitude_m: Math.round(metres * 1000) / 1000 };
}

const direction = (gps: Record<string, unknown>) => {
  const degreesFrom = finite(gps.GPSImgDirection);
  const ref = typeof gps.GPSImgDirectionRef === 'string' ? gps.GPSImgDirectionRef.trim() || null : null;
  return { direction_deg: degreesFrom, direction_ref: degreesFrom === null ? null : ref };
};

/** `27,49.1475N`, or signed degrees. */
function fromXmp(xmp: Record<string, unknown>): PositionFacts | null {
  const latitude = xmpDegrees(xmp.GPSLatitude);
  const longitude = xmpDegrees(xmp.GPSLongitude);
  if (latitude === null || longitude === null) return null;
  const status = statusOf(latitude, longitude, true);
  return status === 'valid'
    ? { ...NOWHERE, status, latitude: rounded(latitude), longitude: rounded(longitude), source: 'xmp' }
    : null;
}

function xmpDegrees(value: unknown): number | null {
  if (typeof value === 'number') return value;
  const match = String(value ?? '').match(
    /^(-?\d+(?:\.\d+)?)(?:,(\d+(?:\.\d+)?))?(?:,(\d+(?:\.\d+)?))?([NSEW])?$/i,
  );
  if (!match) return null;
  const size = Number(match[1]) + Number(match[2] ?? 0) / 60 + Number(match[3] ?? 0) / 3600;
  return /[SW]/i.test(match[4] ?? '') ? -size : size;
}

function finite(value: unknown): number | null {
  const number = typeof value === 'number' ? value : Number.NaN;
  return Number.isFinite(number) ? number : null;
}
const rounded = (value: number): number => Math.round(value * 1e7) / 1e7;
