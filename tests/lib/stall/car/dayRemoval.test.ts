import { expect, it } from 'vitest';
import { dayRemoval } from '@/lib/stall/car/dayRemoval';
import { planMoves } from '@/lib/stall/car/planMoves';
import { closeBody } from '@/lib/stall/evening/closeBody';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { fairAnswers, fairClock, fairEvening, fairTaps } from '@/tests/lib/stall/evening/fairEvening';
import { goods, StallStock } from '@/tests/lib/stall/stallStock';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const DAY = fairPlan.stallDayId;
const body = closeBody(fairEvening(), {
  ...{ number: { count: 1, letter: 'A' }, issuedOn: TEST_DAY, planId: 'plan-1' },
  ...{ answers: fairAnswers, clock: fairClock },
});
const close = { id: 'close-1', withdrawn: false, body };
const noneLoaded = { kind: 'ready', moves: [], pieces: 0, seconds: 0 } as const;

it('a day that is removed lays home what lies in the car for it, and leaves there what another day has', () => {
  const stock = new StallStock();
  stock.count(30);
  stock.load(DAY, 8);
  stock.load('autumn', 12);
  stock.load(DAY, 10);
  const removal = dayRemoval(DAY, stock, [], []);
  expect(removal).toMatchObject({ kind: 'ready', pieces: 10, isClosed: false });
  stock.load(DAY, 0, removal.kind === 'ready' ? removal.moves : []);
  expect(stock.lying).toEqual({ 'home first': 18, 'van first': 12 });
});

it('a day that is removed lays its seconds home as seconds', () => {
  const stock = new StallStock();
  stock.count(30);
  stock.count(4, { place: { kind: 'home' }, grade: 'second' });
  stock.load(DAY, 8, planMoves(DAY, [{ ...goods, bring: 8, seconds: 4 }], stock));
  expect(stock.lying).toEqual({ 'home first': 22, 'home second': 0, 'van first': 8, 'van second': 4 });
  const removal = dayRemoval(DAY, stock, [], []);
  expect(removal).toMatchObject({ kind: 'ready', pieces: 12, seconds: 4 });
  stock.load(DAY, 0, removal.kind === 'ready' ? removal.moves : []);
  expect(stock.lying).toEqual({ 'home first': 30, 'home second': 4, 'van first': 0, 'van second': 0 });
});

it('a day of which nothing was loaded, or all was taken back, leaves the stock alone', () => {
  const stock = new StallStock();
  stock.count(30);
  expect(dayRemoval(DAY, stock, [], [])).toEqual({ ...noneLoaded, isClosed: false });
  stock.load(DAY, 8);
  stock.load(DAY, 0);
  expect(dayRemoval(DAY, stock, [], [])).toEqual({ ...noneLoaded, isClosed: false });
});

it('a day that was counted stays until it is closed, and again where taps came after its close', () => {
  const stock = new StallStock();
  stock.count(30);
  stock.load(DAY, 8);
  expect(dayRemoval(DAY, stock, fairTaps, [])).toEqual({ kind: 'refused', why: 'notClosed' });
  const withdrawn = { ...close, withdrawn: true };
  expect(dayRemoval(DAY, stock, fairTaps, [withdrawn])).toEqual({ kind: 'refused', why: 'notClosed' });
  expect(dayRemoval(DAY, stock, fairTaps.slice(1), [close])).toEqual({ kind: 'refused', why: 'tapsSince' });
  // As many as the day was closed with, and one of them another.
  const others = fairTaps.map((tap, at) => (at === 0 ? { ...tap, id: 'phone-999' } : tap));
  expect(dayRemoval(DAY, stock, others, [close])).toEqual({ kind: 'refused', why: 'tapsSince' });
  // The close emptied the car: nothing is laid home twice.
  expect(dayRemoval(DAY, stock, fairTaps, [close])).toEqual({ ...noneLoaded, isClosed: true });
});

it('a day that only other days were counted for may be removed', () => {
  expect(dayRemoval('autumn', new StallStock(), fairTaps, [close])).toMatchObject({ kind: 'ready' });
});
