import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { type LineList, mixedTotal, sellingOf } from '@/lib/price/list/lineList';
import { sellingTotal } from '@/lib/price/list/selling';
import { priceLines, type TablePrice } from '@/lib/price/priceTable';
import { isLargerSize } from '@/shared/isLargerSize';
import { fromMinor, type MinorUnits } from '@/shared/money';
import type { JobInput } from '@/shared/schemas/request';
import { costed, grid } from '@/tests/fixtures/costed';
import { PATIENCE } from '@/tests/fixtures/drawnJobs';
import { type JobShape, randomJob } from '@/tests/fixtures/randomJob';
import { lineAlone } from '@/tests/oracle/lineAlone';
import { perSheetOf } from '@/tests/oracle/perSheetOf';
import { recomputeAlone } from '@/tests/oracle/recompute';
import { bestByTrying, largestOvercharge, paidFor, pricesOf } from '@/tests/oracle/suggestedList';
import { cases } from '@/tests/tools/cases';

/*
 * Suggested lists of random jobs against what orders must bring, made anew in fifty-digit decimals.
 */
const shapes: readonly JobShape[] = [
  { lines: 1, placements: 2, presses: 1, own: 'none' },
  { lines: 2, placements: 1, presses: 2, own: 'replaced' },
  { lines: 1, placements: 1, presses: 1, own: 'formulas' },
];
const { numRuns: JOBS, seed = Math.floor(Math.random() * 2 ** 31) } = cases(24);
const JUDGED_TO = 14;
const BREAKS = 3;

interface DrawnList {
  readonly input: JobInput;
  readonly list: LineList;
  readonly table: readonly TablePrice[];
  /** What a piece of a size must bring in an order of n of its line, as written; from the recomputation. */
  readonly need: (size: string, n: number) => Decimal;
  readonly from: number;
  readonly label: string;
}

const lists: DrawnList[] = [];

beforeAll(() => {
  const drawn = fc.record({
    from: fc.integer({ min: 1, max: 4 }),
    rule: fc.constantFrom<LineList['rule']>('capped', 'setUpApart'),
  });
  const asked = fc.sample(drawn, { seed, numRuns: JOBS });
  shapes.forEach((shape, half) => {
    fc.sample(randomJob(shape), { seed, numRuns: JOBS / shapes.length }).forEach((job, index) => {
      const { from, rule } = asked[half * (JOBS / shapes.length) + index] ?? { from: 1, rule: 'capped' };
      const chosenBreaks = { count: BREAKS, from, judgedTo: JUDGED_TO };
      const policy = { ...job.workshop.policy, breaks: null, chosenBreaks };
      // Made to stock or to order: the line says its rule.
      const order = { ...job.job, lines: job.job.lines.map((line) => ({ ...line, selling: rule })) };
      const input = { ...job, workshop: { ...job.workshop, policy }, job: order };
      lists.push(...listsOf(input, from, `${half} ${index}`));
    });
  });
}, PATIENCE.timeout);

describe(`suggested lists of random jobs, PROPERTY_SEED=${seed}`, () => {
  const totals = ({ list, input }: DrawnList, more: number) => {
    const selling = sellingOf(list, more as MinorUnits, input.workshop.currency);
    return (n: number): MinorUnits => {
      const total = selling.ok ? sellingTotal(selling.value, n) : null;
      if (total === null) throw new Error(`${n} pieces are not sold`);
      return total;
    };
  };
  const orders = ({ from }: DrawnList) =>
    Array.from({ length: JUDGED_TO - from + 1 }, (_, step) => from + step);

  it('are one for each line of each job', () => {
    expect(lists.length).toBeGreaterThanOrEqual(JOBS);
  });

  it('never fall in total, in any size', () => {
    for (const drawn of lists)
      for (const { more } of drawn.list.sizes) {
        const total = totals(drawn, more);
        for (let n = drawn.from; n < 400; n += 1)
          expect(total(n + 1), `${drawn.label} at ${n}`).toBeGreaterThanOrEqual(total(n));
      }
  });

  it('bring the target in every order, of one size or mixed', () => {
    for (const drawn of lists) {
      const { list, need, input } = drawn;
      const { currency } = input.workshop;
      for (const n of orders(drawn)) {
        const each = list.sizes.map(({ size }) => need(size, n));
        list.sizes.forEach(({ more }, at) => {
          const paid = fromMinor(totals(drawn, more)(n), currency);
          const needed = each[at]?.times(n).toNumber() ?? Number.NaN;
          if (list.sizes.length > 1 && isAveraged(drawn)) return;
          expect(paid, `${drawn.label}: ${n} of size ${at}`).toBeGreaterThanOrEqual(needed * (1 - 1e-11));
        });
        if (isAveraged(drawn)) continue;
        // One piece of each size in turn.
        const mix = list.sizes.map(({ size }, at) => ({
          size,
          quantity: Math.floor(n / list.sizes.length) + (at < n % list.sizes.length ? 1 : 0),
        }));
        const needed = mix.reduce(
          (sum, { quantity }, at) => sum.plus(each[at]?.times(quantity) ?? 0),
          new Decimal(0),
        );
        const paid = mixedTotal(list, mix, currency) ?? (0 as MinorUnits);
        expect(fromMinor(paid, currency), drawn.label).toBeGreaterThanOrEqual(
          needed.toNumber() * (1 - 1e-11),
        );
      }
    }
  });

  it('add one charge a size, and never ask less for a larger size', () => {
    for (const { list, table, label } of lists) {
      for (const { size, more } of list.sizes) {
        const cells = table.filter((cell) => cell.size === size);
        expect(new Set(cells.map(({ upCharge }) => upCharge)), label).toEqual(new Set([more]));
        for (const [at, cell] of cells.entries())
          expect(cell.price).toBe((list.breaks[at]?.each ?? 0) + more);
        expect(more).toBeGreaterThanOrEqual(0);
        for (const other of list.sizes)
          if (isLargerSize(size, other.size)) expect(more, label).toBeGreaterThanOrEqual(other.more);
      }
      expect(list.sizes.some(({ more }) => more === 0)).toBe(true);
    }
  });

  it('tell their true largest overcharge, and break where trying every list finds the best', () => {
    const capped = lists.filter(({ list }) => list.rule === 'capped');
    expect(capped.length).toBeGreaterThan(0);
    for (const drawn of capped) {
      const { list, input, from, label } = drawn;
      const asked = {
        each: (n: number) => judged(drawn, n),
        from,
        judgedTo: JUDGED_TO,
        openTimes: 2,
        step: input.workshop.policy.priceStep,
      };
      const starts = list.breaks.map((one) => one.from);
      const prices = list.breaks.map(({ each }) => new Decimal(fromMinor(each, input.workshop.currency)));
      for (const n of orders(drawn))
        expect(fromMinor(totals(drawn, 0)(n), input.workshop.currency)).toBeCloseTo(
          paidFor(n, starts, prices).toNumber(),
          9,
        );
      if (input.job.piecesPerSession === null)
        expect(
          prices.map((price) => price.toNumber()),
          label,
        ).toEqual(pricesOf(starts, asked).map((price) => price.toNumber()));
      expect(starts.length).toBeLessThanOrEqual(BREAKS);
      const worst = orders(drawn).reduce(
        (most, n) => Decimal.max(most, paidFor(n, starts, prices).div(judged(drawn, n).times(n)).minus(1)),
        new Decimal(-1),
      );
      expect(list.largestOvercharge, label).toBeCloseTo(worst.toNumber(), 9);
      if (input.job.piecesPerSession === null) {
        expect(largestOvercharge(starts, asked).toNumber()).toBeLessThanOrEqual(
          bestByTrying(BREAKS, asked).toNumber() + 0.01 + 1e-9,
        );
      }
    }
  });

  it('tell the least margin of any order', () => {
    for (const drawn of lists) {
      const aimed = drawn.input.workshop.rates.targetMargin?.value ?? 0;
      expect(drawn.list.leastMargin, drawn.label).toBeGreaterThanOrEqual(aimed - 1e-9);
    }
  });

  it('are those of a job that has no other line', () => {
    const shared = lists.filter(({ input }) => input.job.lines.length > 1);
    expect(shared.length).toBeGreaterThan(0);
    for (const { input, list, table, label } of shared) {
      const alone = priceLines(costed(lineAlone(input, list.lineId)), grid);
      const [same] = alone.lists;
      const { leastMargin, largestOvercharge, ...printed } = list;
      expect(same, label).toMatchObject(printed);
      expect(same?.leastMargin, label).toBeCloseTo(leastMargin, 9);
      expect(same?.largestOvercharge ?? 0, label).toBeCloseTo(largestOvercharge ?? 0, 9);
      table.forEach(({ pricedAt, fullCost, margin, payPerHour }, at) => {
        const cell = alone.table[at];
        expect(cell?.pricedAt, label).toBe(pricedAt);
        expect(cell?.fullCost, label).toBeCloseTo(fullCost, 9);
        expect(cell?.margin, label).toBeCloseTo(margin, 9);
        expect(cell?.payPerHour, label).toBeCloseTo(payPerHour, 6);
      });
    }
  });
});

/** What lists are judged by: the size that needs least, or the mix where one price covers all. */
function judged(drawn: DrawnList, n: number): Decimal {
  const { list, need, input } = drawn;
  if (!isAveraged(drawn)) {
    const base = list.sizes.find(({ more }) => more === 0)?.size ?? '';
    return need(base, n);
  }
  const line = input.job.lines.find(({ id }) => id === list.lineId);
  const pieces = line?.quantities ?? [];
  const sum = (of: (one: (typeof pieces)[number]) => Decimal) =>
    pieces.reduce((total, one) => (one.quantity > 0 ? total.plus(of(one)) : total), new Decimal(0));
  return sum(({ size, quantity }) => need(size, n).times(quantity)).div(
    sum(({ quantity }) => new Decimal(quantity)),
  );
}

const isAveraged = ({ input, list }: DrawnList): boolean =>
  input.job.lines.find(({ id }) => id === list.lineId)?.upCharging === 'averaged';

function listsOf(input: JobInput, from: number, label: string): readonly DrawnList[] {
  const job = costed(input);
  const perSheet = perSheetOf(job);
  const [channel] = input.workshop.channels;
  const taxed = channel?.taxMode === 'inside' ? 1 + (channel.tax?.value ?? 0) : 1;
  const { table, lists: made } = priceLines(job, grid);
  return made.map((list): DrawnList => {
    const known = new Map<string, Decimal>();
    const need = (size: string, n: number): Decimal => {
      const key = `${size} ${n}`;
      if (!known.has(key))
        for (const [name, { target }] of recomputeAlone(input, perSheet, { lineId: list.lineId, batch: n }))
          if (target !== undefined) known.set(`${name} ${n}`, target.times(taxed));
      const found = known.get(key);
      if (found === undefined) throw new Error(`the recomputation has no target of ${key}`);
      return found;
    };
    return {
      input,
      list,
      table: table.filter(({ lineId }) => lineId === list.lineId),
      need,
      from,
      label: `${label} ${list.lineId}`,
    };
  });
}
