import { expect, it } from 'vitest';
import { finishedFor } from '@/lib/stall/car/finishedFor';
import { closeBody } from '@/lib/stall/evening/closeBody';
import { fairAnswers, fairClock, fairEvening } from '@/tests/lib/stall/evening/fairEvening';
import { goods, StallStock } from '@/tests/lib/stall/stallStock';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const close = closeBody(fairEvening(fairAnswers), {
  ...{ number: { count: 1, letter: 'A' }, issuedOn: TEST_DAY, planId: 'plan-1' },
  ...{ answers: fairAnswers, clock: fairClock },
});

/** Pieces of the one goods that a day is planned with. */
const piecesFor = (stock: StallStock, day: string, closed: readonly string[] = []) =>
  finishedFor(day, stock, {
    dayClose: closed.map((stallDayId) => ({
      ...{ id: 'close-1', withdrawn: false },
      body: { ...close, stallDayId },
    })),
  });

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

it('a plan that was taken back and a day that was closed have nothing in the car', () => {
  const stock = new StallStock();
  stock.count(12);
  stock.load('spring', 8);
  expect(piecesFor(stock, 'spring', ['spring'])).toEqual([{ ...goods, pieces: 4 }]);
  stock.load('spring', 0);
  expect(piecesFor(stock, 'spring')).toEqual([{ ...goods, pieces: 12 }]);
});
