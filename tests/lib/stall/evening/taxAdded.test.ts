import { describe, expect, it } from 'vitest';
import { type EveningAnswers, noAnswers } from '@/lib/stall/evening/eveningAnswers';
import type { StallPay, Tap } from '@/shared/schemas/stallEvents';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { dayOf, fairEvening, OTTER_L } from './fairEvening';

/* A tenth comes on top of what prices write: a shirt of 28.00 is paid with 30.80. */
const plan = { ...fairPlan, taxMode: 'added', tax: 0.1 } as const;
const sale: Tap = { what: 'sale', goods: OTTER_L, minor: 2800, pay: 'card' };
const readerSays = (total: number): EveningAnswers => ({
  ...noAnswers,
  card: { ...noAnswers.card, total },
});

describe('tax that comes on top is owed of every piece', () => {
  it.each<[StallPay, number, number]>([
    ['cash', 6160, 0],
    ['card', 3080, 3080],
  ])('that was sold and not tapped too, paid by %s', (pay, cash, card) => {
    // Seven were brought and one was tapped, in cash; five are there, so another one went.
    const counted = {
      'fair-shirts/otter/L': { pieces: 5, reason: 'soldNotTapped', reasonFor: -1, pay },
    } as const;
    const answers = { ...noAnswers, stock: { ...noAnswers.stock, counted } };
    const { money } = dayOf([{ ...sale, pay: 'cash' }], { answers, plan });
    expect(money).toMatchObject({ gross: 6160, net: 5600, tax: 560, cash, card });
  });

  it('that the reader took beyond what was tapped', () => {
    // 30.80 tapped, 50.00 taken: of the 19.20 beyond 17.45 are price, for 19.20 ÷ 1.1 = 17.4545.
    const { money } = dayOf([sale, { what: 'next' }], { answers: readerSays(5000), plan });
    expect(money).toMatchObject({ beyond: 1920, gross: 5000, written: 4545, net: 4545, tax: 455 });
  });
});

describe('tax that comes on top of a fair nobody tapped', () => {
  /** One L of each of the four designs is gone: 4 × 28.00 as prices write it, 123.20 as it is paid. */
  const fourGone = Object.fromEntries(
    fairPlan.goods.map(({ jobId, lineId, size, bring }) => [
      `${jobId}/${lineId}/${size}`,
      { pieces: size === 'L' ? bring - 1 : bring, reason: null, reasonFor: null },
    ]),
  );
  const stock = { ...noAnswers.stock, counted: fourGone };

  it('is within what tin and reader hold', () => {
    // 175.00 counted less 120.00 to begin with, and 66.00 by card: 121.00, of it 11.00 tax.
    const answers = {
      ...{ ...readerSays(6600), stock },
      cash: { ...noAnswers.cash, counted: 17_500 },
    };
    expect(fairEvening(answers, plan, []).money).toMatchObject({
      ...{ cash: 5500, card: 6600, isReckoned: false, beyond: 0 },
      ...{ gross: 12_100, written: 11_000, net: 11_000, tax: 1100, reductions: 200 },
    });
  });

  it('comes to the goods where the tin is not counted, and to what the reader took beyond them', () => {
    expect(fairEvening({ ...noAnswers, stock }, plan, []).money).toMatchObject({
      ...{ cash: 12_320, card: 0, isReckoned: true },
      ...{ gross: 12_320, written: 11_200, net: 11_200, tax: 1120 },
    });
    // 150.00 − 123.20 = 26.80, of which 24.36 are price: 26.80 ÷ 1.1 = 24.3636.
    expect(fairEvening({ ...readerSays(15_000), stock }, plan, []).money).toMatchObject({
      ...{ cash: 0, card: 15_000, beyond: 2680, isReckoned: true },
      ...{ gross: 15_000, written: 13_636, net: 13_636, tax: 1364 },
    });
  });
});
