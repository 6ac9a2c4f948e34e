import { describe, expect, it } from 'vitest';
import { closeInForce, closesInForce } from '@/lib/stall/closeInForce';
import { answersOfClose } from '@/lib/stall/evening/answersOfClose';
import { closeBody, closeSeries } from '@/lib/stall/evening/closeBody';
import { dayFigures } from '@/lib/stall/evening/dayFigures';
import { type EveningAnswers, noAnswers } from '@/lib/stall/evening/eveningAnswers';
import { pastDaysOf } from '@/lib/stall/evening/pastDaysOf';
import { addDays } from '@/shared/days';
import { type DayClose, dayCloseSchema } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { fairAnswers, fairClock, fairCount, fairEvening, fairTaps } from './fairEvening';

const FERN_M = 'fair-shirts/fern/M';

const closeOf = (answers: EveningAnswers = fairAnswers): DayClose =>
  closeBody(fairEvening(answers), {
    ...{ number: { count: 1, letter: 'A' }, issuedOn: TEST_DAY, planId: 'plan-1' },
    ...{ answers, clock: fairClock },
  });

const paper = (id: string, body: DayClose, withdrawn = false) => ({ id, body, withdrawn });
const plans = [{ id: 'plan-1', body: fairPlan, withdrawn: false }];

describe('the close of a day', () => {
  it('holds a piece of an earlier fair that came back: one fewer sold than none, and one more there', () => {
    const [back, out] = ['S', '3XL'].map((size) => ({ jobId: 'fair-shirts', lineId: 'star-map', size }));
    if (back === undefined || out === undefined) throw new Error('two sizes');
    // No 3XL of that design was sold, so after the exchange of one that came back it is −1 sold and 2 there.
    const tap = { what: 'exchange', back: out, out: back, minor: 0, pay: 'cash' } as const;
    const body = { stallDayId: 'spring-fair', planId: 'plan-1', currency: 'USD', tap };
    const taps = [...fairTaps, { ...{ id: 'x-1', device: 'otherphone', count: 1, at: 1 }, body }];
    const close = closeBody(fairEvening(fairAnswers, fairPlan, taps), {
      ...{ number: { count: 1, letter: 'A' }, issuedOn: TEST_DAY, planId: 'plan-1' },
      ...{ answers: fairAnswers, clock: fairClock },
    });
    const row = close.goods.find(({ lineId, size }) => lineId === 'star-map' && size === '3XL');
    expect(row).toMatchObject({ brought: 1, sold: -1, counted: 2 });
    expect(dayCloseSchema.parse(close)).toEqual(close);
    const wanted = pastDaysOf(plans, [paper('c', close)])[0]?.wanted ?? [];
    expect(wanted.find(({ lineId, size }) => lineId === 'star-map' && size === '3XL')).toMatchObject({
      ...{ sold: -1, pieces: 0 },
    });
  });

  it('is what its schema takes, and says all that the evening found', () => {
    const close = closeOf({ ...fairAnswers, decision: 'again', note: 'Nearer the gate next time.' });
    expect(dayCloseSchema.parse(close)).toEqual(close);
    expect(close).toMatchObject({
      ...{ stallDayId: 'spring-fair', planId: 'plan-1', soldFrom: 'taps', weatherId: 'dry' },
      ...{ days: [TEST_DAY], sellingHours: 7, decision: 'again', putBack: 0, reductions: 1200 },
      money: { gross: 172_300, tax: 11_272, difference: -200, reason: 'wrongChange', payoutDue: 127_301 },
      askedFor: [
        { words: 'youth sizes', count: 6 },
        { words: 'black shirt', count: 4 },
      ],
    });
    const otterL = close.goods.find(({ lineId, size }) => lineId === 'otter' && size === 'L');
    expect(otterL).toMatchObject({ brought: 7, sold: 7, counted: 0, asked: 3, revenue: 7 * 2800 });
    expect(otterL?.lost).toBeCloseTo(4.08, 8);
    expect(close.hours.reduce((sum, { pieces }) => sum + pieces, 0)).toBe(70);
  });

  const payout = { minor: 127_301, day: addDays(TEST_DAY, 2) };
  const notKnown = { counted: null, coins: null, reason: 'notKnown', reasonFor: null } as const;
  const inCoins = { coins: [{ value: 50, count: 10 }], reason: 'other', reasonFor: -3200 } as const;

  it.each<[string, EveningAnswers, Partial<EveningAnswers>]>([
    [
      'counted as it should be',
      { ...fairAnswers, hours: 12.25, decision: 'later' },
      { cash: fairAnswers.cash, card: noAnswers.card, hours: 12.25, decision: 'later', note: '' },
    ],
    [
      'counted by notes and coins, with a piece given away, the payout here',
      {
        ...fairAnswers,
        cash: { ...inCoins, coins: [...inCoins.coins], counted: null },
        card: { total: 131_100, tickets: 40, payout, isRight: false },
        stock: { ...fairAnswers.stock, counted: { [FERN_M]: { pieces: 2, reason: 'given', reasonFor: -1 } } },
        note: 'Nearer the gate.',
      },
      {
        // Ten fifties; the day was closed with the card total, and took the hours of the plan.
        cash: { ...inCoins, coins: [...inCoins.coins], counted: 50_000 },
        card: { total: 131_100, tickets: 40, payout, isRight: true },
        ...{ hours: 11.5, decision: null, note: 'Nearer the gate.' },
      },
    ],
    [
      'not counted at all',
      {
        ...{ ...fairAnswers, cash: notKnown },
        stock: { counted: {}, isRestAsReckoned: false, isRestUnknown: true },
      },
      { cash: notKnown, stock: { counted: {}, isRestAsReckoned: false, isRestUnknown: true } },
    ],
  ])('begins a correction with what was said: %s', (_, answers, said) => {
    const close = closeOf(answers);
    expect(answersOfClose(close)).toMatchObject(said);
    expect(closeOf(answersOfClose(close))).toEqual(close);
  });

  it('begins a correction with every size as it was counted, and why it differed', () => {
    const given = {
      ...fairAnswers.stock,
      counted: { [FERN_M]: { pieces: 2, reason: 'given' as const, reasonFor: -1 } },
    };
    const { stock } = answersOfClose(closeOf({ ...fairAnswers, stock: given }));
    expect(stock).toMatchObject({ isRestAsReckoned: false, isRestUnknown: false });
    expect(Object.keys(stock.counted)).toHaveLength(27);
    // Seven of seven Otter L were sold.
    expect(stock.counted).toMatchObject({
      [FERN_M]: { pieces: 2, reason: 'given' },
      'fair-shirts/otter/L': { pieces: 0, reason: null },
    });
  });

  it('keeps lost sales that were left out as left out, so that nothing learns from them', () => {
    const close = closeOf({ ...fairAnswers, notLost: ['fair-shirts/otter/L'] });
    expect(dayCloseSchema.parse(close)).toEqual(close);
    expect(answersOfClose(close).notLost).toEqual(['fair-shirts/otter/L']);
    const [day] = pastDaysOf(plans, [paper('close-1', close)]);
    // Seven sold and three asked for.
    expect(day?.wanted.find(({ lineId, size }) => lineId === 'otter' && size === 'L')?.pieces).toBe(10);
  });

  it('leaves the card total to the taps where nobody typed one, so that a phone that comes later counts', () => {
    expect(answersOfClose(closeOf()).card.total).toBeNull();
  });

  it('is numbered with the other closes of its day', () => {
    expect(closeSeries('spring-fair')).toBe('dayClose spring-fair');
  });

  it('tells the command what was in the tin', () => {
    expect(dayFigures(fairPlan, fairCount(), closeOf())).toEqual({
      ...{ gross: 1723, net: 1610.28, tax: 112.72, fees: 37.99, expectedCash: 532, difference: -2 },
    });
  });
});

describe('what closed days teach', () => {
  it('is what was wanted: sold, lost and asked for', () => {
    const [day, ...others] = pastDaysOf(plans, [paper('close-1', closeOf())]);
    expect(others).toEqual([]);
    expect(day).toMatchObject({
      ...{ stallDayId: 'spring-fair', name: 'Exampleton Spring Fair', day: TEST_DAY, sellingHours: 7 },
      ...{
        takings: 1723,
        stallFee: 85,
        currency: 'USD',
        weather: { factor: 1, parts: [{ name: 'dry', factor: 1, share: 1 }] },
      },
    });
    expect(day?.payPerHour).toBeCloseTo(38.02, 2);
    // 54 shirts and 22 mugs on a dry day.
    expect(day?.expected).toBeCloseTo(76, 8);
    const otterL = day?.wanted.find(({ lineId, size }) => lineId === 'otter' && size === 'L');
    expect(otterL).toMatchObject({ rangeName: 'Shirts', sold: 7 });
    // 7 + 4.08 + 3.
    expect(otterL?.pieces).toBeCloseTo(14.08, 8);
  });

  it('is nothing of what stayed at home and nobody asked for, and what was asked for of it', () => {
    const at = (lineId: string) => lineId === 'star-map' || lineId === 'lighthouse';
    const home = (goods: DayClose['goods'][number]) =>
      at(goods.lineId)
        ? { ...goods, ...{ brought: 0, sold: 0, lost: 0, asked: goods.lineId === 'lighthouse' ? 1 : 0 } }
        : goods;
    const close = closeOf();
    const [day] = pastDaysOf(plans, [paper('close-1', { ...close, goods: close.goods.map(home) })]);
    const lines = new Set(day?.wanted.map(({ lineId }) => lineId));
    expect([...lines].sort()).toEqual(['fern', 'lighthouse', 'otter']);
  });

  it('is expected less in the rain', () => {
    const [day] = pastDaysOf(plans, [paper('close-1', closeOf({ ...fairAnswers, weatherId: 'wet' }))]);
    // 76 × 0.30.
    expect(day?.expected).toBeCloseTo(22.8, 8);
  });

  it('comes of the last close of a day that was not withdrawn', () => {
    const second = closeOf({ ...fairAnswers, hours: 20 });
    const closes = [paper('close-1', closeOf()), paper('close-2', second), paper('close-3', closeOf(), true)];
    expect(closeInForce(closes, 'spring-fair')?.id).toBe('close-2');
    expect(closeInForce(closes, 'harbour-market')).toBeNull();
    expect([...closesInForce(closes)].map(([day, { id }]) => [day, id])).toEqual([
      ['spring-fair', 'close-2'],
    ]);
    expect(pastDaysOf(plans, closes).map(({ payPerHour }) => payPerHour)).toEqual([second.result.payPerHour]);
  });

  it('puts the latest day first', () => {
    const earlier = { ...closeOf(), stallDayId: 'winter-hall', days: [addDays(TEST_DAY, -90)] };
    const days = pastDaysOf(plans, [paper('close-0', earlier), paper('close-1', closeOf())]);
    expect(days.map(({ stallDayId }) => stallDayId)).toEqual(['spring-fair', 'winter-hall']);
  });
});
