/** Dates as cameras write them, taken apart without any time zone. */

export interface WallTime {
  /** Milliseconds since 1970 as if the wall clock showed UTC, whole seconds; for differences only. */
  asIfUtcMs: number;
  /** `YYYY-MM-DDTHH:MM:SS`, with the fraction as written. */
  wall: string;
  /** `+08:00` where the string itself carries one. */
  offset: string | null;
}

const written =
  /^(\d{4})[:\-/.](\d{2})[:\-/.](\d{2})[T ](\d{2}):(\d{2})(?::(\d{2})(?:\.(\d{1,9}))?)?\s?(Z|[+-]\d{2}:?\d{2})?$/;

/** Null for zeros, blanks, 30 February and everything that is no date with a time. `fraction`: digits of SubSecTime. */
export function readWallTime(text: string, fraction = ''): WallTime | null {
  const parts = written.exec(text.trim());
  if (!parts) return null;
  const [, year = '', month = '', day = '', hour = '', minute = '', second = '00', inline = '', zone] = parts;
  const asIfUtc = Date.UTC(
    Number(year),
    Number(month) - 1,
    Number(day),
    Number(hour),
    Number(minute),
    Number(second),
  );
  const plain = `${year}-${month}-${day}T${hour}:${minute}:${second}`;
  // Date.UTC rolls 30 February over into March, and takes years below 100 for 19xx: writing it out again shows both.
  if (Number.isNaN(asIfUtc) || new Date(asIfUtc).toISOString().slice(0, 19) !== plain) return null;
  const digits = inline || (/^\d{1,9}$/.test(fraction.trim()) ? fraction.trim() : '');
  return {
    asIfUtcMs: asIfUtc,
    wall: digits ? `${plain}.${digits}` : plain,
    offset: zone ? readOffset(zone) : null,
  };
}

/** `+08:00` from `+08:00`, `+0800` or `Z`; null for blanks and for what no place on the earth keeps. */
export function readOffset(text: string): string | null {
  const zone = text.trim();
  if (zone === 'Z') return '+00:00';
  const parts = /^([+-])(\d{2}):?(\d{2})$/.exec(zone);
  if (!parts) return null;
  const minutes = Number(parts[2]) * 60 + Number(parts[3]);
  return minutes > mostOffsetMinutes || Number(parts[3]) > 59 ? null : `${parts[1]}${parts[2]}:${parts[3]}`;
}

/** Line Islands keep +14:00, the furthest that any place goes (IANA tz). */
export const mostOffsetMinutes = 14 * 60;

export function offsetMinutes(offset: string): number {
  const [hours = 0, minutes = 0] = offset.slice(1).split(':').map(Number);
  return (offset.startsWith('-') ? -1 : 1) * (hours * 60 + minutes);
}

export function offsetText(minutes: number): string {
  const size = Math.abs(minutes);
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${minutes < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}

/** Instant in whole seconds, what is below them cut off: `2026-02-19T22:22:37Z`. */
export const instantText = (ms: number): string =>
  `${new Date(Math.floor(ms / 1000) * 1000).toISOString().slice(0, 19)}Z`;
