import { describe, expect, it } from 'vitest';
import { type ClosedRow, isBookedTwice } from '@/lib/stall/evening/closeMoves';

import { goods, home, StallStock, thirty, van } from '@/tests/lib/stall/stallStock';

/** Of 8 brought 5 were sold, and the rest is as told. */
const eight = (more: Partial<ClosedRow>): ClosedRow => ({
  ...{ goods, brought: 8, sold: 5, given: 0, damaged: 0, seconds: 0, counted: 3 },
  ...more,
});

/** Eight of so many at home were loaded. */
const loaded = (atHome: number): StallStock => {
  const stock = new StallStock();
  stock.count(atHome);
  stock.load('spring', 8);
  return stock;
};

describe('what a close does to the stock', () => {
  it('empties the car and brings home what is left', () => {
    const stock = loaded(10);
    const moves = stock.close('spring', eight({ given: 1, counted: 2 }), 'close-1');
    expect(stock.lying).toEqual({ 'van first': 0, 'home first': 4 });
    expect(moves.map(({ cause, quantity }) => [cause, quantity])).toEqual([
      ['sold', -5],
      ['given', -1],
      ['returned', -2],
      ['returned', 2],
    ]);
    expect(moves.map(({ reference }) => reference?.id)).toEqual(Array(4).fill('close-1'));
  });

  it('books one that is nowhere as lost, and one too many as come back', () => {
    const fewer = loaded(8);
    fewer.close('spring', eight({ counted: 2 }), 'close-1');
    expect(fewer.lying).toEqual({ 'van first': 0, 'home first': 2 });
    const more = loaded(8);
    more.close('spring', eight({ counted: 4 }), 'close-1');
    expect(more.lying).toEqual({ 'van first': 0, 'home first': 4 });
  });

  it('brings home only what was counted where nobody ever noted anything', () => {
    const stock = new StallStock();
    stock.load('spring', 8);
    stock.close('spring', eight({ counted: 2 }), 'close-1');
    expect(stock.lying).toEqual({ 'home first': 2 });
    // What came home must not look as if it had been noted before.
    expect(stock.close('spring', eight({ counted: 2 }), 'close-2')).toEqual([]);
  });

  it('leaves in the car what nobody counted, until somebody does', () => {
    const stock = loaded(8);
    stock.close('spring', eight({ counted: null }), 'close-1');
    expect(stock.lying).toEqual({ 'van first': 3, 'home first': 0 });
    stock.close('spring', eight({ counted: 3 }), 'close-2');
    expect(stock.lying).toEqual({ 'van first': 0, 'home first': 3 });
    expect(new StallStock().closesOf('spring', eight({ counted: null }), 'close-1')).toEqual([]);
  });

  it('books what was pressed and never noted as made, for whatever was brought was there', () => {
    // Five were at home, eight went along.
    const stock = loaded(5);
    stock.close('spring', eight({}), 'close-1');
    expect(stock.lying).toEqual({ 'van first': 0, 'home first': 3 });
  });

  it('brings home seconds too where nobody ever noted anything', () => {
    const stock = new StallStock();
    stock.load('spring', 8);
    stock.close('spring', eight({ damaged: 1, seconds: 1, counted: 2 }), 'close-1');
    expect(stock.lying).toEqual({ 'home first': 2, 'home second': 1 });
  });

  it('keeps seconds in their own grade', () => {
    const stock = loaded(8);
    stock.close('spring', eight({ damaged: 1, seconds: 1, counted: 2 }), 'close-1');
    expect(stock.lying).toEqual({ 'van first': 0, 'home first': 2, 'home second': 1 });
  });
});

describe('a close takes from the car what is of its day alone', () => {
  it('with another day loaded before it is closed', () => {
    const stock = new StallStock();
    stock.count(30);
    stock.load('spring', 30);
    stock.load('autumn', 20);
    stock.close('spring', thirty, 'close-1');
    // Five are there in all: fifteen of the twenty are still to be pressed.
    expect(stock.lying).toEqual({ 'home first': -15, 'van first': 20 });
  });

  it('with pieces noted at home after the plan was fixed', () => {
    const stock = new StallStock();
    stock.load('spring', 30);
    stock.made(30);
    stock.close('spring', thirty, 'close-1');
    expect(stock.lying).toEqual({ 'van first': 0, 'home first': 5 });
  });

  it('with ten more put out from home during the day', () => {
    const stock = new StallStock();
    stock.count(40);
    stock.load('spring', 30);
    stock.close('spring', { ...thirty, brought: 40, sold: 35 }, 'close-1');
    expect(stock.lying).toEqual({ 'van first': 0, 'home first': 5 });
  });

  it('with one plan fixed by two devices', () => {
    const stock = new StallStock();
    stock.count(30);
    const other = stock.loadsOf('spring', 30);
    stock.load('spring', 30);
    stock.load('spring', 30, other);
    expect(stock.lying).toEqual({ 'home first': -30, 'van first': 60 });
    stock.close('spring', thirty, 'close-1');
    expect(stock.lying).toEqual({ 'van first': 0, 'home first': 5 });
  });
});

describe('a correction', () => {
  const closed = (): StallStock => {
    const stock = new StallStock();
    stock.count(30);
    stock.load('spring', 30);
    stock.close('spring', thirty, 'close-1');
    return stock;
  };

  it('moves nothing where goods are as they were, and what differs alone where they are not', () => {
    const stock = closed();
    expect(stock.close('spring', thirty, 'close-2')).toEqual([]);
    const moves = stock.close('spring', { ...thirty, sold: 24, given: 2, counted: 4 }, 'close-3');
    expect(moves.map(({ cause, quantity }) => [cause, quantity])).toEqual([
      ['sold', 1],
      ['given', -2],
      ['returned', 1],
      ['returned', -1],
    ]);
    expect(stock.lying).toEqual({ 'van first': 0, 'home first': 4 });
  });

  it('leaves what was counted at home since the close', () => {
    const stock = closed();
    stock.count(5);
    stock.close('spring', thirty, 'close-2');
    expect(stock.lying).toEqual({ 'van first': 0, 'home first': 5 });
    stock.close('spring', { ...thirty, sold: 26, counted: 4 }, 'close-3');
    stock.close('spring', { ...thirty, sold: 26, counted: 4 }, 'close-4');
    expect(stock.lying).toEqual({ 'van first': 0, 'home first': 5 });
  });

  it('brings seconds home beside first ones that were counted since', () => {
    const stock = closed();
    stock.count(5);
    stock.close('spring', { ...thirty, sold: 24, damaged: 1, seconds: 1 }, 'close-2');
    expect(stock.lying).toEqual({ 'van first': 0, 'home first': 5, 'home second': 1 });
  });

  it('takes what was counted at the moment of the close as counted before it', () => {
    const stock = closed();
    const first = stock.moves.find(({ body }) => body.reference?.id === 'close-1');
    stock.count(5, home, first?.at);
    // One fewer came home than was told.
    stock.close('spring', { ...thirty, sold: 26, counted: 4 }, 'close-2');
    expect(stock.lying).toEqual({ 'van first': 0, 'home first': 4 });
  });

  it('leaves leftovers at the shop that they went to, and makes none', () => {
    const stock = closed();
    stock.toShop(5);
    stock.close('spring', thirty, 'close-2');
    expect(stock.lying).toEqual({ 'van first': 0, 'home first': 0, 'shop first': 5 });
    // One more was sold than was told: it cannot lie at the shop too, which the stock tells.
    const moves = stock.close('spring', { ...thirty, sold: 26, counted: 4 }, 'close-3');
    expect(moves.filter(({ cause }) => cause === 'made')).toEqual([]);
    expect(stock.lying).toEqual({ 'van first': 0, 'home first': -1, 'shop first': 5 });
  });

  it('puts right what two devices closed before they met, what both booked as made too', () => {
    const stock = new StallStock();
    stock.count(5);
    stock.load('spring', 8);
    const other = stock.closesOf('spring', eight({}), 'close-2');
    stock.close('spring', eight({}), 'close-1');
    const close = (row: ClosedRow) => ({ goods: [{ ...row, ...goods }] });
    expect(isBookedTwice(close(eight({})), stock.closeStock('spring'))).toBe(false);
    stock.close('spring', eight({}), 'close-2', other);
    // Five were sold twice and three made twice, and the car was emptied twice.
    expect(stock.lying).toEqual({ 'van first': -8, 'home first': 9 });
    expect(isBookedTwice(close(eight({})), stock.closeStock('spring'))).toBe(true);
    stock.close('spring', eight({}), 'close-3');
    expect(stock.lying).toEqual({ 'van first': 0, 'home first': 3 });
    expect(isBookedTwice(close(eight({})), stock.closeStock('spring'))).toBe(false);
  });

  it('leaves a car that was counted for another day as it is', () => {
    const stock = closed();
    stock.count(7, van);
    expect(stock.close('spring', thirty, 'close-2')).toEqual([]);
  });
});
