// To become tests/outside/calendarFile.test.ts once the devDependency ical.js 2.2.1 (MPL-2.0, brings its own types) is installed.
import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { type CalendarEntry, calendarFile } from '@/lib/exports/calendarFile';
import { cases } from '@/tests/tools/cases';

const MADE = Date.UTC(2026, 10, 25, 12);

const entry: CalendarEntry = {
  id: 'order-1-wanted',
  sequence: 2,
  when: { kind: 'days', from: '2026-12-14', to: '2026-12-14' },
  title: 'Ramblers Club; 37 shirts, wanted',
  details: 'S 4\nM 9 \\ L 11',
  isCancelled: false,
};

const events = (file: string) =>
  new ICAL.Component(ICAL.parse(file)).getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));

/** The calendar file as ical.js, the parser of a mail program's calendar, reads it. */
describe('an independent reader of calendar files', () => {
  it('finds a day as a day, its end not part of it, and the words as they were', () => {
    const [event] = events(calendarFile([entry], MADE, 'America/New_York'));
    expect(event?.startDate.isDate).toBe(true);
    expect(event?.startDate.toString()).toBe('2026-12-14');
    expect(event?.endDate.toString()).toBe('2026-12-15');
    expect(event?.summary).toBe(entry.title);
    expect(event?.description).toBe(entry.details);
    expect([event?.uid, event?.sequence]).toEqual(['order-1-wanted', 2]);
  });

  it('finds the moment of a session whatever the zone of the device', () => {
    const when = { kind: 'time', day: '2026-12-05', fromMinute: 557, minutes: 223 } as const;
    const [event] = events(calendarFile([{ ...entry, when }], MADE, 'America/New_York'));
    // 9:17 at UTC−5.
    expect(event?.startDate.toJSDate().toISOString()).toBe('2026-12-05T14:17:00.000Z');
    expect(event?.endDate.toJSDate().toISOString()).toBe('2026-12-05T18:00:00.000Z');
  });

  it('gives any words back', () => {
    const words = fc.string({ unit: 'grapheme', maxLength: 300 });
    fc.assert(
      fc.property(words, words, (title, details) => {
        const [event] = events(calendarFile([{ ...entry, title, details }], MADE, 'UTC'));
        expect(event?.summary).toBe(title);
        expect(event?.description ?? '').toBe(details);
      }),
      cases(300),
    );
  });
});
