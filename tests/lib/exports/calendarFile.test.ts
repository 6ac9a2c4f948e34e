import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orderEntries } from '@/lib/calendar/orderEntries';
import { type CalendarEntry, calendarFile } from '@/lib/exports/calendarFile';
import { cases } from '@/tests/tools/cases';

const entry: CalendarEntry = {
  id: 'order-1-wanted',
  sequence: 0,
  when: { kind: 'days', from: '2026-12-14', to: '2026-12-14' },
  title: 'Ramblers Club wanted',
  details: '',
  isCancelled: false,
};
/** 19 January 1998, 7:00 UTC, the moment of the example of RFC 5545 3.3.5. */
const MADE = Date.UTC(1998, 0, 19, 7);

const made = (changes: Partial<CalendarEntry> = {}, timeZone = 'America/New_York') =>
  calendarFile([{ ...entry, ...changes }], MADE, timeZone);
const unfolded = (file: string) => file.replaceAll('\r\n ', '').split('\r\n');
const lineOf = (file: string, name: string) =>
  unfolded(file).find((line) => line.startsWith(`${name}:`) || line.startsWith(`${name};`));

/** The text behind a property as a reader of RFC 5545 3.3.11 takes it; written apart from the code. */
const textOf = (line = '') =>
  line
    .slice(line.indexOf(':') + 1)
    .replaceAll(/\\(.)/gs, (_, letter: string) => (letter === 'n' || letter === 'N' ? '\n' : letter));

const at = (day: string, fromMinute: number, minutes: number) =>
  ({ kind: 'time', day, fromMinute, minutes }) as const;

describe('a calendar file', () => {
  it('is what RFC 5545 asks of an event of one day, line by line', () => {
    // 3.6.1: DTSTAMP and UID are needed; 3.8.2.2: the end is not part of it; 3.8.7.4: the sequence begins with 0.
    expect(made()).toBe(
      [
        'BEGIN:VCALENDAR',
        'VERSION:2.0',
        'PRODID:-//Pressminute//Orders//EN',
        'CALSCALE:GREGORIAN',
        'BEGIN:VEVENT',
        'UID:order-1-wanted',
        'DTSTAMP:19980119T070000Z',
        'SEQUENCE:0',
        'DTSTART;VALUE=DATE:20261214',
        'DTEND;VALUE=DATE:20261215',
        'SUMMARY:Ramblers Club wanted',
        'STATUS:CONFIRMED',
        'TRANSP:TRANSPARENT',
        'END:VEVENT',
        'END:VCALENDAR',
        '',
      ].join('\r\n'),
    );
  });

  it('writes days to the end of a month and a year', () => {
    const file = made({ when: { kind: 'days', from: '2026-12-30', to: '2026-12-31' } });
    expect(lineOf(file, 'DTEND')).toBe('DTEND;VALUE=DATE:20270101');
  });

  it.each([
    // 2:00 in New York on 19 January 1998 is 7:00 UTC: the pair of examples of 3.3.5.
    ['America/New_York', at('1998-01-19', 120, 60), '19980119T070000Z', '19980119T080000Z'],
    // Summer time: UTC+2.
    ['Europe/Berlin', at('2026-07-04', 540, 223), '20260704T070000Z', '20260704T104300Z'],
    // A zone of a quarter of an hour, and the day before in UTC.
    ['Asia/Kathmandu', at('2026-11-28', 60, 30), '20261127T191500Z', '20261127T194500Z'],
    // 3.3.5: 1:30 on 1 November 2026 is shown twice in New York and is the first of both, still at UTC−4;
    ['America/New_York', at('2026-11-01', 90, 60), '20261101T053000Z', '20261101T063000Z'],
    // 2:30 on 8 March 2026 is shown never: it is reckoned by UTC−5, as before the clock is put forward.
    ['America/New_York', at('2026-03-08', 150, 60), '20260308T073000Z', '20260308T083000Z'],
    // Past midnight.
    ['UTC', at('2026-11-28', 1380, 120), '20261128T230000Z', '20261129T010000Z'],
  ])('writes times of %s in UTC', (zone, when, start, end) => {
    const file = made({ when }, zone);
    expect(lineOf(file, 'DTSTART')).toBe(`DTSTART:${start}`);
    expect(lineOf(file, 'DTEND')).toBe(`DTEND:${end}`);
    expect(lineOf(file, 'TRANSP')).toBe('TRANSP:OPAQUE');
  });

  it('puts a stroke before what would end a text, and says a new line as \\n', () => {
    // 3.3.11; the first is the example of 3.8.1.5 in kind: commas, semicolons, strokes, new lines.
    const file = made({ title: 'Shirts; 37, back\\front', details: 'S 4\r\nM 9\nL 11' });
    expect(lineOf(file, 'SUMMARY')).toBe('SUMMARY:Shirts\\; 37\\, back\\\\front');
    expect(lineOf(file, 'DESCRIPTION')).toBe('DESCRIPTION:S 4\\nM 9\\nL 11');
  });

  it('keeps its id, raises its sequence and cancels as it is told', () => {
    const file = made({ sequence: 3, isCancelled: true });
    expect(lineOf(file, 'UID')).toBe('UID:order-1-wanted');
    expect(lineOf(file, 'SEQUENCE')).toBe('SEQUENCE:3');
    expect(lineOf(file, 'STATUS')).toBe('STATUS:CANCELLED');
  });

  it('begins a new line at 75 octets and not one sooner', () => {
    // SUMMARY: is 8 octets: 67 letters fill the line.
    expect(made({ title: 'x'.repeat(67) })).toContain(`SUMMARY:${'x'.repeat(67)}\r\nSTATUS`);
    expect(made({ title: 'x'.repeat(68) })).toContain(`SUMMARY:${'x'.repeat(67)}\r\n x\r\nSTATUS`);
    // é has two octets: the 67th letter would end at 76.
    expect(made({ title: `${'x'.repeat(66)}é` })).toContain(`SUMMARY:${'x'.repeat(66)}\r\n é\r\nSTATUS`);
  });

  it('with any words has lines of at most 75 octets, CRLF at the end of each, no letter torn, and gives the words back', () => {
    const words = fc.string({ unit: 'grapheme', maxLength: 200 });
    fc.assert(
      fc.property(words, words, fc.constantFrom('', '\n', ';', '\\n', ','), (one, other, between) => {
        const title = `${one}${between}${other}`;
        const file = made({ title, details: title });
        expect(file.endsWith('\r\n')).toBe(true);
        const lines = file.slice(0, -2).split('\r\n');
        for (const line of lines) {
          expect(Buffer.byteLength(line, 'utf8')).toBeLessThanOrEqual(75);
          expect(line).not.toMatch(/[\r\n]/);
          // A torn letter would come back as another one.
          expect(Buffer.from(line, 'utf8').toString('utf8')).toBe(line);
        }
        // A text cannot hold other control characters.
        const held = title.replaceAll(/\r\n|\r/g, '\n').replaceAll(/(?![\n\t])\p{Cc}/gu, '');
        expect(textOf(lineOf(file, 'SUMMARY'))).toBe(held);
      }),
      cases(300),
    );
  });
});

describe('the entries of an order', () => {
  const sessions = [
    { day: '2026-12-05', fromMinute: 557, minutes: 223, pieces: 37, parts: [] },
    { day: '2026-12-12', fromMinute: 540, minutes: 97.5, pieces: 12, parts: [] },
  ];
  const latest = { orderBlanksBy: '2026-11-30', approveBy: '2026-11-30', printBy: '2026-12-04' };

  it('have ids of their own that stay the same when their days move', () => {
    const before = orderEntries('order-1', '2026-12-11', latest, { sessions });
    const after = orderEntries('order-1', '2026-12-18', { ...latest, printBy: '2026-12-11' }, { sessions });
    expect(before.map(({ id }) => id)).toEqual([
      'order-1-approve',
      'order-1-orderBlanks',
      'order-1-print',
      'order-1-press-1',
      'order-1-press-2',
      'order-1-wanted',
    ]);
    expect(after.map(({ id }) => id)).toEqual(before.map(({ id }) => id));
  });

  it('leave out what there is nothing of', () => {
    const none = { orderBlanksBy: null, approveBy: '2026-12-04', printBy: null };
    expect(orderEntries('order-1', '2026-12-11', none, { sessions: [] }).map(({ what }) => what)).toEqual([
      'approve',
      'wanted',
    ]);
  });
});
