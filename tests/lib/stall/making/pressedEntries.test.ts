import { expect, it } from 'vitest';
import { pressedFor } from '@/lib/stall/car/dayMoves';
import { pressedEntries } from '@/lib/stall/making/pressedEntries';
import { goods, home, item, StallStock, van } from '@/tests/lib/stall/stallStock';

const otter = { ...goods, lineId: 'otter' };
const press = [
  { ...goods, press: 6 },
  { ...otter, press: 0 },
];
const reference = { kind: 'stallDay', id: 'spring' };
const made = {
  kind: 'stockMove',
  body: { item, ...home, quantity: 6, cause: 'made', unitCost: null, reference },
};

it('what was pressed comes home under its design and names the day', () => {
  expect(pressedEntries('spring', press, { piles: [], moves: [], loaded: null })).toEqual([made]);
});

it('goes on into the car where the plan is fixed, beside what was loaded', () => {
  const stock = new StallStock();
  stock.count(3);
  stock.load('spring', 3);
  const loaded = [
    { ...goods, bring: 8 },
    { ...otter, bring: 7 },
  ];
  const moved = { item, cause: 'returned', unitCost: null, reference };
  // 8 are brought and 3 are loaded: 5 of the 6 go on, the sixth stays at home.
  expect(pressedEntries('spring', press, { piles: stock.piles, moves: stock.moves, loaded })).toEqual([
    made,
    { kind: 'stockMove', body: { ...moved, ...home, quantity: -5 } },
    { kind: 'stockMove', body: { ...moved, ...van, quantity: 5 } },
  ]);
});

it('is told of its day alone, wherever it lies now', () => {
  const stock = new StallStock();
  stock.count(4);
  stock.made(6, reference);
  stock.made(3, { kind: 'stallDay', id: 'autumn' });
  stock.made(2, { kind: 'job', id: goods.jobId });
  stock.load('spring', 8);
  expect(pressedFor(stock.moves, 'spring')).toEqual([{ ...goods, pieces: 6 }]);
});
