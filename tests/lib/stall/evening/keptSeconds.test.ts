import { expect, it } from 'vitest';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import { closeBody } from '@/lib/stall/evening/closeBody';
import { type EveningAnswers, noAnswers } from '@/lib/stall/evening/eveningAnswers';
import { reconcile } from '@/lib/stall/evening/reconcile';
import { dayCloseSchema, type StallPlan } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { goods } from '@/tests/lib/stall/stallStock';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { fairClock } from './fairEvening';

/* Nine Fern L and two seconds of it came along; one first for 28.00 and one second for 14.00 were sold in cash. */

const plan: StallPlan = {
  ...fairPlan,
  secondsShare: 0.5,
  goods: fairPlan.goods.map((one) =>
    one.jobId === goods.jobId && one.lineId === goods.lineId && one.size === goods.size
      ? { ...one, seconds: 2 }
      : one,
  ),
};
const sale = { what: 'sale', goods, pay: 'cash' } as const;
const taps: readonly TappedEntry[] = [
  { ...sale, minor: 2800 },
  { ...sale, minor: 1400, isSecond: true as const },
].map((tap, at) => ({
  ...{ id: `phone-${at + 1}`, device: 'phonephone', count: at + 1, at: (620 + at) * 60_000 },
  body: { stallDayId: fairPlan.stallDayId, planId: 'plan-1', currency: 'USD', tap },
}));
const answers: EveningAnswers = {
  ...noAnswers,
  // The float of 120.00 and 42.00.
  cash: { ...noAnswers.cash, counted: 16_200 },
  stock: { ...noAnswers.stock, isRestAsReckoned: true },
};

it('seconds kept from before leave the firsts on the table, and cost what they were worth since they were spoiled', () => {
  const evening = reconcile(plan, foldTaps(plan, taps, fairClock), answers, fairClock);
  const row = evening.rows.find(({ key }) => key === 'fair-shirts/fern/L');
  expect(row).toMatchObject({ brought: 9, sold: 2, keptBrought: 2, keptSold: 1, left: 8, missing: 0 });
  expect(evening.unsettled).toEqual([]);
  // 42.00 with 7 % tax inside, two bags at 0.19, one first at 6.543 and one second at six tenths of that.
  expect(evening.result.contribution).toBeCloseTo(42 / 1.07 - 2 * 0.19 - 1.6 * 6.543, 2);
  const { bridge } = evening;
  expect(bridge).not.toBeNull();
  const steps = bridge?.steps.reduce((sum, { by }) => sum + by, bridge.from) ?? Number.NaN;
  expect(steps).toBeCloseTo(evening.result.profit ?? Number.NaN, 6);
  const close = dayCloseSchema.parse(
    closeBody(evening, {
      ...{ number: { count: 1, letter: 'A' }, issuedOn: TEST_DAY, planId: 'plan-1', answers },
      clock: fairClock,
    }),
  );
  expect(close.goods.filter(({ keptBrought }) => keptBrought !== undefined)).toMatchObject([
    { lineId: 'fern', size: 'L', keptBrought: 2, keptSold: 1 },
  ]);
});
