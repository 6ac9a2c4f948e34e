import { describe, expect, it } from 'vitest';
import { dayCosts, moneyOf } from '@/lib/stall/plan/costs/dayCosts';
import { paidAlready } from '@/lib/stall/plan/costs/paidAlready';
import { sellingTerms } from '@/lib/stall/plan/costs/sellingTerms';
import { addDays } from '@/shared/days';
import type { StallCost } from '@/shared/schemas/stallDay';
import { fairAsked } from '@/tests/fixtures/fairAsked';
import { fixedRate } from '@/tests/fixtures/numbers';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const { stallDay, workshop } = fairAsked;
const [stall, drive] = stallDay.costs;
const channel = workshop.channels.find(({ id }) => id === 'stall');
if (stall === undefined || drive === undefined || channel === undefined)
  throw new Error('the fair lacks its costs or its way of selling');

describe('what of a stall day is paid', () => {
  it('is what was paid by the day on which it is asked, a drive by its length too', () => {
    const paidOn = (cost: StallCost, days: number | null) =>
      paidAlready(
        { costs: [{ ...cost, paidOn: days === null ? null : addDays(TEST_DAY, days) }] },
        workshop,
        TEST_DAY,
      );
    expect([-1, 0, 1, null].map((days) => paidOn(stall, days))).toEqual([85, 85, 0, 0]);
    // 46 miles at 0.60.
    expect(paidOn(drive, -1)).toBeCloseTo(27.6, 9);
  });
});

describe('a drive', () => {
  const noRate = { ...workshop, rates: { ...workshop.rates, travelRate: null } };
  const of = (km: number | null): StallCost => ({ ...drive, amount: { of: 'drive', km } });

  it('of no length costs nothing, whatever a mile does, and one of unknown length is not known', () => {
    expect([moneyOf(of(0), noRate), moneyOf(of(12), noRate), moneyOf(of(null), workshop)]).toEqual([
      ...[0, null, null],
    ]);
    const costs = [stall, of(0)];
    expect(dayCosts({ ...stallDay, costs }, noRate)).toMatchObject({ sunk: 85, avoidable: 0 });
  });
});

describe('terms of selling', () => {
  it('have one piece a ticket at the least', () => {
    const of = (pieces: number) =>
      sellingTerms({ ...channel, piecesPerTicket: fixedRate(pieces, 'pieces') })?.piecesPerTicket;
    expect([of(0.5), of(1), of(2.5)]).toEqual([1, 1, 2.5]);
  });
});
