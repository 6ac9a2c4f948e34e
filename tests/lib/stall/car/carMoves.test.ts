import { describe, expect, it } from 'vitest';
import { carMoves } from '@/lib/stall/car/carMoves';
import { planMoves } from '@/lib/stall/car/planMoves';
import { secondsFor } from '@/lib/stall/car/secondsFor';
import { foldStock, type Pile } from '@/lib/stock/foldStock';
import { goods, home, item, StallStock, van } from '@/tests/lib/stall/stallStock';

const moved = (quantity: number) => {
  const same = { item, cause: 'returned', reference: { kind: 'stallDay', id: 'spring' }, unitCost: null };
  return [
    { ...same, ...home, quantity: -quantity },
    { ...same, ...van, quantity },
  ];
};

describe('loading the car', () => {
  it('moves what is brought from home to the car, and nothing of what nobody ever counted', () => {
    const stock = new StallStock();
    stock.count(12);
    const otter = { ...goods, lineId: 'otter', bring: 7 };
    expect(carMoves('spring', [{ ...goods, bring: 9 }, otter], { piles: stock.piles, moves: [] })).toEqual(
      moved(9),
    );
  });

  it('moves all that is brought where fewer lie at home: those pressed later come home by themselves', () => {
    const stock = new StallStock();
    stock.count(3);
    stock.load('spring', 9);
    expect(stock.lying).toEqual({ 'home first': -6, 'van first': 9 });
  });

  it('moves what a second plan differs by alone, either way', () => {
    const stock = new StallStock();
    stock.count(12);
    stock.load('spring', 9);
    expect(stock.loadsOf('spring', 9)).toEqual([]);
    expect(stock.loadsOf('spring', 11)).toEqual(moved(2));
    // A plan that is taken back brings none.
    expect(stock.loadsOf('spring', 0)).toEqual(moved(-9));
  });

  it('leaves in the car what another day has there', () => {
    const stock = new StallStock();
    stock.count(30);
    stock.load('spring', 12);
    stock.load('autumn', 10);
    expect(stock.lying).toEqual({ 'home first': 8, 'van first': 22 });
    stock.load('spring', 0);
    expect(stock.lying).toEqual({ 'home first': 20, 'van first': 10 });
  });

  it('leaves pieces of second grade, other sizes and what lies at shops where they are', () => {
    const shop = { place: { kind: 'shop', name: 'Corner' }, grade: 'first' } as const;
    const piles: readonly Pile[] = [
      { item, place: home.place, grade: 'second', quantity: 5, lots: [], counted: null },
      { item, ...shop, quantity: 5, lots: [], counted: null },
      { item: { ...item, size: 'M' }, ...home, quantity: 5, lots: [], counted: null },
    ];
    expect(carMoves('spring', [{ ...goods, bring: 5 }], { piles, moves: [] })).toEqual([]);
  });

  it('leaves nothing anywhere of a stock that is empty', () => {
    expect(carMoves('spring', [{ ...goods, bring: 5 }], { piles: foldStock([]), moves: [] })).toEqual([]);
  });
});

describe('a plan in the place of another', () => {
  it('takes out of the car what was loaded for the day and it does not name, what other days have there not', () => {
    const stock = new StallStock();
    stock.count(30);
    stock.load('spring', 9);
    stock.load('autumn', 4);
    const otter = { ...goods, lineId: 'otter', bring: 7 };
    expect(planMoves('spring', [otter], stock)).toEqual(moved(-9));
    expect(planMoves('spring', [], stock)).toEqual(moved(-9));
    expect(planMoves('spring', [{ ...goods, bring: 11 }], stock)).toEqual(moved(2));
    // What a second plan took out already stays out.
    stock.load('spring', 0);
    expect(planMoves('spring', [otter], stock)).toEqual([]);
  });
});

describe('seconds kept from before', () => {
  const second = { place: { kind: 'home' }, grade: 'second' } as const;

  it('go into the car in their own grade, sell, and come home with the close', () => {
    const stock = new StallStock();
    stock.count(5);
    stock.count(2, second);
    expect(secondsFor('spring', stock)).toEqual([{ ...goods, pieces: 2 }]);
    stock.load('spring', 5, planMoves('spring', [{ ...goods, bring: 5, seconds: 2 }], stock));
    expect(stock.lying).toEqual({ 'home first': 0, 'home second': 0, 'van first': 5, 'van second': 2 });
    // They lie in the car for this day, and for no other.
    expect([secondsFor('spring', stock), secondsFor('autumn', stock)]).toEqual([
      [{ ...goods, pieces: 2 }],
      [],
    ]);
    // Two firsts and one second were sold.
    const row = { goods, brought: 5, sold: 3, keptSold: 1, given: 0, damaged: 0, seconds: 0, counted: 3 };
    stock.close('spring', row, 'close-1');
    expect(stock.lying).toEqual({ 'home first': 3, 'home second': 1, 'van first': 0, 'van second': 0 });
  });

  it('stay in the car where nothing is said of them, and come out of it with a plan without them', () => {
    const stock = new StallStock();
    stock.count(2, second);
    stock.load('spring', 0, planMoves('spring', [{ ...goods, bring: 0, seconds: 2 }], stock));
    expect(stock.loadsOf('spring', 0)).toEqual([]);
    stock.load('spring', 0, planMoves('spring', [{ ...goods, bring: 0 }], stock));
    expect(stock.lying).toEqual({ 'home second': 2, 'van second': 0 });
  });
});
