import { describe, expect, it } from 'vitest';
import { dayFigures } from '@/lib/stall/evening/dayFigures';
import { noAnswers } from '@/lib/stall/evening/eveningAnswers';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { Tap } from '@/shared/schemas/stallEvents';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { dayOf, fairAnswers, fairCount, fairEvening, fairTaps, OTTER_L } from './fairEvening';

describe('the money of the worked fair', () => {
  it('is 1,723.00 with tax, 112.72 of it tax, taken once on the day', () => {
    // 5 × 31 + 4 × 25 + 41 × 28 + 20 × 16; 1,723 × 7 ÷ 107 = 112.7196.
    expect(fairEvening().money).toMatchObject({ gross: 172_300, net: 161_028, tax: 11_272 });
  });

  it('holds 532.00 in the tin by its taps, and is 2.00 short of that', () => {
    // 120 + 412.
    expect(fairEvening().money).toMatchObject({
      ...{ float: 12_000, cash: 41_200, tinMoves: 0, expectedCash: 53_200 },
      ...{ countedCash: 53_000, difference: -200 },
    });
  });

  it('pays 37.99 for 39 tickets by card, so that 1,273.01 should reach the bank', () => {
    // 1,311 × 0.026 + 39 × 0.10 = 34.086 + 3.90.
    expect(fairEvening().money).toMatchObject({
      ...{ card: 131_100, cardTickets: 39, ticketsAre: 'counted', fees: 3799, payoutDue: 127_301 },
    });
  });

  it('is told by the command in currency units', () => {
    expect(dayFigures(fairPlan, fairCount(), null)).toEqual({
      ...{ gross: 1723, net: 1610.28, tax: 112.72, fees: 37.99, expectedCash: 532 },
      // Nobody counted.
      difference: null,
    });
  });
});

describe('cards', () => {
  const untold = fairTaps.filter(({ body }) => body.tap.what !== 'next');

  it('whose tickets nobody closed are estimated by pieces a ticket', () => {
    // 70 pieces, 1,311 of 1,723 by card, 1.35 pieces a ticket: 39.45.
    const { money } = fairEvening(fairAnswers, fairPlan, untold);
    expect(money).toMatchObject({ cardTickets: 39, ticketsAre: 'estimated' });
  });

  it('are counted on the phone whose tickets were closed, and estimated on the other', () => {
    const sale: Tap = { what: 'sale', goods: OTTER_L, minor: 2800, pay: 'card' };
    const of = (device: string, taps: readonly Tap[]) =>
      taps.map((tap, at) => ({
        ...{ id: `${device}-${at + 1}`, device, count: at + 1, at: 700 * 60_000 },
        body: { stallDayId: 'spring-fair', planId: 'p', currency: 'USD', tap },
      }));
    const closed = of('phonea00', Array.from({ length: 20 }, () => [sale, { what: 'next' } as const]).flat());
    const open = of(
      'phoneb00',
      Array.from({ length: 27 }, () => sale),
    );
    // 27 pieces at 1.35 each are 20 tickets, beside the 20 that were closed: 47 × 28 × 0.026 + 40 × 0.10 = 38.216.
    expect(fairEvening(noAnswers, fairPlan, [...closed, ...open]).money).toMatchObject({
      ...{ cardTickets: 40, ticketsAre: 'estimated', fees: 3822 },
    });
  });

  it('that took more than all that was sold leave the tin alone, and are asked about', () => {
    const sale: Tap = { what: 'sale', goods: OTTER_L, minor: 2800, pay: 'card' };
    const answers = { ...noAnswers, card: { ...noAnswers.card, total: 5000 } };
    const { money, unsettled } = dayOf([sale, { what: 'next' }], { answers });
    expect(money).toMatchObject({ gross: 5000, cash: 0, card: 5000, expectedCash: 12_000 });
    expect(unsettled).toContainEqual({ slip: 'card', why: 'beyond', minor: 2200 });
    // 28.00 given back in cash for what was paid by card leaves the tin as tapped.
    const back: Tap = { what: 'refund', goods: OTTER_L, minor: 2800, pay: 'cash' };
    const told = { ...noAnswers, card: { ...noAnswers.card, total: 2800 } };
    expect(dayOf([sale, back], { answers: told }).money).toMatchObject({ cash: -2800, beyond: 0 });
  });

  it('take the number that is typed at night', () => {
    const answers = { ...fairAnswers, card: { ...fairAnswers.card, tickets: 41 } };
    // 34.086 + 4.10.
    expect(fairEvening(answers, fairPlan, untold).money).toMatchObject({ ticketsAre: 'typed', fees: 3819 });
  });

  it('stand as the reader says, and what it took more is missing from the tin', () => {
    const answers = { ...fairAnswers, card: { ...fairAnswers.card, total: 133_900 } };
    // 28.00 that was tapped as cash: 532 − 28.
    expect(fairEvening(answers).money).toMatchObject({ card: 133_900, gross: 172_300, expectedCash: 50_400 });
  });
});

describe('tax', () => {
  it('is taken on each ticket where the rule says so', () => {
    const plan = { ...fairPlan, taxRounding: 'line' } as const;
    // Two tickets of 28.00: 28 × 7 ÷ 107 = 1.8318 on each, 3.66 together; once it would be 3.6636, also 3.66.
    // Three of 31.00 are 2.0280 each, 6.09; once 6.0841, 6.08.
    const big = { jobId: 'fair-shirts', lineId: 'otter', size: '2XL' };
    const sale: Tap = { what: 'sale', goods: big, minor: 3100, pay: 'card' };
    const taps: readonly Tap[] = [sale, { what: 'next' }, sale, { what: 'next' }, sale, { what: 'next' }];
    expect(dayOf(taps, { plan }).money.tax).toBe(609);
    expect(dayOf(taps).money.tax).toBe(608);
  });

  it('comes on top of what was tapped where prices are without it', () => {
    const plan = { ...fairPlan, taxMode: 'added', tax: 0.1 } as const;
    const { money } = dayOf([{ what: 'sale', goods: OTTER_L, minor: 2800, pay: 'cash' }], { plan });
    expect(money).toMatchObject({ gross: 3080, net: 2800, tax: 280, cash: 3080, expectedCash: 15_080 });
  });

  it.each([
    // 10.50 and 7.25 % are 11.26125: forty tickets of 11.26 are 450.40, where once on 420.00 it would be 450.45.
    ['USD', 0.0725, 1050, 40, 45_040, 45_040],
    // 28.00 and 8.1 % are 30.268, due as 30.27 and paid as 30.25: thirty are 908.10 and 907.50.
    ['CHF', 0.081, 2800, 30, 90_810, 90_750],
  ] as const)(
    'is added to each ticket as its customer pays it, then cash is rounded: %s',
    (currency, tax, minor, many, gross, cash) => {
      const plan = { ...fairPlan, currency, tax, taxMode: 'added' as const, float: [] };
      const sale: Tap = { what: 'sale', goods: OTTER_L, minor, pay: 'cash' };
      const taps = Array.from({ length: many }, (): readonly Tap[] => [sale, { what: 'next' }]).flat();
      const { money } = dayOf(taps, { plan });
      expect(money).toMatchObject({
        gross,
        cash,
        expectedCash: cash,
        net: many * minor,
        tax: gross - many * minor,
      });
      expect(money.cashRounding).toBe(cash - gross);
    },
  );

  it('is none where none is charged', () => {
    const plan = { ...fairPlan, taxMode: 'none' } as const;
    expect(dayOf([{ what: 'sale', goods: OTTER_L, minor: 2800, pay: 'cash' }], { plan }).money).toMatchObject(
      { gross: 2800, net: 2800, tax: 0 },
    );
  });
});

/*
 * Steps of cash from Unicode CLDR (CAD, CHF 0.05; DKK 0.50; SEK whole kronor since 2010) and, for the forint, whose two
 * smallest coins went in 2008, five by Hungarian law. The Canadian rule (1, 2 down; 3, 4 up; 6, 7 down; 8, 9 up, on the
 * total after tax, cash only) is from its Budget 2012 page. In Denmark 1 to 24 øre go down, 25 to 74 are 50 and from 75 on
 * the next krone is paid (national rule since the 25 øre coin went in 2008, from memory).
 */
describe('cash that is rounded to the coin', () => {
  it.each<[string, number, number]>([
    // 4.92 is paid as 4.90, the page’s own example.
    ['CAD', 492, 490],
    ['CHF', 1298, 1300],
    // 223.20 as 223.
    ['SEK', 22_320, 22_300],
    // 12.75 lies halfway between 12.50 and 13.00, and 12.25 between 12.00 and 12.50: both up.
    ['DKK', 1274, 1250],
    ['DKK', 1275, 1300],
    ['DKK', 1224, 1200],
    ['DKK', 1225, 1250],
    // Minor units of the forint are hundredths by ISO 4217: 1,872.00 as 1,870.
    ['HUF', 187_200, 187_000],
  ])('%s: %i is paid as %i, and the tin is expected to hold that', (currency, minor, paid) => {
    const plan = { ...fairPlan, currency, float: [] };
    const taps: readonly Tap[] = [{ what: 'sale', goods: OTTER_L, minor, pay: 'cash' }, { what: 'next' }];
    expect(dayOf(taps, { plan }).money).toMatchObject({
      ...{ gross: minor, cash: paid, cashRounding: paid - minor, expectedCash: paid },
    });
  });

  it('is rounded ticket by ticket', () => {
    const plan = { ...fairPlan, currency: 'CAD', float: [] };
    const sale: Tap = { what: 'sale', goods: OTTER_L, minor: 492, pay: 'cash' };
    // Twice 4.90, where 9.84 at once would be 9.85.
    const taps: readonly Tap[] = [sale, { what: 'next' }, sale, { what: 'next' }];
    expect(dayOf(taps, { plan }).money.expectedCash).toBe(980);
  });

  const sale = (minor: number, pay: 'cash' | 'card' = 'cash'): Tap => ({
    ...{ what: 'sale', goods: OTTER_L, minor, pay },
  });
  const next: Tap = { what: 'next' };

  it.each<[string, string, readonly Tap[], number, number, number]>([
    // 249.50 is halfway between 249 and 250: up, twice.
    ['NOK', 'in cash', [sale(24_950), next, sale(24_950)], 49_900, 50_000, 0],
    // 12.98 as 13.00 and 4.93 as 4.95.
    ['CHF', 'in cash', [sale(1298), next, sale(493)], 1791, 1795, 0],
    // 223.20 as 223 and 99.49 as 99.
    ['SEK', 'in cash', [sale(22_320), next, sale(9949)], 32_269, 32_200, 0],
    ['SEK', 'by card, which is not rounded', [sale(22_320), next, sale(9949, 'card')], 32_269, 22_300, 9949],
    // The word on how it is paid came last.
    ['CHF', 'by card and then in cash', [sale(493, 'card'), { what: 'pay', pay: 'cash' }], 493, 495, 0],
  ])('%s: the last ticket is still open, %s', (currency, _, taps, gross, cash, card) => {
    const plan = { ...fairPlan, currency, float: [] };
    const { money } = dayOf(taps, { plan });
    expect(money).toMatchObject({ gross, cash, card, expectedCash: cash });
    expect(money.cashRounding).toBe(cash + card - gross);
  });

  it.each([
    // 3 × 249.50 are 748.50, rounded once: 749, where three customers pay 750.
    [24_950, 74_900, true],
    // Whole kroner are paid as they are, by however many.
    [25_000, 75_000, false],
  ])(
    'knows where nobody tapped the next customer and coins tell them apart: 3 × %d',
    (minor, cash, isOnce) => {
      const plan = { ...fairPlan, currency: 'NOK', float: [] };
      const { money, count } = dayOf([sale(minor), sale(minor), sale(minor)], { plan });
      expect(money.expectedCash).toBe(cash);
      expect(count.tickets.map(({ isRoundedOnce }) => isRoundedOnce)).toEqual([isOnce]);
    },
  );

  it('is paid in coins too where it was sold and not tapped', () => {
    const goods = fairPlan.goods.map((one) => ({ ...one, price: 9949 }));
    const plan = { ...fairPlan, goods, currency: 'SEK', float: [] };
    const key = goodsKey(OTTER_L);
    const answers = {
      ...noAnswers,
      stock: {
        ...noAnswers.stock,
        isRestAsReckoned: true,
        counted: {
          [key]: { pieces: 5, reason: 'soldNotTapped' as const, reasonFor: -1, pay: 'cash' as const },
        },
      },
    };
    // Of seven, one was tapped and five are there: two customers' 99.49 each, one tapped as 99, one not, also 99.
    const { money } = dayOf([sale(9949), next], { plan, answers });
    expect(money).toMatchObject({ gross: 19_898, cash: 19_800, cashRounding: -98, expectedCash: 19_800 });
  });
});

describe('the tin', () => {
  it('counts what went in and out beside sales', () => {
    const tin = (cause: 'skimmed' | 'added' | 'spent', minor: number): Tap => ({
      ...{ what: 'tin', cause, minor, words: '' },
    });
    // 120 − 100 + 20 − 6.50.
    const { money } = dayOf([tin('skimmed', 10_000), tin('added', 2000), tin('spent', 650)]);
    expect(money).toMatchObject({ tinMoves: -8650, float: 12_000 });
  });

  it('is what its notes and coins come to where they are counted', () => {
    const coins = [
      { value: 20, count: 20 },
      { value: 5, count: 25 },
      { value: 0.25, count: 20 },
    ];
    const answers = { ...fairAnswers, cash: { counted: null, coins, reason: null, reasonFor: null } };
    // 400 + 125 + 5.
    expect(fairEvening(answers).money).toMatchObject({ countedCash: 53_000, difference: -200 });
  });
});

describe('a place that keeps a share', () => {
  it.each([
    // 10 % of 1,723.00, and of 1,610.28 without tax.
    ['withTax', 17_230],
    ['withoutTax', 16_103],
  ] as const)('of takings %s', (commissionBase, commission) => {
    const plan = { ...fairPlan, commission: 0.1, commissionBase };
    expect(fairEvening(fairAnswers, plan).money.commission).toBe(commission);
  });
});
