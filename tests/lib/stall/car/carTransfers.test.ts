import { describe, expect, it } from 'vitest';
import { carTransfers } from '@/lib/stall/car/carTransfers';
import { foldStock, type Pile } from '@/lib/stock/foldStock';
import type { StockEntry } from '@/lib/stock/stockEntry';
import type { StockTransfer } from '@/shared/schemas/stock';

const goods = (lineId: string, bring: number) => ({ jobId: 'fair-shirts', lineId, size: 'L', bring });
const item = (lineId: string) => ({ kind: 'finished', jobId: 'fair-shirts', lineId, size: 'L' }) as const;
const home = { place: { kind: 'home' }, grade: 'first' } as const;
const van = { place: { kind: 'van' }, grade: 'first' } as const;

let count = 0;
const written = { device: 'devicea1', version: 1 } as const;
function entry(kind: 'stockTransfer', body: StockTransfer): StockEntry {
  count += 1;
  return { ...written, id: `devicea1-${count}`, count, at: count, kind, body };
}
function counted(lineId: string, quantity: number, where: typeof home | typeof van = home): StockEntry {
  count += 1;
  const body = { item: item(lineId), ...where, quantity };
  return { ...written, id: `devicea1-${count}`, count, at: count, kind: 'stockCount', body };
}
const quantityOf = (piles: readonly Pile[], kind: 'home' | 'van') =>
  piles.find(({ place }) => place.kind === kind)?.quantity;

describe('loading the car', () => {
  it('moves what is brought from home to the car, and nothing of what nobody ever counted', () => {
    expect(carTransfers([goods('fern', 9), goods('otter', 7)], foldStock([counted('fern', 12)]))).toEqual([
      { from: { item: item('fern'), ...home }, to: { item: item('fern'), ...van }, quantity: 9 },
    ]);
  });

  it('moves all that is brought where fewer lie at home: those pressed later come home by themselves', () => {
    const before = [counted('fern', 3)];
    const moved = carTransfers([goods('fern', 9)], foldStock(before)).map((body) =>
      entry('stockTransfer', body),
    );
    const piles = foldStock([...before, ...moved]);
    expect([quantityOf(piles, 'home'), quantityOf(piles, 'van')]).toEqual([-6, 9]);
  });

  it('moves what a second plan differs by alone, either way', () => {
    const loaded = foldStock([counted('fern', 3), counted('fern', 9, van)]);
    expect(carTransfers([goods('fern', 9)], loaded)).toEqual([]);
    expect(carTransfers([goods('fern', 11)], loaded)).toEqual([
      { from: { item: item('fern'), ...home }, to: { item: item('fern'), ...van }, quantity: 2 },
    ]);
    // A plan that is taken back brings none.
    expect(carTransfers([goods('fern', 0)], loaded)).toEqual([
      { from: { item: item('fern'), ...van }, to: { item: item('fern'), ...home }, quantity: 9 },
    ]);
  });

  it('leaves pieces of second grade, other sizes and what lies at shops where they are', () => {
    const shop = { place: { kind: 'shop', name: 'Corner' }, grade: 'first' } as const;
    const piles: readonly Pile[] = [
      { item: item('fern'), place: home.place, grade: 'second', quantity: 5, lots: [], counted: null },
      { item: item('fern'), ...shop, quantity: 5, lots: [], counted: null },
      { item: { ...item('fern'), size: 'M' }, ...home, quantity: 5, lots: [], counted: null },
    ];
    expect(carTransfers([goods('fern', 5)], piles)).toEqual([]);
  });
});
