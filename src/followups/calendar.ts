/** PURE. Follow-ups as a calendar in the open iCalendar format (RFC 5545). */
import { addDays } from './days.ts';
import type { FollowUp } from './item.ts';
import { dueSentence, titleOf } from './sentences.ts';

export interface CalendarFrame {
  /** Name of the calendar. */
  name: string;
  /** Domain-like tail that makes ids unique in the world. */
  source: string;
  /** Instant of writing, UTC, `2031-07-14T00:00:00Z`. */
  writtenAt: string;
  today: string;
}

/** All-day events of items that have a day and are not settled; lines end in CRLF and are folded at 75 octets. */
export function calendarText(items: FollowUp[], { name, source, writtenAt, today }: CalendarFrame): string {
  const dated = items.filter((item) => item.due && item.bucket !== 'settled');
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Bundwalk//Follow-ups//EN',
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    `X-WR-CALNAME:${escaped(name)}`,
    ...dated.flatMap((item) => eventOf(item, source, writtenAt, today)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

function eventOf(item: FollowUp, source: string, writtenAt: string, today: string): string[] {
  const { due, cautions, who, keepOut } = item;
  const notes = [
    dueSentence(item, today),
    who ? `Who: ${who}` : '',
    keepOut?.because ?? '',
    ...cautions,
  ].filter(Boolean);
  return [
    'BEGIN:VEVENT',
    `UID:${uid(item.id)}@${source}`,
    `DTSTAMP:${writtenAt.replace(/[-:]|\.\d+/g, '')}`,
    `DTSTART;VALUE=DATE:${due!.from.replaceAll('-', '')}`,
    `DTEND;VALUE=DATE:${addDays(due!.to, 1).replaceAll('-', '')}`,
    `SUMMARY:${escaped(titleOf(item))}`,
    `DESCRIPTION:${escaped(notes.join('\n'))}`,
    `STATUS:${due!.forecast || item.state === 'considered' ? 'TENTATIVE' : 'CONFIRMED'}`,
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
  ];
}

/** RFC 5545 3.3.11: backslash, semicolon, comma and line ends are escaped; other control characters have no place. */
const escaped = (text: string): string =>
  text
    .replace(/[\\;,]/g, (mark) => `\\${mark}`)
    .replace(/\r?\n/g, '\\n')
    .replace(/\p{Cc}/gu, ' ');

const uid = (id: string): string => id.replace(/[^\w.:-]/g, '_');

/** RFC 5545 3.1: no line over 75 octets; what goes on begins with a space. Characters are never cut in two. */
function folded(line: string): string {
  const parts: string[] = [];
  let part = '';
  let octets = 0;
  for (const character of line) {
    const size = new TextEncoder().encode(character).length;
    if (octets + size > 75) {
      parts.push(part);
      part = ' ';
      octets = 1;
    }
    part += character;
    octets += size;
  }
  return [...parts, part].join('\r\n');
}
