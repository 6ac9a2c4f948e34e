import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { StockEntry } from '@/lib/stock/stockEntry';
import { stockValue } from '@/lib/stock/stockValue';
import { home, shirts, shop, van, writer } from '@/tests/lib/stock/stockEntries';
import { cases } from '@/tests/tools/cases';

const places = [home, van, shop] as const;
const place = fc.constantFrom(...places);
const steps = fc.array(
  fc.record({
    what: fc.constantFrom('buy', 'use', 'move', 'count'),
    many: fc.integer({ min: 1, max: 12 }),
    minor: fc.integer({ min: 0, max: 999 }),
    from: place,
    to: place,
    lot: fc.constantFrom(null, 'A', 'B'),
  }),
  { maxLength: 25 },
);

interface Shirt {
  readonly lot: string | null;
  readonly minor: number;
}

/** A shelf of single shirts, the oldest first: the lot that is named goes first, then whatever is oldest. */
function takeOut(shelf: Shirt[], many: number, lot: string | null): readonly Shirt[] {
  return Array.from({ length: many }, () => {
    const found = lot === null ? 0 : shelf.findIndex((one) => one.lot === lot);
    const [shirt] = shelf.splice(Math.max(0, found), 1);
    if (shirt === undefined) throw new Error('nothing is there');
    return shirt;
  });
}

/** Notes what can be done, and does it to single shirts beside it. */
function done(drawn: typeof steps extends fc.Arbitrary<infer Of> ? Of : never) {
  const pen = writer();
  const shelves = new Map<unknown, Shirt[]>(places.map((one) => [one, []]));
  const entries: StockEntry[] = [];
  let paid = 0;
  let used = 0;
  for (const { what, many, minor, from, to, lot } of drawn) {
    const shelf = shelves.get(from) ?? [];
    const there = Math.min(many, shelf.length);
    const item = shirts('L', lot);
    if (what === 'buy') {
      const entry = pen.move(many, { place: from, item });
      if (entry.kind !== 'stockMove') continue;
      entries.push({ ...entry, body: { ...entry.body, unitCost: { currency: 'USD', minor } } });
      shelf.push(...Array.from({ length: many }, () => ({ lot, minor })));
      paid += many * minor;
    } else if (what === 'use' && there > 0) {
      entries.push(pen.move(-there, { place: from, item }));
      for (const shirt of takeOut(shelf, there, lot)) used += shirt.minor;
    } else if (what === 'move' && there > 0 && from !== to) {
      entries.push(pen.transfer(there, { place: to, item }, { place: from, item }));
      shelves.get(to)?.push(...takeOut(shelf, there, lot).map((shirt) => ({ ...shirt, lot })));
    } else if (what === 'count') {
      // Fewer than there were, or as many: what is missing is used up.
      entries.push(pen.count(there, { place: from, item: shirts('L') }));
      for (const shirt of takeOut(shelf, shelf.length - there, null)) used += shirt.minor;
      shelf.splice(0, shelf.length, ...shelf.map((shirt) => ({ ...shirt, lot: null })));
    }
  }
  return { entries, paid, used };
}

test('what was paid for stock is what lies there and what was used of it, shirt by shirt', () => {
  fc.assert(
    fc.property(steps, fc.array(fc.nat()), (drawn, keys) => {
      const { entries, paid, used } = done(drawn);
      const mixed = entries
        .map((entry, at) => ({ entry, key: keys[at % Math.max(1, keys.length)] ?? at }))
        .toSorted((one, other) => one.key - other.key)
        .map(({ entry }) => entry);
      const values = stockValue(mixed);
      const worth = values.flatMap((one) => one.paid).reduce((sum, { minor }) => sum + minor, 0);
      expect(worth).toBeCloseTo(paid - used, 6);
      expect(values.every(({ unknown }) => unknown === 0)).toBe(true);
    }),
    cases(300),
  );
});
