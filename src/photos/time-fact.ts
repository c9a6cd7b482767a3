/** When a photo was taken, by what is written in it. Pure: raw strings in, wall time and offset apart. */
import { listOf, numbersIn } from './gps-degrees.ts';
import type { ExifTags, GpsTags, RawTags } from './raw-tags.ts';
import {
  instantText,
  mostOffsetMinutes,
  offsetMinutes,
  offsetText,
  readOffset,
  readWallTime,
  type WallTime,
} from './wall-time.ts';
import { xmpField } from './xmp-field.ts';

/** Keys as written on the command line. */
export interface TimeFact {
  /** `invalid`: something is written, but no date. */
  status: 'ok' | 'invalid' | 'absent';
  /** What the clock on the wall showed: `2026-02-19T14:22:37.146`. */
  wall: string | null;
  /** Which tag it is from: `ExifIFD:DateTimeOriginal`. */
  source: string | null;
  offset: string | null;
  /** Which tag, `… (inline)`, or `inferred from GPS UTC`. */
  offset_source: string | null;
  /** Null where the offset is not known: the wall time is all there is then. */
  utc: string | null;
  /** What was unusable or does not fit together, in words. */
  flags: string[];
  gps_utc?: string;
  gps_inferred_offset?: string;
}

export function timeFact(tags: RawTags): TimeFact {
  const flags: string[] = [];
  const found = firstUsable(datesOf(tags), flags);
  const gpsMs = gpsUtc(tags.gps, flags);
  const inferred = found && gpsMs !== null ? inferOffset(found.time, gpsMs, flags) : null;
  const offset = found ? offsetOf(found, tags.exif, inferred, flags) : null;
  if (found) flagEditZone(tags.exif, flags);
  return {
    status: found ? 'ok' : flags.some((flag) => flag.includes('unusable value')) ? 'invalid' : 'absent',
    wall: found?.time.wall ?? null,
    source: found?.source ?? null,
    offset: offset?.offset ?? null,
    offset_source: offset?.source ?? null,
    utc: found && offset ? instantText(found.time.asIfUtcMs - offsetMinutes(offset.offset) * 60_000) : null,
    flags,
    ...(gpsMs !== null ? { gps_utc: instantText(gpsMs) } : {}),
    ...(inferred !== null ? { gps_inferred_offset: inferred } : {}),
  };
}

interface DateTag {
  source: string;
  text: string;
  fraction: string;
  offsetTag?: 'OffsetTimeOriginal' | 'OffsetTimeDigitized';
}
interface FoundTime {
  tag: DateTag;
  source: string;
  time: WallTime;
}

/** In the order in which they are believed. ModifyDate is never asked: it is the edit's. */
function* datesOf({ exif, xmp }: RawTags): Generator<DateTag> {
  if (typeof exif.DateTimeOriginal === 'string')
    yield {
      source: 'ExifIFD:DateTimeOriginal',
      text: exif.DateTimeOriginal,
      fraction: text(exif.SubSecTimeOriginal),
      offsetTag: 'OffsetTimeOriginal',
    };
  if (typeof exif.CreateDate === 'string')
    yield {
      source: 'ExifIFD:CreateDate',
      text: exif.CreateDate,
      fraction: text(exif.SubSecTimeDigitized),
      offsetTag: 'OffsetTimeDigitized',
    };
  for (const [namespace, name] of xmpDates) {
    const value = xmp === null ? null : xmpField(xmp, namespace, name);
    if (value) yield { source: `XMP-${namespace}:${name}`, text: value, fraction: '' };
  }
}

const xmpDates = [
  ['exif', 'DateTimeOriginal'],
  ['photoshop', 'DateCreated'],
  ['xmp', 'CreateDate'],
] as const;

function firstUsable(dates: Iterable<DateTag>, flags: string[]): FoundTime | null {
  for (const tag of dates) {
    const time = readWallTime(tag.text, tag.fraction);
    if (time) return { tag, source: tag.source, time };
    flags.push(`${tag.source}: unusable value '${tag.text.slice(0, 60)}'`);
  }
  return null;
}

/** In the string itself, then the tag that belongs to it, then what GPS gives. OffsetTime is never used alone. */
function offsetOf(
  { tag, time }: FoundTime,
  exif: ExifTags,
  inferred: string | null,
  flags: string[],
): { offset: string; source: string } | null {
  if (time.offset) return { offset: time.offset, source: `${tag.source} (inline)` };
  const written = tag.offsetTag ? exif[tag.offsetTag] : undefined;
  if (typeof written === 'string') {
    const offset = readOffset(written);
    if (offset) return { offset, source: `ExifIFD:${tag.offsetTag}` };
    flags.push(`ExifIFD:${tag.offsetTag}: unusable value '${written.slice(0, 20)}'`);
  }
  return inferred ? { offset: inferred, source: 'inferred from GPS UTC' } : null;
}

/** GPSDateStamp with GPSTimeStamp, milliseconds; null where one of them is missing or no time. */
function gpsUtc(gps: GpsTags, flags: string[]): number | null {
  if (!('GPSDateStamp' in gps) && !('GPSTimeStamp' in gps)) return null;
  const stamp =
    typeof gps.GPSTimeStamp === 'string'
      ? numbersIn(gps.GPSTimeStamp.replaceAll(':', ' '))
      : listOf(gps.GPSTimeStamp);
  const [hours = Number.NaN, minutes = Number.NaN, seconds = Number.NaN] = stamp ?? [];
  const midnight = readWallTime(`${text(gps.GPSDateStamp)} 00:00:00`);
  const isTime = hours >= 0 && hours < 24 && minutes >= 0 && minutes < 60 && seconds >= 0 && seconds < 61;
  if (midnight && isTime) return midnight.asIfUtcMs + ((hours * 60 + minutes) * 60 + seconds) * 1000;
  flags.push('GPS date/time incomplete or unusable');
  return null;
}

const quarterHour = 15;
const mostApartMinutes = 5;

/** Offsets are whole quarters of an hour; a fix may be some minutes old. */
function inferOffset(time: WallTime, gpsMs: number, flags: string[]): string | null {
  const minutes = (time.asIfUtcMs - gpsMs) / 60_000;
  const offset = Math.round(minutes / quarterHour) * quarterHour;
  if (Math.abs(minutes - offset) <= mostApartMinutes && Math.abs(offset) <= mostOffsetMinutes)
    return offsetText(offset);
  flags.push(`GPS UTC does not fit the wall time (${minutes.toFixed(1)} min)`);
  return null;
}

/** A zone of the edit that differs from the zone of the photo is worth a word, no more. */
function flagEditZone(exif: ExifTags, flags: string[]): void {
  const edit = readOffset(text(exif.OffsetTime));
  const taken = readOffset(text(exif.OffsetTimeOriginal));
  if (edit && taken && edit !== taken)
    flags.push(`OffsetTime ${edit} differs from OffsetTimeOriginal ${taken} (edit zone)`);
}

const text = (value: unknown): string => (typeof value === 'string' ? value : '');
