import { describe, expect, it } from 'vitest';
import { answersOfClose } from '@/lib/stall/evening/answersOfClose';
import { closeBody } from '@/lib/stall/evening/closeBody';
import { type EveningAnswers, noAnswers, type StockReason } from '@/lib/stall/evening/eveningAnswers';
import { reasonsFor, type StockRow, shouldBeLeft } from '@/lib/stall/evening/stockRows';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { Tap } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { dayOf, fairAnswers, fairClock, fairEvening, fairTaps } from './fairEvening';

const FERN_M = 'fair-shirts/fern/M';

const OTTER_L = 'fair-shirts/otter/L';
/** Seven Otter L are sold. */
const bringing = (bring: number): typeof fairPlan => ({
  ...fairPlan,
  goods: fairPlan.goods.map((one) => (goodsKey(one) === OTTER_L ? { ...one, bring } : one)),
});

const fernM = (answers: EveningAnswers, taps = fairTaps): StockRow => {
  const row = fairEvening(answers, fairPlan, taps).rows.find(({ key }) => key === FERN_M);
  if (row === undefined) throw new Error('no Fern M');
  return row;
};

const counted = (pieces: number, reason: StockReason | null = null): EveningAnswers => ({
  ...fairAnswers,
  // 3 should be left.
  stock: {
    ...fairAnswers.stock,
    counted: { [FERN_M]: { pieces, reason, reasonFor: reason === null ? null : pieces - 3 } },
  },
});

const made = {
  number: { count: 1, letter: 'A' },
  issuedOn: TEST_DAY,
  planId: 'plan-1',
  clock: fairClock,
} as const;

describe('the stock of the evening', () => {
  it('should have 62 of 132 left, 13 Fern shirts of 30 and 16 mugs of 36 among them', () => {
    const { rows, pieces } = fairEvening();
    const left = (jobId: string, lineId: string) =>
      rows
        .filter(({ goods }) => goods.jobId === jobId && (lineId === '' || goods.lineId === lineId))
        .reduce((sum, row) => sum + (row.left ?? 0), 0);
    expect(pieces).toBe(70);
    expect([left('fair-shirts', ''), left('fair-mugs', '')]).toEqual([46, 16]);
    // 30 − 17, 26 − 13, 24 − 14, 16 − 6.
    expect(['fern', 'lighthouse', 'otter', 'star-map'].map((id) => left('fair-shirts', id))).toEqual([
      13, 13, 10, 10,
    ]);
  });

  it('asks why one is missing where the count finds fewer', () => {
    const evening = fairEvening(counted(2));
    // 8 brought, 5 sold.
    expect(fernM(counted(2))).toMatchObject({ reckoned: 3, counted: 2, difference: -1, missing: 1 });
    expect(evening.unsettled).toMatchObject([{ slip: 'stock', why: 'differs', row: { key: FERN_M } }]);
    expect(reasonsFor(fernM(counted(2)))).toEqual(['damaged', 'given', 'soldNotTapped', 'notKnown']);
  });

  it('asks for no reason where nothing differs, or nobody can tell', () => {
    const tapped = { reckoned: 3, sold: 5, untapped: 0 };
    expect(reasonsFor({ ...tapped, difference: 0 })).toEqual([]);
    expect(reasonsFor({ ...tapped, difference: null })).toEqual([]);
    // One too many is a tap too many only where any was tapped.
    expect(reasonsFor({ ...tapped, difference: 1 })).toEqual(['tappedTwice', 'refillNotTapped', 'notKnown']);
    expect(reasonsFor({ ...tapped, sold: 0, difference: 1 })).toEqual(['refillNotTapped', 'notKnown']);
  });

  it.each<[StockReason, Partial<StockRow>, number]>([
    ['damaged', { damaged: 1, sold: 5, missing: 0 }, 53_200],
    ['given', { given: 1, sold: 5, missing: 0 }, 53_200],
    // Its 28.00 should be in the tin as well.
    ['soldNotTapped', { sold: 6, untapped: 1, missing: 0, revenueMinor: 6 * 2800 }, 56_000],
    ['notKnown', { sold: 5, missing: 1 }, 53_200],
  ])('a piece that is %s leaves nothing to settle', (reason, expected, expectedCash) => {
    const answers = counted(2, reason);
    const cash = { ...answers.cash, reasonFor: 53_000 - expectedCash };
    const evening = fairEvening({ ...answers, cash });
    expect(fernM(answers)).toMatchObject(expected);
    expect(evening.money.expectedCash).toBe(expectedCash);
    expect(evening.unsettled).toEqual([]);
  });

  it('asks again where a piece went when more are missing than the reason was said of', () => {
    // One of 8 Fern M was given: 5 sold, 2 counted. Then one sale by card is taken back: 4 should be left, 2 are missing.
    const answers = counted(2, 'given');
    const last = fairTaps.findLast(
      ({ body: { tap } }) => tap.what === 'sale' && goodsKey(tap.goods) === FERN_M,
    );
    const taps = fairTaps.filter((tap) => tap !== last);
    expect(fernM(answers, taps)).toMatchObject({ difference: -2, reason: null, given: 0, missing: 2 });
    expect(fairEvening(answers, fairPlan, taps).unsettled).toMatchObject([
      { slip: 'stock', why: 'differs', row: { key: FERN_M } },
    ]);
  });

  it.each<[number, StockReason]>([
    [2, 'damaged'],
    [1, 'given'],
    [2, 'soldNotTapped'],
    [0, 'notKnown'],
    [4, 'tappedTwice'],
  ])('keeps in the close of what amount a reason was said: %i counted, %s', (pieces, reason) => {
    const answers = counted(pieces, reason);
    const close = closeBody(fairEvening(answers), { ...made, answers });
    expect(answersOfClose(close).stock.counted[FERN_M]).toMatchObject({ reason, reasonFor: pieces - 3 });
  });

  it('takes a sale that was not tapped by card where the maker says so, and keeps that in the close', () => {
    const { stock, ...others } = counted(2);
    const answers: EveningAnswers = {
      ...others,
      stock: {
        ...stock,
        counted: { [FERN_M]: { pieces: 2, reason: 'soldNotTapped', reasonFor: -1, pay: 'card' } },
      },
    };
    const evening = fairEvening(answers);
    // 1,723 and 28; 1,311 by card and 28; the tin is as it was.
    expect(evening.money).toMatchObject({ gross: 175_100, card: 133_900, expectedCash: 53_200 });
    const close = closeBody(evening, { ...made, answers });
    expect(answersOfClose(close).stock.counted[FERN_M]).toEqual(answers.stock.counted[FERN_M]);
  });

  it('takes a sale that was not tapped at the price of the hour in which the last one was tapped', () => {
    // The last Fern M went at 15:10.
    const plan = (lastHourFrom: number): StallPlan => ({
      ...{ ...fairPlan, lastHourFrom },
      goods: fairPlan.goods.map((goods) => ({ ...goods, lastHourPrice: 2000 })),
    });
    const found = (from: number) => fairEvening(counted(2, 'soldNotTapped'), plan(from));
    const revenue = (from: number) => found(from).rows.find(({ key }) => key === FERN_M)?.revenueMinor;
    // The last Fern M went at 15:25.
    const last = 925;
    // Five were tapped at 28.00, whatever the hour.
    expect(revenue(last)).toBe(5 * 2800 + 2000);
    expect(revenue(last + 1)).toBe(5 * 2800 + 2800);
    // 120 in the tin, 412 as tapped, and 20 or 28.
    expect(found(last).money.expectedCash).toBe(53_200 + 2000);
    expect(found(last + 1).money.expectedCash).toBe(53_200 + 2800);
  });

  it('takes one sale off where a sale was tapped twice', () => {
    const answers = counted(4, 'tappedTwice');
    expect(fernM(answers)).toMatchObject({ difference: 1, sold: 4, untapped: -1, missing: 0 });
    expect(fairEvening(answers).money).toMatchObject({ gross: 169_500, expectedCash: 50_400 });
    expect(reasonsFor(fernM(answers))).toEqual(['tappedTwice', 'refillNotTapped', 'notKnown']);
  });

  it('offers to take back a sale that was the only one', () => {
    // Fern S: 4 brought, one sale is taken back until a single one is left, and all 4 are there.
    const FERN_S = 'fair-shirts/fern/S';
    let sales = 0;
    const taps = fairTaps.filter(({ body: { tap } }) => {
      if (tap.what !== 'sale' || goodsKey(tap.goods) !== FERN_S) return true;
      sales += 1;
      return sales === 1;
    });
    const stock = {
      ...fairAnswers.stock,
      counted: { [FERN_S]: { pieces: 4, reason: 'tappedTwice', reasonFor: 1 } },
    } as const;
    const row = fairEvening({ ...fairAnswers, stock }, fairPlan, taps).rows.find(({ key }) => key === FERN_S);
    expect(row).toMatchObject({ sold: 0, untapped: -1 });
    expect(row === undefined ? [] : reasonsFor(row)).toContain('tappedTwice');
  });

  it('finds what is more than all that was brought, and takes it as put out where that is said', () => {
    // 8 brought, 5 sold.
    expect(fernM(counted(99))).toMatchObject({ brought: 8, sold: 5, left: 99, missing: 0, found: 96 });
    const refilled = fernM(counted(99, 'refillNotTapped'));
    expect(refilled).toMatchObject({ brought: 104, sold: 5, left: 99, missing: 0, found: 0 });
    expect(shouldBeLeft(refilled)).toBe(3);
  });

  it('takes no more sales off than were tapped, and tells what more is there', () => {
    // 8 brought and 5 tapped, yet 9 are there: all five go, and one is there that was never brought.
    const answers = counted(9, 'tappedTwice');
    expect(fernM(answers)).toMatchObject({ difference: 6, sold: 0, untapped: -5, missing: 0, found: 1 });
    // 1,723 less 5 × 28.
    expect(fairEvening(answers).money.gross).toBe(158_300);
  });

  it('tells what more was sold than was brought, and keeps the sale', () => {
    const plan = bringing(5);
    const evening = fairEvening(fairAnswers, plan);
    expect(evening.overdrawn).toMatchObject([
      { key: OTTER_L, brought: 5, sold: 7, reckoned: -2, missing: 0, found: 2 },
    ]);
    expect(evening.unsettled).toMatchObject([{ slip: 'stock', why: 'differs' }]);
    expect(evening.money.gross).toBe(172_300);
    // 62 should be left of the fair; the two that are not there make it no fewer.
    const should = evening.rows.reduce((sum, row) => sum + shouldBeLeft(row), 0);
    expect(should).toBe(evening.rows.reduce((sum, row) => sum + (row.left ?? 0), 0));
    expect(should).toBe(62);
  });

  it('asks for a count, which may be said to be left out', () => {
    const open = { ...fairAnswers, stock: noAnswers.stock };
    expect(fairEvening(open).unsettled).toEqual([{ slip: 'stock', why: 'notCounted', sizes: 27 }]);
    expect(fairEvening({ ...open, stock: { ...open.stock, isRestUnknown: true } }).unsettled).toEqual([]);
  });
});

describe('a fair at which nobody tapped', () => {
  const none = fairTaps.slice(0, 0);
  const all = Object.fromEntries(
    fairEvening().rows.map((row) => [row.key, { pieces: row.left, reason: null, reasonFor: null }]),
  );
  const answers: EveningAnswers = {
    ...fairAnswers,
    cash: { counted: 53_000, coins: null, reason: null, reasonFor: null },
    card: { total: 131_100, tickets: 39, payout: null, isRight: false },
    stock: { counted: all, isRestAsReckoned: false, isRestUnknown: false },
  };

  it('sold what did not come home, and took what tin and reader hold', () => {
    const { soldFrom, pieces, money, unsettled } = fairEvening(answers, fairPlan, none);
    expect({ soldFrom, pieces, unsettled }).toEqual({ soldFrom: 'count', pieces: 70, unsettled: [] });
    // 530 − 120 in cash and 1,311 by card; at the plan’s prices 45 × 28 + 5 × 31 + 20 × 16 = 1,735.
    expect(money).toMatchObject({
      ...{ gross: 172_100, cash: 41_000, card: 131_100, reductions: 1400 },
      ...{ expectedCash: 53_000, difference: null, isReckoned: false },
    });
  });

  it('asks where more is from than was brought', () => {
    const beyond = (reason: StockReason | null): EveningAnswers => ({
      ...answers,
      stock: {
        ...answers.stock,
        counted: { ...all, [FERN_M]: { pieces: 10, reason, reasonFor: reason === null ? null : 2 } },
      },
    });
    const row = (reason: StockReason | null) =>
      fairEvening(beyond(reason), fairPlan, none).rows.find(({ key }) => key === FERN_M);
    expect(row(null)).toMatchObject({ brought: 8, sold: 0, left: 10, difference: 2, missing: 0, found: 2 });
    expect(fairEvening(beyond(null), fairPlan, none).unsettled).toMatchObject([
      { slip: 'stock', why: 'differs', row: { key: FERN_M } },
    ]);
    const refilled = row('refillNotTapped');
    expect(refilled).toMatchObject({ brought: 10, sold: 0, found: 0 });
    expect(refilled === undefined ? [] : reasonsFor(refilled)).toEqual(['refillNotTapped', 'notKnown']);
    expect(fairEvening(beyond('notKnown'), fairPlan, none).unsettled).toEqual([]);
  });

  it('reckons takings by prices where nobody knows what is in the tin, and says so', () => {
    const unknown = {
      ...answers,
      cash: { counted: null, coins: null, reason: 'notKnown', reasonFor: null },
    } as const;
    expect(fairEvening(unknown, fairPlan, none).money).toMatchObject({ gross: 173_500, isReckoned: true });
  });

  it('reckons takings by prices where nobody read the reader, whatever the tin holds', () => {
    const unread = { ...answers, card: { ...answers.card, total: null, tickets: null } };
    const { money } = fairEvening(unread, fairPlan, none);
    // 1,735 of goods at the plan’s prices; the tin held 120 to begin with.
    expect(money).toMatchObject({ gross: 173_500, cash: 173_500, card: 0, isReckoned: true });
    expect(money).toMatchObject({ expectedCash: 185_500, difference: 53_000 - 185_500 });
  });

  it.each([
    // 120 to begin with, 100 taken out, 80 counted: 60 came in. With 100 put in 280 were counted.
    ['skimmed', -10_000, 8000],
    ['added', 10_000, 28_000],
  ] as const)('takes as cash what the tin holds but for what was %s', (cause, tinMoves, counted) => {
    const tin: Tap = { what: 'tin', cause, minor: 10_000, words: '' };
    const told = { ...answers, cash: { ...answers.cash, counted } };
    expect(dayOf([tin], { answers: told }).money).toMatchObject({
      ...{ cash: 6000, tinMoves, gross: 137_100, expectedCash: counted, isReckoned: false },
    });
  });

  it('takes no less than the reader says, and asks where that is more than all goods come to', () => {
    // One L of each of the four designs is gone, 4 × 28 = 112; the reader says 500.
    const counted = Object.fromEntries(
      fairPlan.goods.map(({ jobId, lineId, size, bring }) => [
        `${jobId}/${lineId}/${size}`,
        { pieces: size === 'L' ? bring - 1 : bring, reason: null, reasonFor: null },
      ]),
    );
    const told = {
      ...answers,
      cash: { counted: null, coins: null, reason: 'notKnown' as const, reasonFor: null },
      card: { ...answers.card, total: 50_000 },
      stock: { ...answers.stock, counted },
    };
    const { money, unsettled } = fairEvening(told, fairPlan, none);
    // Of 500.00 32.71 is tax: 500 × 7 ÷ 107 = 32.7103.
    expect(money).toMatchObject({ gross: 50_000, cash: 0, card: 50_000, tax: 3271, expectedCash: 12_000 });
    expect(unsettled).toEqual([{ slip: 'card', why: 'beyond', minor: 38_800 }]);
    const sure = { ...told, card: { ...told.card, isRight: true } };
    expect(fairEvening(sure, fairPlan, none).unsettled).toEqual([]);
    // Before every size is counted nobody knows what was sold, so nothing is beyond it.
    const open = { ...told, stock: { ...told.stock, counted: {} } };
    expect(fairEvening(open, fairPlan, none).unsettled).toEqual([
      { slip: 'stock', why: 'notCounted', sizes: 27 },
    ]);
  });

  it('sold none of what more came home than went out', () => {
    const more = {
      ...answers.stock,
      counted: { ...all, [FERN_M]: { pieces: 10, reason: null, reasonFor: null } },
    };
    // 8 went out and 10 came home; by the count as it was five of them were among the 70 sold.
    const evening = fairEvening({ ...answers, stock: more }, fairPlan, none);
    expect(evening.rows.find(({ key }) => key === FERN_M)).toMatchObject({
      ...{ brought: 8, sold: 0, left: 10, missing: 0, found: 2, revenueMinor: 0 },
    });
    expect(evening.pieces).toBe(65);
  });

  it('is not closed before every size is counted and the reader is read', () => {
    const open = { ...noAnswers, stock: { ...noAnswers.stock, isRestUnknown: true } };
    const evening = fairEvening(open, fairPlan, none);
    expect(evening.unsettled).toEqual([
      { slip: 'cash', why: 'notCounted' },
      { slip: 'card', why: 'noTotal' },
      { slip: 'stock', why: 'notCounted', sizes: 27 },
    ]);
    // Missing is not 0.
    expect(evening.result).toMatchObject({ profit: null, contribution: null });
  });
});
