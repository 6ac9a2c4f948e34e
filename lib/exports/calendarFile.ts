import { addDays } from '@/shared/days';
import { momentOf } from './wallClock';

/** An entry of a calendar. */
export interface CalendarEntry {
  /** The same for the same thing in every file, and for nothing else: a calendar knows by it what it has already. */
  readonly id: string;
  /** 0 at first, and higher each time the entry has changed. */
  readonly sequence: number;
  readonly when: /** Both days included. */
    | { readonly kind: 'days'; readonly from: string; readonly to: string }
    /** By the clock on the wall, minutes after midnight. */
    | {
        readonly kind: 'time';
        readonly day: string;
        readonly fromMinute: number;
        readonly minutes: number;
      };
  readonly title: string;
  /** Empty where there is none. */
  readonly details: string;
  /** Takes an entry out of the calendar that has it. */
  readonly isCancelled: boolean;
}

/**
 * A file that calendars read (RFC 5545).
 *
 * @param stampedAt when the file is made, ms since 1970
 * @param timeZone zone of the clock on the wall
 * @returns text of which every line ends with CRLF
 */
export function calendarFile(
  entries: readonly [CalendarEntry, ...CalendarEntry[]],
  stampedAt: number,
  timeZone: string,
): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Pressminute//Orders//EN',
    'CALSCALE:GREGORIAN',
    ...entries.flatMap((entry) => event(entry, stampedAt, timeZone)),
    'END:VCALENDAR',
  ];
  return lines.flatMap(folded).join('');
}

function event(entry: CalendarEntry, stampedAt: number, timeZone: string): readonly string[] {
  const { id, sequence, title, details, isCancelled } = entry;
  return [
    'BEGIN:VEVENT',
    `UID:${escaped(id)}`,
    `DTSTAMP:${utc(stampedAt)}`,
    `SEQUENCE:${sequence}`,
    ...times(entry.when, timeZone),
    `SUMMARY:${escaped(title)}`,
    ...(details === '' ? [] : [`DESCRIPTION:${escaped(details)}`]),
    `STATUS:${isCancelled ? 'CANCELLED' : 'CONFIRMED'}`,
    // A day to remember keeps nobody busy; an hour at the press does.
    `TRANSP:${entry.when.kind === 'days' ? 'TRANSPARENT' : 'OPAQUE'}`,
    'END:VEVENT',
  ];
}

function times(when: CalendarEntry['when'], timeZone: string): readonly string[] {
  if (when.kind === 'days')
    // 3.8.2.2: the end is the first day that is no longer part of it.
    return [`DTSTART;VALUE=DATE:${date(when.from)}`, `DTEND;VALUE=DATE:${date(addDays(when.to, 1))}`];
  const { day, fromMinute, minutes } = when;
  const start = momentOf(day, fromMinute, timeZone);
  return [`DTSTART:${utc(start)}`, `DTEND:${utc(start + Math.max(1, Math.round(minutes)) * 60_000)}`];
}

const date = (day: string): string => day.replaceAll('-', '');

/** 3.3.5, form 2. */
const utc = (moment: number): string =>
  `${new Date(moment).toISOString().slice(0, 19).replaceAll(/[-:]/g, '')}Z`;

/** 3.3.11; other control characters have no place in a text. */
const escaped = (text: string): string =>
  text
    .replaceAll(/[\\;,]/g, '\\$&')
    .replaceAll(/\r\n|\r|\n/g, '\\n')
    .replaceAll(/(?!\t)\p{Cc}/gu, '');

const MOST_OCTETS = 75;
const encoder = new TextEncoder();

/** 3.1: lines of at most 75 octets; what follows begins with a space. No letter is torn apart. */
function folded(line: string): readonly string[] {
  const lines: string[] = [];
  let current = '';
  let octets = 0;
  for (const letter of line) {
    const size = encoder.encode(letter).length;
    if (octets + size > MOST_OCTETS) {
      lines.push(`${current}\r\n`);
      current = ' ';
      octets = 1;
    }
    current += letter;
    octets += size;
  }
  return [...lines, `${current}\r\n`];
}
