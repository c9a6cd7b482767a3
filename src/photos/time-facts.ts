/** PURE. When a photo was taken: wall time and offset apart, from raw strings, never from a revived date. */
import type { TimeFacts } from './examined.ts';
import type { RawTags } from './read-metadata.ts';

const WALL =
  /^(\d{4})[:-](\d{2})[:-](\d{2})[ T](\d{2}):(\d{2})(?::(\d{2})(\.\d+)?)?\s*(Z|[+-]\d{2}:?\d{2})?$/;
const OFFSET = /^([+-])(\d{2}):(\d{2})$/;

export function timeFacts(tags: RawTags): TimeFacts {
  const flags: string[] = [];
  const found = firstUsable(tags, flags);
  if (!found)
    return {
      status: flags.length > 0 ? 'invalid' : 'absent',
      wall: null,
      source: null,
      offset: null,
      offset_source: null,
      utc: null,
      flags,
    };
  const { offset, offset_source } = offsetOf(tags, found, flags);
  return {
    status: 'ok',
    wall: found.wall,
    source: found.source,
    offset,
    offset_source,
    utc: offset ? utcOf(found.wall, offset) : null,
    flags,
  };
}

interface Found {
  wall: string;
  source: string;
  inline: string | null;
}

function firstUsable({ exif, xmp }: RawTags, flags: string[]): Found | null {
  const candidates: [string, unknown, unknown][] = [
    ['ExifIFD:DateTimeOriginal', exif.DateTimeOriginal, exif.SubSecTimeOriginal],
    ['ExifIFD:CreateDate', exif.CreateDate, exif.SubSecTimeDigitized],
    ['XMP-exif:DateTimeOriginal', xmp.DateTimeOriginal, null],
    ['XMP-photoshop:DateCreated', xmp.DateCreated, null],
    ['XMP-xmp:CreateDate', xmp.CreateDate, null],
  ];
  for (const [source, value, fraction] of candidates) {
    if (typeof value !== 'string' || value === '') continue;
    const read = wallOf(value, fraction);
    if (read) return { ...read, source };
    flags.push(`${source}: unusable value '${value}'`);
  }
  return null;
}

function wallOf(value: string, fraction: unknown): Omit<Found, 'source'> | null {
  const match = value.replaceAll('\u0000', '').trim().match(WALL);
  if (!match) return null;
  const [, year, month, day, hour, minute, second = '00', part = '', inline = null] =
    match as unknown as string[];
  if (!exists(Number(year), Number(month), Number(day), Number(hour), Number(minute), Number(second)))
    return null;
  const sub =
    part || (typeof fraction === 'string' && /^\d+\s*$/.test(fraction) ? `.${fraction.trim()}` : '');
  return { wall: `${year}-${month}-${day}T${hour}:${minute}:${second}${sub}`, inline };
}

/** `0000:00:00` and 30 February are no date. */
function exists(
  year: number,
  month: number,
  day: number,
  hour: number,
  minute: number,
  second: number,
): boolean {
  const at = new Date(Date.UTC(year, month - 1, day));
  return (
    year > 0 &&
    at.getUTCMonth() === month - 1 &&
    at.getUTCDate() === day &&
    hour < 24 &&
    minute < 60 &&
    second < 61
  );
}

function offsetOf(
  { exif, gps }: RawTags,
  found: Found,
  flags: string[],
): Pick<TimeFacts, 'offset' | 'offset_source'> {
  if (found.inline)
    return {
      offset: found.inline === 'Z' ? '+00:00' : found.inline.replace(/^([+-]\d{2}):?(\d{2})$/, '$1:$2'),
      offset_source: `${found.source} (inline)`,
    };
  const [name, value] =
    found.source === 'ExifIFD:CreateDate'
      ? ['OffsetTimeDigitized', exif.OffsetTimeDigitized]
      : ['OffsetTimeOriginal', exif.OffsetTimeOriginal];
  if (typeof value === 'string' && OFFSET.test(value.trim()) && found.source.startsWith('ExifIFD')) {
    return { offset: value.trim(), offset_source: `ExifIFD:${name}` };
  }
  const inferred = offsetFromGps(gps, found.wall, flags);
  return inferred
    ? { offset: inferred, offset_source: 'inferred from GPS UTC' }
    : { offset: null, offset_source: null };
}

/** The satellites' UTC against the wall time: within five minutes of a quarter hour it is an offset. */
function offsetFromGps(gps: Record<string, unknown>, wall: string, flags: string[]): string | null {
  const date = String(gps.GPSDateStamp ?? '').trim();
  const clock = Array.from((gps.GPSTimeStamp as ArrayLike<unknown>) ?? [], Number);
  if (date === '' && clock.length === 0) return null;
  if (
    !/^\d{4}:\d{2}:\d{2}$/.test(date) ||
    clock.length !== 3 ||
    clock.some((part) => !Number.isFinite(part))
  ) {
    flags.push('GPS date/time incomplete or unusable');
    return null;
  }
  const utc =
    Date.parse(`${date.replaceAll(':', '-')}T00:00:00Z`) +
    (clock[0]! * 3600 + clock[1]! * 60 + clock[2]!) * 1000;
  const minutes = (Date.parse(`${wall.slice(0, 19)}Z`) - utc) / 60_000;
  const quarter = Math.round(minutes / 15) * 15;
  if (Math.abs(minutes - quarter) > 5 || Math.abs(quarter) > 14 * 60) return null;
  const size = Math.abs(quarter);
  return `${quarter < 0 ? '-' : '+'}${String(Math.floor(size / 60)).padStart(2, '0')}:${String(size % 60).padStart(2, '0')}`;
}

function utcOf(wall: string, offset: string): string {
  const [, sign, hours, minutes] = offset.match(OFFSET)!;
  const shift = (sign === '-' ? 1 : -1) * (Number(hours) * 60 + Number(minutes)) * 60_000;
  return `${new Date(Date.parse(`${wall.slice(0, 19)}Z`) + shift).toISOString().slice(0, 19)}Z`;
}
