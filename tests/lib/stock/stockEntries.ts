import fc from 'fast-check';
import type { StockEntry } from '@/lib/stock/stockEntry';
import type { StockCause, StockGrade, StockItem, StockPlace } from '@/shared/schemas/stock';

const SHIRT = 'shirt';

/** @returns a size of the one blank of these tests. */
export const shirts = (size = 'L', lot: string | null = null): StockItem => ({
  kind: 'blank',
  blankId: SHIRT,
  size,
  lot,
});

export const home: StockPlace = { kind: 'home' };
export const van: StockPlace = { kind: 'van' };
export const shop: StockPlace = { kind: 'shop', name: 'Corner shop' };

/** When and by whom. */
interface Written {
  readonly device: string;
  readonly count: number;
  readonly at: number;
}

interface Lies {
  readonly item?: StockItem;
  readonly place?: StockPlace;
  readonly grade?: StockGrade;
}

/** Makes entries of one device, one second after the other. */
export function writer(device = 'aaaaaaaa', start = 0) {
  let written = 0;
  const next = (): Written & { readonly id: string; readonly version: 1 } => {
    written += 1;
    return { id: `${device}-${written}`, version: 1, device, count: written, at: start + written * 1000 };
  };
  const lying = ({ item = shirts(), place = home, grade = 'first' }: Lies) => ({ item, place, grade });
  return {
    move: (
      quantity: number,
      lies: Lies = {},
      cause: StockCause = quantity < 0 ? 'used' : 'bought',
    ): StockEntry => ({
      ...next(),
      kind: 'stockMove',
      body: { ...lying(lies), quantity, cause, reference: null, unitCost: null },
    }),
    transfer: (quantity: number, to: Lies, from: Lies = {}): StockEntry => ({
      ...next(),
      kind: 'stockTransfer',
      body: { from: lying(from), to: lying(to), quantity },
    }),
    count: (quantity: number, lies: Lies = {}): StockEntry => ({
      ...next(),
      kind: 'stockCount',
      body: { ...lying(lies), quantity },
    }),
  };
}

const item = fc
  .tuple(fc.constantFrom('M', 'L'), fc.constantFrom(null, 'A7', 'B2'))
  .map(([size, lot]) => shirts(size, lot));
const lies = fc.record({
  item,
  place: fc.constantFrom(home, van, shop),
  grade: fc.constantFrom('first' as const, 'second' as const),
});
const drawn = fc.oneof(
  fc.record({ kind: fc.constant('move' as const), lies, quantity: fc.integer({ min: -20, max: 20 }) }),
  fc.record({
    kind: fc.constant('transfer' as const),
    lies,
    to: lies,
    quantity: fc.integer({ min: 0, max: 20 }),
  }),
  fc.record({ kind: fc.constant('count' as const), lies, quantity: fc.integer({ min: 0, max: 20 }) }),
);

/** Entries of two devices whose clocks may stand anywhere, in the order in which they were written. */
export const stockEntries: fc.Arbitrary<readonly StockEntry[]> = fc
  .array(fc.tuple(drawn, fc.constantFrom('aaaaaaaa', 'bbbbbbbb'), fc.integer({ min: 0, max: 9 })), {
    maxLength: 12,
  })
  .map((all) => {
    const pens = new Map([
      ['aaaaaaaa', writer('aaaaaaaa')],
      ['bbbbbbbb', writer('bbbbbbbb')],
    ]);
    return all.flatMap(([what, device, at]): readonly StockEntry[] => {
      const pen = pens.get(device);
      if (pen === undefined) return [];
      const entry =
        what.kind === 'move'
          ? pen.move(what.quantity, what.lies)
          : what.kind === 'count'
            ? pen.count(what.quantity, what.lies)
            : pen.transfer(what.quantity, what.to, what.lies);
      return [{ ...entry, at }];
    });
  });
