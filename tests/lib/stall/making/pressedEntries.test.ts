import { expect, it } from 'vitest';
import { pressedEntries } from '@/lib/stall/making/pressedEntries';
import type { Pile } from '@/lib/stock/foldStock';

const fern = { jobId: 'fair-shirts', lineId: 'fern', size: 'M' };
const otter = { jobId: 'fair-shirts', lineId: 'otter', size: 'L' };
const item = { kind: 'finished', ...fern } as const;
const home = { place: { kind: 'home' }, grade: 'first' } as const;
const car = { place: { kind: 'van' }, grade: 'first' } as const;
const press = [
  { ...fern, press: 6 },
  { ...otter, press: 0 },
];
const made = {
  kind: 'stockMove',
  body: {
    ...{ item, ...home, quantity: 6, cause: 'made', unitCost: null },
    reference: { kind: 'job', id: 'copy-of-shirts' },
  },
};

it('what was pressed comes home under its design, of the job that pressed it', () => {
  expect(pressedEntries('copy-of-shirts', press, { piles: [], loaded: null })).toEqual([made]);
});

it('goes on into the car where the plan is fixed, beside what lies there', () => {
  const pile: Pile = { item, ...car, quantity: 3, lots: [], counted: null };
  const loaded = [
    { ...fern, bring: 8 },
    { ...otter, bring: 7 },
  ];
  // 8 are brought and 3 lie in the car: 5 of the 6 go on, the sixth stays at home.
  expect(pressedEntries('copy-of-shirts', press, { piles: [pile], loaded })).toEqual([
    made,
    {
      kind: 'stockTransfer',
      body: { from: { item, ...home }, to: { item, ...car }, quantity: 5 },
    },
  ]);
});
