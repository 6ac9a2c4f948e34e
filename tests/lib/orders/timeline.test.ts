import { describe, expect, it } from 'vitest';
import { deviceLetters } from '@/lib/orders/deviceLetters';
import { likelyNumber } from '@/lib/orders/likelyNumber';
import { orderTimeline } from '@/lib/orders/orderTimeline';
import { orderNumberText } from '@/shared/orderNumberText';
import type { Entry } from '@/shared/schemas/happened';
import { anOrderLog, approve, pay, proofOut, steps, tell } from '@/tests/fixtures/orderLog';

const ofOrder = { orderId: 'order-1', jobIds: ['job-1'], artworkIds: ['badge'] };

describe('the timeline of an order', () => {
  it('tells what happened when and on which device, with what was taken back marked', () => {
    const log = anOrderLog();
    tell(log, steps.enquired, { at: 10 });
    const paid = pay(log, 38066, { at: 20, day: '2026-11-25' });
    approve(log, 'badge', 1, { device: 'laptop00', at: 15 });
    approve(log, 'another', 1, { at: 16 });
    pay(log, 1, { orderId: 'order-2', at: 17 });
    proofOut(log, [], { device: 'laptop00', at: 30, withdrawn: true });
    const back: Entry = {
      ...{ id: 'phone000-9', kind: 'takeBack', version: 1, device: 'phone000', count: 9, at: 40 },
      body: { entryId: paid.id },
    };
    const entries = [back, ...log.noted];
    const letters = deviceLetters(entries, log.papers, null);
    const rows = orderTimeline({ ...ofOrder, entries, papers: log.papers, letters });
    expect(
      rows.map(({ of, day, letter, isTakenBack }) => [
        of.table === 'entry' ? of.entry.kind : of.paper.kind,
        day,
        letter,
        isTakenBack,
      ]),
    ).toEqual([
      ['orderEvent', '2026-11-24', 'A', false],
      ['approval', null, 'A', false],
      ['payment', '2026-11-25', 'A', true],
      ['proof', '2026-11-26', 'A', true],
    ]);
  });

  it('keeps the order of a device whose clock was set back a year', () => {
    const log = anOrderLog();
    const year = 31_536_000_000;
    tell(log, steps.enquired, { at: 2 * year });
    pay(log, 1, { at: year });
    tell(log, steps.plain('held'), { device: 'laptop00', at: year + 1 });
    const rows = orderTimeline({ ...ofOrder, entries: log.noted, papers: [], letters: new Map() });
    expect(rows.map(({ id }) => id)).toEqual(['laptop00-1', 'phone000-1', 'phone000-2']);
    expect(rows.every(({ letter }) => letter === null)).toBe(true);
  });

  it('knows a device by its latest letter, and this one by its own', () => {
    const log = anOrderLog();
    tell(log, steps.enquired, { at: 10 });
    tell(log, { ...steps.enquired, number: { year: 2026, count: 1, letter: 'K' } }, { at: 5 });
    tell(log, steps.plain('held'), { device: 'laptop00' });
    const letters = deviceLetters(log.noted, [], { id: 'laptop00', letter: 'T' });
    expect([...letters]).toEqual([
      ['phone000', 'K'],
      ['laptop00', 'T'],
    ]);
  });
});

describe('the number of an order', () => {
  it('will likely be the next of this device in its year', () => {
    const log = anOrderLog();
    const numbered = (year: number, count: number, letter: string) =>
      tell(log, { what: 'enquired', number: { year, count, letter } });
    const events = [numbered(2026, 14, 'A'), numbered(2026, 40, 'K'), numbered(2025, 90, 'A')];
    expect(likelyNumber(events, 'A', 2026)).toEqual({ year: 2026, count: 15, letter: 'A' });
    expect(likelyNumber(events, 'A', 2027)).toEqual({ year: 2027, count: 1, letter: 'A' });
    expect(likelyNumber([], null, 2026)).toEqual({ year: 2026, count: 1, letter: 'A' });
  });

  it('is year, count and letter', () => {
    expect(orderNumberText({ year: 2026, count: 14, letter: 'A' })).toBe('26-014A');
    expect(orderNumberText({ year: 2007, count: 1204, letter: 'K' })).toBe('07-1204K');
  });
});
