import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entriesInForce, inOrder, takenBackAmong } from '@/lib/stored/entriesInForce';
import { emptyOrder, withEntries } from '@/lib/stored/entryOrder';
import type { Entry } from '@/shared/schemas/happened';
import { cases } from '@/tests/tools/cases';

const anEntry = (device: string, count: number, more: Partial<Entry> = {}): Entry => ({
  id: `${device}-${count}`,
  kind: 'inkRefill',
  version: 1,
  device,
  count,
  at: count,
  body: { mL: count },
  ...more,
});
const aTaker = (device: string, count: number, entryId: string, at = count): Entry =>
  anEntry(device, count, { kind: 'takeBack', at, body: { entryId } });
const ids = (entries: readonly Entry[]): readonly string[] => entries.map(({ id }) => id);

/**
 * What up to three devices wrote, each with a clock that is set back and forth, and which of them took back what:
 * each only what it could know, its own and what others wrote, in whatever order.
 */
const written = fc
  .array(
    fc.record({
      device: fc.constantFrom('phone000', 'laptop00', 'stall000'),
      at: fc.integer({ min: 0, max: 30 }),
      takes: fc.option(fc.nat(), { freq: 1 }),
    }),
    { maxLength: 40 },
  )
  .map((steps) => {
    const entries: Entry[] = [];
    for (const { device, at, takes } of steps) {
      const count = 1 + entries.filter((entry) => entry.device === device).length;
      const target = takes === null ? undefined : entries[takes % Math.max(1, entries.length)];
      entries.push(
        target === undefined ? anEntry(device, count, { at }) : aTaker(device, count, target.id, at),
      );
    }
    return entries;
  });
const arrivals = written.chain((entries) =>
  fc.record({
    entries: fc.constant(entries),
    other: fc.shuffledSubarray(entries, { minLength: entries.length }),
    cut: fc.nat({ max: entries.length }),
  }),
);

describe('entries of several devices', () => {
  it('stand in the same order and fold to the same, in whatever order they arrived', () => {
    fc.assert(
      fc.property(arrivals, ({ entries, other }) => {
        expect(ids(inOrder(other))).toEqual(ids(inOrder(entries)));
        expect(ids(entriesInForce(other))).toEqual(ids(entriesInForce(entries)));
        expect([...takenBackAmong(other)].sort()).toEqual([...takenBackAmong(entries)].sort());
      }),
      cases(1_000),
    );
  });

  it('fold to the same whether they are brought together at once or in two goes', () => {
    fc.assert(
      fc.property(arrivals, ({ entries, other, cut }) => {
        const met = new Map([...other.slice(0, cut), ...entries].map((entry) => [entry.id, entry]));
        expect(ids(entriesInForce([...met.values()]))).toEqual(ids(entriesInForce(entries)));
      }),
      cases(300),
    );
  });

  it('are put into an order as they would stand in it from the start, however many at a time', () => {
    fc.assert(
      fc.property(arrivals, fc.array(fc.nat({ max: 40 })), ({ other }, cuts) => {
        const places = [0, ...cuts.toSorted((one, next) => one - next), other.length];
        const inGoes = places.reduce(
          (order, from, index) => withEntries(order, other.slice(from, places[index + 1] ?? from)),
          withEntries<Entry>(emptyOrder, []),
        );
        expect(ids(inGoes.entries)).toEqual(ids(inOrder(other)));
      }),
      cases(500),
    );
  });

  it('stand by count within a device, whatever its clock did', () => {
    fc.assert(
      fc.property(written, (entries) => {
        for (const device of new Set(entries.map((entry) => entry.device))) {
          const counts = inOrder(entries).flatMap((entry) => (entry.device === device ? [entry.count] : []));
          expect(counts).toEqual(counts.toSorted((one, other) => one - other));
        }
      }),
      cases(300),
    );
  });

  it('count exactly where no entry that counts takes them back', () => {
    fc.assert(
      fc.property(written, (entries) => {
        const out = takenBackAmong(entries);
        for (const { id } of entries) {
          const taken = entries.some(
            (taker) =>
              taker.kind === 'takeBack' &&
              !out.has(taker.id) &&
              (taker.body as { readonly entryId: string }).entryId === id,
          );
          expect(out.has(id)).toBe(taken);
        }
      }),
      cases(500),
    );
  });

  it('stand by clock between devices, and of the same moment by the name of the device', () => {
    const entries = [
      anEntry('phone000', 1, { at: 5 }),
      anEntry('laptop00', 1, { at: 5 }),
      anEntry('stall000', 1, { at: 4 }),
    ];
    expect(ids(inOrder(entries))).toEqual(['stall000-1', 'laptop00-1', 'phone000-1']);
  });

  it('go on from the latest a clock had shown once it is set back', () => {
    const entries = [
      anEntry('phone000', 1, { at: 100 }),
      anEntry('phone000', 2, { at: 10 }),
      anEntry('laptop00', 1, { at: 50 }),
    ];
    expect(ids(inOrder(entries))).toEqual(['laptop00-1', 'phone000-1', 'phone000-2']);
  });
});

describe('taking back', () => {
  it('leaves out the entry and itself, and taken back in its turn lets it count again', () => {
    const [entry, taker] = [anEntry('phone000', 1), aTaker('phone000', 2, 'phone000-1')];
    expect(ids(entriesInForce([entry, taker]))).toEqual([]);
    expect(ids(entriesInForce([entry, taker, aTaker('phone000', 3, 'phone000-2')]))).toEqual(['phone000-1']);
  });

  it('by two at once needs both taken back before the entry counts again', () => {
    const twice = [
      anEntry('phone000', 1),
      aTaker('phone000', 2, 'phone000-1'),
      aTaker('laptop00', 1, 'phone000-1'),
      aTaker('phone000', 3, 'phone000-2'),
    ];
    expect(ids(entriesInForce(twice))).toEqual([]);
    expect(ids(entriesInForce([...twice, aTaker('laptop00', 2, 'laptop00-1')]))).toEqual(['phone000-1']);
  });

  it('of what is not here yet waits for it', () => {
    const taker = aTaker('laptop00', 1, 'phone000-1');
    expect(entriesInForce([taker])).toEqual([]);
    expect(entriesInForce([anEntry('phone000', 1), taker])).toEqual([]);
  });

  it('in a ring, which only a hand could write, leaves all of the ring counting', () => {
    const ring = [
      anEntry('phone000', 1),
      aTaker('phone000', 2, 'phone000-3'),
      aTaker('phone000', 3, 'phone000-2'),
      aTaker('phone000', 4, 'phone000-4'),
    ];
    expect(takenBackAmong(ring)).toEqual(new Set());
    // Taken back from outside, the ring opens: 2 is out, so 3 counts.
    expect(takenBackAmong([...ring, aTaker('laptop00', 1, 'phone000-2')])).toEqual(new Set(['phone000-2']));
  });

  it.each([
    [49_999, []],
    [50_000, ['phone000-1']],
  ])('%i deep is followed to its end', (deep, inForce) => {
    const chain = Array.from({ length: deep }, (_, index) =>
      aTaker('phone000', index + 2, `phone000-${index + 1}`),
    );
    expect(ids(entriesInForce([anEntry('phone000', 1), ...chain]))).toEqual(inForce);
  });
});
