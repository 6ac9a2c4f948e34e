import { describe, expect, it } from 'vitest';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import { type OpenTicket, openTicket } from '@/lib/stall/count/openTicket';
import type { WallClock } from '@/lib/stall/count/sellingTime';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import { goodsKey } from '@/lib/stall/goodsKey';
import { stallTapSchema, type Tap } from '@/shared/schemas/stallEvents';
import type { PlannedGoods, StallPlan } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { aTapLog, fairDayTaps, fairGoods, goodsOf, saleOf, tapOn } from '@/tests/fixtures/stallTaps';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

/** 0 ms is ten in the morning of the fair. */
const wallAt: WallClock = (at) => ({ day: TEST_DAY, minute: 600 + Math.floor(at / 60_000) });

const fold = (taps: readonly TappedEntry[], plan: StallPlan = fairPlan) => foldTaps(plan, taps, wallAt);
const countOf = (taps: readonly TappedEntry[], goods: PlannedGoods, plan?: StallPlan) =>
  fold(taps, plan).goods.find((one) => goodsKey(one) === goodsKey(goods));

const fernL = fairGoods('fern', 'L');
const fern2xl = fairGoods('fern', '2XL');
const otterM = fairGoods('otter', 'M');
const fernMug = fairGoods('fern');

/** One device that taps so, one after the other. */
function tapped(...taps: readonly Tap[]): readonly TappedEntry[] {
  const log = aTapLog();
  for (const tap of taps) tapOn(log, tap);
  return log.taps;
}
const next: Tap = { what: 'next' };
const picked = ({ setId, minor, pay }: OpenTicket['sets'][number]) => ({ setId, minor, pay });

describe('seconds', () => {
  const second: Tap = { what: 'sale', goods: goodsOf(fernL), minor: 1400, isSecond: true, pay: 'card' };
  const spoiled: Tap = { what: 'damaged', goods: goodsOf(fernL), isSecond: true };

  it.each([
    ['spoiled and sold', [spoiled, second]],
    ['sold on one phone before the other tells that it was spoiled', [second, spoiled]],
    ['found spoiled as it is sold', [second]],
  ] as const)('one piece is counted once: %s', (_, taps) => {
    // 9 of Fern L were brought.
    expect(countOf(tapped(...taps), fernL)).toMatchObject({
      ...{ sold: 1, secondsSold: 1, damaged: 0, seconds: 0, left: 8, revenueMinor: 1400 },
    });
  });

  it('kept from before sell first, then those spoiled on the day, then one of the firsts', () => {
    const plan = {
      ...fairPlan,
      goods: fairPlan.goods.map((one) => (goodsKey(one) === goodsKey(fernL) ? { ...one, seconds: 2 } : one)),
    };
    const of = (taps: readonly Tap[]) => countOf(tapped(...taps), fernL, plan);
    // 9 firsts were brought, and 2 seconds.
    expect(of([second])).toMatchObject({ sold: 1, keptBrought: 2, keptSold: 1, damaged: 0, left: 9 });
    expect(of([spoiled, second, second])).toMatchObject({ keptSold: 2, damaged: 1, seconds: 1, left: 8 });
    expect(of([spoiled, second, second, second])).toMatchObject({
      keptSold: 2,
      damaged: 0,
      seconds: 0,
      left: 8,
    });
    expect(of([second, second, second])).toMatchObject({ sold: 3, keptSold: 2, seconds: 0, left: 8 });
  });

  it('that stay unsold are kept, and waste is none of them', () => {
    const waste: Tap = { what: 'damaged', goods: goodsOf(fernL), isSecond: false };
    expect(countOf(tapped(spoiled, waste, spoiled, second), fernL)).toMatchObject({
      // Three spoiled, one of them sold: one second and one that is waste lie there, 9 − 3 are first.
      ...{ sold: 1, damaged: 2, seconds: 1, left: 6 },
    });
  });
});

describe('foldTaps of the worked day', () => {
  const count = fold(fairDayTaps().taps);

  it('comes to 1,723.00: 412.00 in cash and 1,311.00 by card on 39 tickets', () => {
    expect(count).toMatchObject({
      pieces: 70,
      grossMinor: 172_300,
      cashMinor: 41_200,
      cashRoundingMinor: 0,
      cardMinor: 131_100,
      reductionsMinor: 1200,
      hasTickets: true,
    });
    expect(count.tickets.filter(({ cardMinor }) => cardMinor > 0)).toHaveLength(39);
    expect(count.tickets.filter(({ cashMinor }) => cashMinor > 0)).toHaveLength(19);
  });

  it('counts 17, 13, 14 and 6 shirts, 20 mugs, and what was asked for', () => {
    const sold = (jobId: string, lineId: string) =>
      count.goods.reduce(
        (sum, one) => (one.jobId === jobId && one.lineId === lineId ? sum + one.sold : sum),
        0,
      );
    expect(['fern', 'lighthouse', 'otter', 'star-map'].map((id) => sold('fair-shirts', id))).toEqual([
      17, 13, 14, 6,
    ]);
    expect(['fern', 'otter', 'star-map'].map((id) => sold('fair-mugs', id))).toEqual([8, 7, 5]);
    expect(count.askedFor).toEqual([
      { words: 'youth sizes', count: 6 },
      { words: 'black shirt', count: 4 },
    ]);
    expect(count.goods.find((one) => goodsKey(one) === goodsKey(fairGoods('otter', 'L')))).toMatchObject({
      brought: 7,
      sold: 5,
      left: 2,
      asked: 3,
    });
  });

  it('is made of taps that can be kept', () => {
    for (const { body } of fairDayTaps().taps) expect(stallTapSchema.parse(body)).toEqual(body);
  });
});

describe('foldTaps counts pieces', () => {
  it('takes what was sold, given away and damaged off what was brought and put out later', () => {
    const taps = tapped(
      saleOf(fernL),
      { what: 'given', goods: goodsOf(fernL) },
      { what: 'damaged', goods: goodsOf(fernL), isSecond: true },
      { what: 'damaged', goods: goodsOf(fernL), isSecond: false },
      { what: 'refill', goods: goodsOf(fernL), pieces: 5 },
    );
    expect(countOf(taps, fernL)).toMatchObject({
      brought: 14,
      sold: 1,
      given: 1,
      damaged: 2,
      seconds: 1,
      left: 10,
      revenueMinor: 2800,
      lastSoldAt: 1000,
    });
  });

  it('counts what was put out once where the plan was fixed anew with it, and keeps it where it was not', () => {
    const withL = (bring: number): StallPlan => ({
      ...fairPlan,
      goods: fairPlan.goods.map((goods) =>
        goodsKey(goods) === goodsKey(fernL) ? { ...goods, bring } : goods,
      ),
    });
    const first = { id: 'first', body: fairPlan };
    const second = { id: 'second', body: withL(19) };
    const log = aTapLog();
    const refill = (pieces: number): Tap => ({ what: 'refill', goods: goodsOf(fernL), pieces });
    tapOn(log, refill(10), { planId: 'first' });
    const brought = (plan: StallPlan, earlier: readonly (typeof first)[]) =>
      foldTaps(plan, log.taps, wallAt, earlier).goods.find((one) => goodsKey(one) === goodsKey(fernL))
        ?.brought;
    // 9 and 10: 19, whether the later plan brings 19, 9 still, or 15, of which 6 are of the ten.
    expect(brought(withL(19), [first])).toBe(19);
    expect(brought(withL(9), [first])).toBe(19);
    expect(brought(withL(15), [first])).toBe(19);
    // One that brings fewer says so of what was loaded; more than both is all that was brought.
    expect(brought(withL(5), [first])).toBe(15);
    expect(brought(withL(24), [first])).toBe(24);
    // Four more by the second, and a third plan that holds the ten alone.
    tapOn(log, refill(4), { planId: 'second' });
    expect(brought(withL(19), [second, first])).toBe(23);
    expect(brought(withL(23), [second, first])).toBe(23);
  });

  it('goes below nothing where more is sold than was brought, and counts what no plan names', () => {
    const only = fairGoods('fern', '3XL');
    expect(countOf(tapped(saleOf(only), saleOf(only)), only)).toMatchObject({
      brought: 1,
      sold: 2,
      left: -1,
    });
    const plan = { ...fairPlan, goods: fairPlan.goods.filter(({ size }) => size !== 'L') };
    expect(countOf(tapped(saleOf(fernL)), fernL, plan)).toMatchObject({ brought: 0, sold: 1, left: -1 });
  });

  it('leaves a refund with a piece more and its money less', () => {
    const taps = tapped(saleOf(fernL), saleOf(fernL), {
      what: 'refund',
      goods: goodsOf(fernL),
      minor: 2800,
      pay: 'card',
    });
    expect(countOf(taps, fernL)).toMatchObject({ sold: 1, left: 8, revenueMinor: 2800 });
    expect(fold(taps)).toMatchObject({ pieces: 1, grossMinor: 2800, cardMinor: 2800 });
  });

  it('moves the piece and its money in an exchange, and adds what is paid on top', () => {
    const taps = tapped(saleOf(fernL), {
      what: 'exchange',
      back: goodsOf(fernL),
      out: goodsOf(fern2xl),
      minor: 300,
      pay: 'cash',
    });
    expect(countOf(taps, fernL)).toMatchObject({ sold: 0, left: 9, revenueMinor: 0 });
    expect(countOf(taps, fern2xl)).toMatchObject({ sold: 1, left: 1, revenueMinor: 3100 });
    expect(fold(taps)).toMatchObject({ pieces: 1, grossMinor: 3100, cashMinor: 300, cardMinor: 2800 });
  });
});

describe('foldTaps counts money', () => {
  it('rounds cash to the coin ticket by ticket: 4.92 + 4.93 is paid as 9.85, but 4.90 and 4.95 apart', () => {
    const plan = { ...fairPlan, currency: 'CAD' };
    const log = aTapLog();
    const sale = (minor: number): Tap => ({ what: 'sale', goods: goodsOf(fernMug), minor, pay: 'cash' });
    for (const tap of [sale(492), next, sale(493), next, sale(492), sale(493), next])
      tapOn(log, tap, { currency: 'CAD' });
    const count = fold(log.taps, plan);
    expect(count.tickets.map(({ cashMinor }) => cashMinor)).toEqual([490, 495, 985]);
    expect(count).toMatchObject({ grossMinor: 1970, cashMinor: 1970, cashRoundingMinor: 0 });
    // 0.02 less and 0.02 more: one alone shows what rounding took.
    expect(fold(log.taps.slice(0, 2), plan)).toMatchObject({
      grossMinor: 492,
      cashMinor: 490,
      cashRoundingMinor: -2,
    });
  });

  it.each([
    // Worked by the smallest coin: five cents, ten, fifty, five whole ones, one whole one.
    ['CHF', 1998, 2000],
    ['NZD', 1994, 1990],
    ['DKK', 9975, 10_000],
    ['HUF', 123_200, 123_000],
    ['SEK', 9949, 9900],
  ])('pays a ticket in cash in coins of %s: %d is %d', (currency, minor, paid) => {
    const log = aTapLog();
    tapOn(log, { what: 'sale', goods: goodsOf(fernMug), minor, pay: 'cash' }, { currency });
    expect(fold(log.taps, { ...fairPlan, currency }).cashMinor).toBe(paid);
  });

  it('lets a word on how a ticket is paid hold for all of it, and for no ticket before', () => {
    const taps = tapped(saleOf(fernL), next, saleOf(otterM), saleOf(fern2xl), { what: 'pay', pay: 'cash' });
    expect(fold(taps)).toMatchObject({ cardMinor: 2800, cashMinor: 5900, pay: 'cash' });
  });

  it('stamps a ticket by the first that was sold on it', () => {
    // Taps come a second apart: the first ticket begins with the first, the second with the fourth.
    const taps = tapped(saleOf(fernL), saleOf(otterM), next, saleOf(fern2xl), saleOf(fernMug));
    expect(fold(taps).tickets.map(({ at, pieces }) => [at, pieces])).toEqual([
      [1000, 2],
      [4000, 2],
    ]);
  });

  it('puts money of another currency apart, its pieces among the others', () => {
    const log = aTapLog();
    tapOn(log, saleOf(fernL));
    tapOn(log, saleOf(fernL), { currency: 'EUR' });
    expect(fold(log.taps)).toMatchObject({
      pieces: 2,
      grossMinor: 2800,
      foreign: [{ currency: 'EUR', pieces: 1, minor: 2800 }],
    });
    expect(countOf(log.taps, fernL)?.revenueMinor).toBe(2800);
  });

  it('takes no set, no move of the tin and no spending of another currency into its sums', () => {
    const tin = (cause: 'added' | 'spent'): Tap => ({ what: 'tin', cause, minor: 1000, words: '' });
    const set: Tap = { what: 'set', setId: 'two-shirts', minor: 600, pay: 'card' };
    const log = aTapLog();
    for (const tap of [saleOf(fernL), saleOf(otterM), set, tin('added'), tin('spent'), tin('spent')])
      tapOn(log, tap);
    // 28.00 and 28.00 less 6.00; 10.00 in, twice 10.00 out.
    const own = { reductionsMinor: 600, grossMinor: 5000, tinMinor: -1000, spentMinor: 2000 };
    expect(fold(log.taps)).toMatchObject(own);
    for (const tap of [set, tin('added'), tin('added'), tin('spent')]) tapOn(log, tap, { currency: 'EUR' });
    expect(fold(log.taps)).toMatchObject(own);
  });

  it('takes no tap of more than a hundred millions, and none in a currency that is none', () => {
    const [good] = fairDayTaps().taps;
    if (good === undefined) throw new Error('a tap');
    const sale = saleOf(fernL);
    const isTaken = (more: object) => stallTapSchema.safeParse({ ...good.body, ...more }).success;
    expect(isTaken({ tap: { ...sale, minor: 1e10 } })).toBe(true);
    expect(isTaken({ tap: { ...sale, minor: 1e10 + 1 } })).toBe(false);
    expect(isTaken({ currency: 'ZZZ' })).toBe(false);
  });

  it('sets aside what no sum could be kept exact with, and goes on counting', () => {
    const huge: Tap = { what: 'sale', goods: goodsOf(fernL), minor: 1e10, pay: 'cash' };
    // Four of a hundred millions and 28.00: two of them go, the rest is 200,000,028.00.
    const taps = tapped(huge, saleOf(fernL), huge, huge, next, huge);
    expect(fold(taps)).toMatchObject({ pieces: 5, setAside: 2, grossMinor: 2e10 + 2800 });
    expect(fold(taps.toReversed())).toEqual(fold(taps));
    const yen = { ...fairPlan, currency: 'JPY' };
    const log = aTapLog();
    for (const tap of [huge, saleOf(fernL)]) tapOn(log, tap, { currency: 'JPY' });
    // Of a currency without cents it is ten thousand millions.
    expect(fold(log.taps, yen)).toMatchObject({ setAside: 1, grossMinor: 2800 });
    expect(openTicket(yen, log.taps, 'phone000')).toMatchObject({ pieces: 2, minor: 2800 });
    expect(fold(fairDayTaps().taps).setAside).toBe(0);
  });

  it('tells what went into the tin and out of it', () => {
    const tin = (cause: 'skimmed' | 'added' | 'spent', minor: number, words = ''): Tap => ({
      ...{ what: 'tin', cause, minor, words },
    });
    expect(fold(tapped(tin('added', 5000), tin('skimmed', 20_000), tin('spent', 450))).tinMinor).toBe(
      -15_450,
    );
    const spent = [
      tin('spent', 450, 'Tape'),
      tin('spent', 300),
      tin('skimmed', 900),
      tin('spent', 150, 'tape'),
    ];
    expect(fold(tapped(...spent))).toMatchObject({
      spentMinor: 900,
      spentOn: [
        { words: 'Tape', minor: 600 },
        { words: '', minor: 300 },
      ],
    });
  });
});

describe('foldTaps tells', () => {
  it('that nobody closed a ticket, and each device its own', () => {
    const [phone, tablet] = [aTapLog('phone000'), aTapLog('tablet00')];
    tapOn(phone, saleOf(fernL));
    tapOn(tablet, saleOf(otterM));
    tapOn(phone, saleOf(fernL));
    const open = fold([...phone.taps, ...tablet.taps]);
    expect(open.hasTickets).toBe(false);
    expect(open.tickets).toMatchObject([
      { device: 'phone000', number: 1, pieces: 2, isOpen: true },
      { device: 'tablet00', number: 1, pieces: 1, isOpen: true },
    ]);
    tapOn(phone, next);
    tapOn(phone, next);
    expect(fold(phone.taps)).toMatchObject({ hasTickets: true, tickets: [{ pieces: 2, isOpen: false }] });
  });

  it('what was sold in each hour, and after midnight at the day it began', () => {
    const taps = fairDayTaps().taps;
    // A tap each minute from ten on: 19 × (sale, next), then pairs.
    expect(fold(taps).hours.map(({ hour }) => hour)).toEqual([10, 11, 12]);
    expect(fold(taps).hours.reduce((sum, { pieces }) => sum + pieces, 0)).toBe(70);
    const night = { ...fairPlan, days: [{ day: '2026-12-31', fromMinute: 1080, toMinute: 60, weight: 1 }] };
    const log = aTapLog();
    for (const minute of [0, 1, 2]) tapOn(log, saleOf(fernL), { at: minute * 60_000 });
    const walls = [
      { day: '2026-12-31', minute: 1439 },
      { day: '2027-01-01', minute: 30 },
      // Long after the end: nobody knows of which day it is but its own.
      { day: '2027-01-01', minute: 600 },
    ];
    expect(foldTaps(night, log.taps, (at) => walls[at / 60_000] ?? { day: '', minute: 0 }).hours).toEqual([
      { day: '2026-12-31', hour: 23, pieces: 1 },
      { day: '2026-12-31', hour: 24, pieces: 1 },
      { day: '2027-01-01', hour: 10, pieces: 1 },
    ]);
  });

  it('nothing of another stall day, and taps by an earlier plan of this one', () => {
    const log = aTapLog();
    tapOn(log, saleOf(fernL), { planId: 'plan-before' });
    const other = tapOn(log, saleOf(fernL));
    const foreign = { ...other, body: { ...other.body, stallDayId: 'autumn-fair' } };
    expect(fold([...log.taps.slice(0, 1), foreign]).pieces).toBe(1);
  });

  it('visitors, the weather told last, notes, leads and what was put back', () => {
    const taps = tapped(
      { what: 'visitors', count: 10 },
      { what: 'visitors', count: 10 },
      { what: 'weather', weatherId: 'dry' },
      { what: 'weather', weatherId: 'wet' },
      { what: 'note', words: 'Band plays' },
      { what: 'lead', words: 'Club wants 30' },
      { what: 'putBack', goods: goodsOf(fernL) },
      { what: 'putBack', goods: null },
      { what: 'asked', goods: null, words: 'Youth sizes' },
      { what: 'asked', goods: null, words: 'youth sizes' },
    );
    expect(fold(taps)).toMatchObject({
      visitors: 20,
      weatherId: 'wet',
      notes: [{ id: 'phone000-5', at: 5000, words: 'Band plays' }],
      leads: [{ id: 'phone000-6', at: 6000, words: 'Club wants 30' }],
      putBack: 2,
      askedFor: [{ words: 'Youth sizes', count: 2 }],
    });
    expect(countOf(taps, fernL)?.putBack).toBe(1);
  });
});

describe('openTicket', () => {
  const ticketOf = (...taps: readonly Tap[]) => openTicket(fairPlan, tapped(...taps), 'phone000');

  it('offers a pair once two shirts up to XL are on it, and again only for two more', () => {
    expect(ticketOf(saleOf(fernL), saleOf(fern2xl)).sets).toEqual([]);
    // Two at 28 for 50.
    expect(ticketOf(saleOf(fernL), saleOf(fern2xl), saleOf(otterM)).sets).toEqual([
      { setId: 'two-shirts', name: 'Two shirts', pieces: 2, minor: 600, pay: 'card' },
    ]);
    const pair: Tap = { what: 'set', setId: 'two-shirts', minor: 600, pay: 'card' };
    const paired = ticketOf(
      saleOf(fern2xl),
      saleOf(fern2xl),
      saleOf(fernL),
      saleOf(otterM),
      pair,
      saleOf(fernL),
    );
    expect(paired).toMatchObject({ pieces: 5, minor: 14_000, sets: [] });
    expect(ticketOf(saleOf(fernL), saleOf(otterM), pair, saleOf(fernL), saleOf(otterM)).sets).toHaveLength(1);
  });

  it.each<[string, readonly string[]]>([
    ['pairs of small and of large', ['L', 'M', 'set', '2XL', '3XL', 'set']],
    ['pairs of large and of small', ['2XL', '3XL', 'set', 'L', 'M', 'set']],
    ['mixed pairs', ['L', '2XL', 'set', 'M', '3XL', 'set']],
    ['all pieces first', ['L', '2XL', 'M', '3XL', 'set', 'set']],
  ])('asks 100 for two pairs in whatever order they are tapped: %s', (_, order) => {
    // Any two for 50, so four are 100, whatever they cost apart.
    const sets = fairPlan.sets.map((set) => ({ ...set, sizes: null }));
    const plan = { ...fairPlan, sets };
    const log = aTapLog();
    for (const what of order) {
      const [offer] = openTicket(plan, log.taps, 'phone000').sets;
      if (what !== 'set') tapOn(log, saleOf(fairGoods('fern', what)));
      else if (offer !== undefined) tapOn(log, { what: 'set', ...picked(offer) });
    }
    expect(openTicket(plan, log.taps, 'phone000')).toMatchObject({ pieces: 4, minor: 10_000, sets: [] });
  });

  it('offers no pair of two customers where nobody ever tapped that one went', () => {
    const six = Array.from({ length: 6 }, () => saleOf(fernL));
    expect(ticketOf(...six)).toMatchObject({ isOfMany: false, sets: [{ setId: 'two-shirts' }] });
    expect(ticketOf(...six, saleOf(fernL))).toMatchObject({ isOfMany: true, sets: [] });
    // Whoever closes tickets may sell seven to one.
    expect(ticketOf(saleOf(fernL), next, ...six, saleOf(fernL))).toMatchObject({
      ...{ isOfMany: false, sets: [{ setId: 'two-shirts' }] },
    });
  });

  it('leaves the large shirts to the set that takes no others', () => {
    const [pair] = fairPlan.sets;
    if (pair === undefined) throw new Error('the fair has no pair');
    const any = { ...pair, id: 'any', price: 5200, sizes: null };
    const large = { ...pair, id: 'large', price: 5500, sizes: ['2XL', '3XL'] };
    const log = aTapLog();
    for (const size of ['2XL', '3XL', 'L', 'M']) tapOn(log, saleOf(fairGoods('fern', size)));
    tapOn(log, { what: 'set', setId: 'large', minor: 700, pay: 'card' });
    // 62 + 56 less 7 so far; any two: the small ones, 56 less 52.
    const ticket = openTicket({ ...fairPlan, sets: [any, large] }, log.taps, 'phone000');
    expect(ticket.sets).toMatchObject([{ setId: 'any', minor: 400 }]);
  });

  it('comes to what the customer pays: 28.00 and 7.25 % are 30.03, a pair of 50.00 is 53.63', () => {
    const plan = { ...fairPlan, taxMode: 'added', tax: 0.0725 } as const;
    expect(openTicket(plan, tapped(saleOf(fernL)), 'phone000').minor).toBe(3003);
    const pair: Tap = { what: 'set', setId: 'two-shirts', minor: 600, pay: 'card' };
    const taps = tapped(saleOf(fernL), saleOf(otterM), pair, next);
    // 53.625, half a cent up.
    expect(openTicket(plan, taps.slice(0, 3), 'phone000').minor).toBe(5363);
    expect(fold(taps, plan)).toMatchObject({ writtenMinor: 5000, grossMinor: 5363, cardMinor: 5363 });
  });

  it('is empty after the customer went, keeps the way of paying, and names the last tap', () => {
    const ticket = ticketOf(saleOf(fernL, 'cash'), next);
    expect(ticket).toMatchObject({ isBegun: false, pieces: 0, minor: 0, pay: 'cash' });
    expect(ticket.last?.body.tap).toEqual(next);
    expect(ticketOf()).toMatchObject({ isBegun: false, pay: 'card', last: null });
  });

  it('knows nothing of the ticket of another device', () => {
    const log = aTapLog('tablet00');
    tapOn(log, saleOf(fernL));
    expect(openTicket(fairPlan, log.taps, 'phone000')).toMatchObject({ isBegun: false, last: null });
  });
});
