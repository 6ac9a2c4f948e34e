import { describe, expect, it } from 'vitest';
import { type Closed, carHeld } from '@/lib/stall/car/carHeld';
import { finishedFor } from '@/lib/stall/car/finishedFor';
import { takenAlong, takenMoves } from '@/lib/stall/car/takenAlong';
import { closeBody } from '@/lib/stall/evening/closeBody';
import { type ClosedRow, isBookedTwice } from '@/lib/stall/evening/closeMoves';
import { fairAnswers, fairClock, fairEvening } from '@/tests/lib/stall/evening/fairEvening';
import { goods, StallStock, van } from '@/tests/lib/stall/stallStock';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const close = closeBody(fairEvening(fairAnswers), {
  ...{ number: { count: 1, letter: 'A' }, issuedOn: TEST_DAY, planId: 'plan-1' },
  ...{ answers: fairAnswers, clock: fairClock },
});

/** Of eight brought five were sold, and the rest was counted or not. */
const eight = (counted: number | null): ClosedRow => ({
  ...{ goods, brought: 8, sold: 5, given: 0, damaged: 0, seconds: 0, counted },
});

const closesOf = (days: readonly string[]): Closed => ({
  dayClose: days.map((stallDayId) => ({
    ...{ id: 'close-1', withdrawn: false },
    body: { ...close, stallDayId, title: 'Spring Fair' },
  })),
});

/** Pieces of the one goods that a day is planned with. */
const piecesFor = (stock: StallStock, day: string, closed: readonly string[] = []) =>
  finishedFor(day, stock.piles, carHeld(stock, closesOf(closed)));

it('a day is planned with what lies at home before it is loaded, and knows nothing of what nobody noted', () => {
  const stock = new StallStock();
  expect(piecesFor(stock, 'spring')).toEqual([]);
  stock.count(12);
  expect(piecesFor(stock, 'spring')).toEqual([{ ...goods, pieces: 12 }]);
});

it('a day that is loaded is planned with what lies in the car for it too, and no other day is', () => {
  const stock = new StallStock();
  stock.count(12);
  stock.load('spring', 8);
  expect(piecesFor(stock, 'spring')).toEqual([{ ...goods, pieces: 12 }]);
  expect(piecesFor(stock, 'autumn')).toEqual([{ ...goods, pieces: 4 }]);
});

it('the day that was loaded last is short of what there was not', () => {
  const stock = new StallStock();
  stock.count(25);
  stock.load('spring', 20);
  stock.load('autumn', 12);
  // Seven of the twelve are still to be pressed, and none of the twenty.
  expect(piecesFor(stock, 'spring')).toEqual([{ ...goods, pieces: 20 }]);
  expect(piecesFor(stock, 'autumn')).toEqual([{ ...goods, pieces: 5 }]);
  expect(piecesFor(stock, 'summer')).toEqual([{ ...goods, pieces: 0 }]);
});

it('a plan that was taken back has nothing in the car', () => {
  const stock = new StallStock();
  stock.count(12);
  stock.load('spring', 8);
  stock.load('spring', 0);
  expect(piecesFor(stock, 'spring')).toEqual([{ ...goods, pieces: 12 }]);
});

it('a day that was closed by a count has nothing in the car, and what came home is there for the next', () => {
  const stock = new StallStock();
  stock.count(12);
  stock.load('spring', 8);
  stock.close('spring', eight(3), 'close-1');
  expect(carHeld(stock, closesOf(['spring'])).left).toEqual([]);
  expect(piecesFor(stock, 'autumn', ['spring'])).toEqual([{ ...goods, pieces: 7 }]);
});

describe('what a closed day left in the car uncounted', () => {
  /** Four at home, three in the car. */
  const left = (): StallStock => {
    const stock = new StallStock();
    stock.count(12);
    stock.load('spring', 8);
    stock.close('spring', eight(null), 'close-1');
    return stock;
  };
  const closed = closesOf(['spring']);
  const found = (pieces: number) => [{ ...goods, stallDayId: 'spring', title: 'Spring Fair', pieces }];
  /** Fixes a plan of the autumn. */
  const fix = (stock: StallStock, bring: number) => {
    stock.load(
      'autumn',
      bring,
      takenMoves(takenAlong('autumn', [{ ...goods, bring }], stock.moves, carHeld(stock, closed).left)),
    );
    stock.load('autumn', bring);
  };

  it('is there for whichever day is next, and is told by the day it is of', () => {
    expect(carHeld(left(), closed).left).toEqual(found(3));
    expect(piecesFor(left(), 'autumn', ['spring'])).toEqual([{ ...goods, pieces: 7 }]);
    expect(piecesFor(left(), 'spring', ['spring'])).toEqual([{ ...goods, pieces: 7 }]);
  });

  it('comes along with the next plan before what lies at home does', () => {
    const stock = left();
    fix(stock, 6);
    expect(stock.lying).toEqual({ 'home first': 1, 'van first': 6 });
    expect(carHeld(stock, closed).left).toEqual([]);
    expect(piecesFor(stock, 'autumn', ['spring'])).toEqual([{ ...goods, pieces: 7 }]);
    expect(piecesFor(stock, 'winter', ['spring'])).toEqual([{ ...goods, pieces: 1 }]);
    // Fixed anew with one more, that one comes from home.
    fix(stock, 7);
    expect(stock.lying).toEqual({ 'home first': 0, 'van first': 7 });
  });

  it('stays where it lies as far as the next plan brings fewer', () => {
    const stock = left();
    fix(stock, 2);
    expect(stock.lying).toEqual({ 'home first': 4, 'van first': 3 });
    expect(carHeld(stock, closed).left).toEqual(found(1));
    expect(piecesFor(stock, 'winter', ['spring'])).toEqual([{ ...goods, pieces: 5 }]);
  });

  it('is what lies there once the car was counted', () => {
    const stock = left();
    stock.count(1, van);
    expect(carHeld(stock, closed).left).toEqual(found(1));
    expect(piecesFor(stock, 'autumn', ['spring'])).toEqual([{ ...goods, pieces: 5 }]);
  });

  it('is not brought home a second time where its day is counted after another took it along', () => {
    const stock = left();
    fix(stock, 6);
    expect(isBookedTwice({ goods: [{ ...eight(null), ...goods }] }, stock.closeStock('spring'))).toBe(false);
    expect(stock.close('spring', eight(3), 'close-2')).toEqual([]);
    // Only two were left: one of the six that were loaded came from nowhere, which the stock at home is short of.
    stock.close('spring', eight(2), 'close-3');
    expect(stock.lying).toEqual({ 'home first': 0, 'van first': 6 });
  });
});
