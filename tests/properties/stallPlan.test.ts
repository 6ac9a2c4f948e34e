import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { caseValue, wholeJob } from '@/lib/grid/costSheet';
import type { StallAsked } from '@/lib/stall/plan/stallAsked';
import type { StallDay } from '@/shared/schemas/stallDay';
import { costed } from '@/tests/fixtures/costed';
import type { Planned } from '@/tests/fixtures/fairAsked';
import { fairAsked, fairWith, plannedFair } from '@/tests/fixtures/fairAsked';
import { fixedRate, typed } from '@/tests/fixtures/numbers';
import { cases } from '@/tests/tools/cases';

/*
 * A plan made a second time, in decimals: what jobs cost row by row from the cost sheets of its quantities, the day from
 * what was typed, sales by the definition of the Poisson distribution. Mugs are held in threes, so that no sheet is
 * begun for one.
 */
const Exact = Decimal.clone({ precision: 40 });
const D = (value: number) => new Exact(value);
const { stallDay, jobs } = fairAsked;

interface Drawn {
  readonly shirts: readonly number[];
  readonly mugs: readonly number[];
  readonly wet: number;
  readonly factor: number;
  readonly leftover: number;
  readonly stall: number;
  readonly hours: number;
  readonly event: number;
  readonly price: number;
}

const drawn: fc.Arbitrary<Drawn> = fc.record({
  shirts: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 24, maxLength: 24 }),
  mugs: fc.array(
    fc.integer({ min: 1, max: 5 }).map((threes) => threes * 3),
    { minLength: 3, maxLength: 3 },
  ),
  wet: typed(0, 1),
  factor: typed(0, 1.5),
  leftover: typed(0, 1),
  stall: typed(0, 300),
  hours: typed(1, 20),
  event: typed(0.3, 2),
  price: typed(10, 40),
});

function fairOf({ shirts, mugs, wet, factor, leftover, stall, hours, event, price }: Drawn): StallAsked {
  const [dry, other] = stallDay.weathers;
  if (dry === undefined || other === undefined) throw new Error('the fair has no weathers');
  const share = (value: number) => fixedRate(value, 'share');
  const numbers = [...shirts, ...mugs];
  return fairWith({
    weathers: [
      { ...dry, chance: share(1 - wet), factor: share(1) },
      { ...other, chance: share(wet), factor: share(factor) },
    ],
    leftoverShare: share(leftover),
    costs: stallDay.costs.map((cost) =>
      cost.id === 'stall' ? { ...cost, amount: { of: 'typed', money: stall } as const } : cost,
    ),
    hours: [{ id: 'all', what: 'All of it', hours }],
    eventFactor: event,
    held: stallDay.held.map((one, at) => ({ ...one, bring: numbers[at] ?? 0 })),
    prices: {
      ...stallDay.prices,
      own: [{ jobId: 'fair-shirts', lineId: 'fern', size: 'L', price }],
    },
  });
}

/** The cost sheets of the quantities that are held. */
const sheetsOf = ({ held }: StallDay) =>
  jobs.map(({ jobId, input }) => {
    const lines = input.job.lines.map((line) => ({
      ...line,
      quantities: held
        .filter((one) => one.jobId === jobId && one.lineId === line.id)
        .map(({ size, bring }) => ({ size, quantity: bring })),
    }));
    return { jobId, sheet: costed({ ...input, job: { ...input.job, lines } }).sheet };
  });

function batchOf(sheets: ReturnType<typeof sheetsOf>): Decimal {
  let sum = D(0);
  for (const { sheet } of sheets) {
    const row = (id: string) => D(wholeJob(sheet, id));
    sum = sum
      // Minutes of sessions and artwork at 18.00, session ink at 0.16, warming up at 0.18, overhead of all minutes.
      .plus(row('sessionTime').plus(row('designTime')).dividedBy(60).times(18))
      .plus(row('inkSession').times(0.16))
      .plus(row('warmKwh').times(0.18))
      .plus(row('overheadExpected'))
      // The printer's own power: 2.5 minutes a sheet at 15 W.
      .plus(row('sheets').times(2.5).dividedBy(60).times(0.015).times(0.18));
  }
  return sum;
}

function soldOf(mean: Decimal, brought: number): Decimal {
  let [sum, reached, chance] = [D(0), D(0), mean.negated().exp()];
  for (let count = 0; count < brought; count += 1) {
    sum = sum.plus(chance.times(count));
    reached = reached.plus(chance);
    chance = chance.times(mean).dividedBy(count + 1);
  }
  return sum.plus(D(1).minus(reached).times(brought));
}

/** Shares of the worked fair, as it is told. */
const shirtShares: Readonly<Record<string, number>> = {
  ...{ fern: 0.32, lighthouse: 0.27, otter: 0.25, 'star-map': 0.16 },
};
const sizeMix: Readonly<Record<string, number>> = {
  ...{ S: 0.12, M: 0.26, L: 0.3, XL: 0.2, '2XL': 0.08, '3XL': 0.04 },
};
const mugPieces: Readonly<Record<string, number>> = { fern: 9, otter: 7, 'star-map': 6 };

function profitOf(day: Drawn, asked: StallAsked, factor: number): { profit: Decimal; sold: Decimal } {
  const sheets = sheetsOf(asked.stallDay);
  const money = D(day.stall).plus('27.60').plus(6).plus(12).plus(15);
  let profit = D(0)
    .minus(money)
    .minus(D(day.hours).times(18 + 4.2))
    .minus(batchOf(sheets));
  let all = D(0);
  for (const { jobId, lineId, size, bring } of asked.stallDay.held) {
    const isMug = jobId === 'fair-mugs';
    const mean = isMug
      ? D(mugPieces[lineId] ?? 0)
      : D(54)
          .times(shirtShares[lineId] ?? 0)
          .times(sizeMix[size] ?? 0);
    const sold = soldOf(mean.times(day.event).times(factor), bring);
    const sheet = sheets.find((one) => one.jobId === jobId)?.sheet;
    const at = sheet?.cases.findIndex((one) => one.lineId === lineId && one.size === size) ?? -1;
    const cost = D(sheet === undefined ? Number.NaN : caseValue(sheet, 'incrementalCost', at));
    const isOwn = lineId === 'fern' && size === 'L';
    const price = D(isMug ? 16 : isOwn ? day.price : ['2XL', '3XL'].includes(size) ? 31 : 28);
    const fees = price.times(0.026).plus(D(0.1).dividedBy(1.35)).times(0.75);
    const kept = price
      .dividedBy(1.07)
      .minus(fees)
      .minus(isMug ? 0.6 : 0.19);
    const left = D(bring).minus(sold);
    profit = profit.plus(sold.times(kept.minus(cost))).minus(left.times(cost).times(1 - day.leftover));
    all = all.plus(sold);
  }
  return { profit, sold: all };
}

const outcome = (plan: Planned, at: number) => plan.mine.outcomes[at];

describe('a plan', () => {
  it('agrees with the same plan made in decimals, in each weather and over both', () => {
    fc.assert(
      fc.property(drawn, (day) => {
        const asked = fairOf(day);
        const plan = plannedFair(asked);
        const [dry, other] = [profitOf(day, asked, 1), profitOf(day, asked, day.factor)];
        expect(outcome(plan, 0)?.profit).toBeCloseTo(dry.profit.toNumber(), 6);
        expect(outcome(plan, 0)?.sold).toBeCloseTo(dry.sold.toNumber(), 9);
        expect(outcome(plan, 1)?.profit).toBeCloseTo(other.profit.toNumber(), 6);
        const weighted = dry.profit.times(1 - day.wet).plus(other.profit.times(day.wet));
        expect(plan.mine.weighted.profit).toBeCloseTo(weighted.toNumber(), 6);
      }),
      cases(8),
    );
  });
});
