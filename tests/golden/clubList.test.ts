import { describe, expect, it } from 'vitest';
import { answerCurve } from '@/app/_requests/answerCurve';
import { withBreaks } from '@/app/_requests/withBreaks';
import { priceJob } from '@/lib/costing/priceJob';
import { clubOrder } from '@/lib/examples/clubOrder';
import { fairMugs, fairShirts } from '@/lib/examples/fairJobs';
import { present } from '@/lib/grid/present';
import { caseEvaluator } from '@/lib/price/caseEvaluator';
import { chooseBreaks } from '@/lib/price/list/chooseBreaks';
import { judgedJob } from '@/lib/price/list/judgedJob';
import { type LineList, mixedTotal } from '@/lib/price/list/lineList';
import { lineNeeds } from '@/lib/price/list/lineNeeds';
import { orderRows } from '@/lib/price/list/orderRows';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';
import { changed, clubWith } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';

/*
 * The suggested list of thirty-seven club shirts, worked by hand: 131.81 to start and 12.70 a shirt in the mix of sizes,
 * 12.34 in the sizes S to XL; six breaks judged up to 150 pieces in these.
 */
const club = clubOrder('2026-11-25', '2026-12-11');

function listOf(input: JobInput): LineList {
  const [list] = priceJob(input, grid).prices?.lists ?? [];
  if (list === undefined) throw new Error('the job has no list');
  return list;
}

/** Six breaks from an order on, before or on the ending of 0.50. */
const sixFrom = (from: number, priceStep: number) =>
  listOf(
    jobInputSchema.parse(
      withBreaks(changed(club, { 'workshop.policy.priceStep': priceStep }), { by: 'sums', count: 6, from }),
    ),
  );

describe('the capped list of the club order', () => {
  it.each([
    [1, 0.162, 0.17],
    [6, 0.107, 0.118],
    [12, 0.072, 0.092],
  ])(
    'from %d on overcharges no order by more than %d, on the ending %d, and a point for customary breaks',
    (from, cents, halves) => {
      for (const [step, most] of [
        [0.01, cents],
        [0.5, halves],
      ] as const) {
        const list = sixFrom(from, step);
        expect(list.rule).toBe('capped');
        expect(list.breaks).toHaveLength(6);
        expect(list.breaks[0]?.from).toBe(from);
        expect(list.largestOvercharge).toBeLessThanOrEqual(most + 0.01);
        expect(list.leastMargin).toBeGreaterThanOrEqual(0.3);
      }
    },
  );

  it.each([
    [1, 0.162, 0.17],
    [6, 0.107, 0.118],
    [12, 0.072, 0.092],
  ])(
    'from %d on is, before it is moved to customary breaks, at most %d and on the ending %d over',
    (from, cents, halves) => {
      const job = costed(club);
      const [line] = job.laidOut.job.lines;
      const needs =
        line && lineNeeds(judgedJob(job, line), line, grid, caseEvaluator(judgedJob(job, line), line, grid));
      const each = (n: number) => (needs?.judged.written(n) ?? 0) * 100;
      for (const [step, most] of [
        [1, cents],
        [50, halves],
      ] as const) {
        const { least } = chooseBreaks({
          each: Array.from({ length: 151 }, (_, n) => (n === 0 ? 0 : each(n))),
          openEach: (n) => Math.max(...Array.from({ length: n + 1 }, (_, more) => each(n + more))),
          from,
          judgedTo: 150,
          count: 6,
          kept: [],
          lifted: (amount) => Math.ceil(amount / step - 1e-9) * step,
          oddness: () => 0,
        });
        expect(least).toBeLessThanOrEqual(most);
      }
    },
  );

  it('is what the example has without a word of its maker: six breaks from one on, and one charge a size', () => {
    const list = listOf(club);
    expect(list.sizes.map(({ size, more }) => [size, more])).toEqual([
      ['S', 0],
      ['M', 0],
      ['L', 0],
      ['XL', 0],
      ['2XL', 250],
      ['3XL', 400],
    ]);
    expect(list.start).toBe(0);
    expect(list.breaks[0]).toEqual({ from: 1, each: 14_450, total: 14_450 });
    for (const { from, each, total } of list.breaks) expect(total).toBe(from * each);
  });

  it('tells small orders the sum they pay', () => {
    const [one, two] = orderRows(listOf(club));
    expect(one).toEqual({ from: 1, to: 1, kind: 'single', amount: 14_450 });
    expect(two).toEqual({ from: 2, to: 3, kind: 'together', amount: 18_200 });
  });

  it('adds charges to a mixed order a piece, beside the cap', () => {
    const pieces = [
      { size: 'L', quantity: 1 },
      { size: '2XL', quantity: 2 },
    ];
    expect(mixedTotal(listOf(club), pieces, 'USD')).toBe(18_200 + 2 * 250);
  });

  it('has no inversions as it is sold, and its own prices as they stand have', () => {
    const curve = { from: 1, to: 5, priceEach: null };
    expect(answerCurve(club, '2026-11-25', curve).inversions).toEqual([]);
  });
});

describe('the club order with its set-up apart', () => {
  const list = listOf(clubWith({ 'workshop.policy.listRule': 'setUpApart' }));

  it('is 132.00 to start and 12.50, 15.00 or 16.50 a shirt', () => {
    expect(list).toMatchObject({ rule: 'setUpApart', start: 13_200, largestOvercharge: null });
    expect(list.breaks).toEqual([{ from: 1, each: 1250, total: 14_450 }]);
    const each = (size: string) => 1250 + (list.sizes.find((one) => one.size === size)?.more ?? 0);
    expect(['S', 'XL', '2XL', '3XL'].map(each)).toEqual([1250, 1250, 1500, 1650]);
  });

  it('leaves 30 % or more of every order from 1 to 200 in every size, and 608.50 for the club', () => {
    const job = costed(club);
    const [line] = job.laidOut.job.lines;
    if (line === undefined) throw new Error('the club order has no line');
    for (const size of line.sizes) {
      const more = list.sizes.find((one) => one.size === size.size)?.more ?? 0;
      const orders = Array.from({ length: 200 }, (_, at) => at + 1);
      const asked = orders.map((n) => ({ size, batch: n, askedPrice: (13_200 / n + 1250 + more) / 100 }));
      for (const column of caseEvaluator(judgedJob(job, line), line, grid)(asked)) {
        expect(present(column, 'margin')).toBeGreaterThanOrEqual(0.3);
        if (more === 0) expect(present(column, 'margin')).toBeLessThan(0.315);
      }
    }
    const asked = line.sizes.map(({ size, quantity }) => ({ size, quantity }));
    // 132 + 37 × 12.50 + 4 × 2.50 + 4.00.
    expect(mixedTotal(list, asked, 'USD')).toBe(60_850);
  });
});

describe('targets of orders from a few columns of the grid', () => {
  it.each([
    ['the club order', club],
    ['shirts in four designs and two sessions', fairShirts('2026-11-25')],
    ['with sheets shared', clubWith({ 'job.gang': 'together' })],
    [
      'with a formula of the maker',
      clubWith({
        'job.ownRows': [
          {
            id: 'own_jump',
            label: 'From ten on',
            outOfPocket: true,
            cost: { kind: 'formula', formula: 'IF(pieces >= 10; 3; 0)' },
          },
        ],
      }),
    ],
  ])('%s: are those of the grid at every quantity', (_, input) => {
    const job = costed(input);
    const [line] = job.laidOut.job.lines;
    if (line === undefined) throw new Error('the job has no line');
    const judged = judgedJob(job, line);
    const evaluate = caseEvaluator(judged, line, grid);
    const needs = lineNeeds(judged, line, grid, evaluate);
    const orders = Array.from({ length: 160 }, (_order, at) => at + 1);
    for (const { size, target } of needs?.sizes ?? []) {
      const columns = evaluate(orders.map((batch) => ({ size, batch, askedPrice: null })));
      for (const [at, column] of columns.entries()) {
        const worked = present(column, 'target');
        expect(Math.abs(target(at + 1) / worked - 1)).toBeLessThan(1e-10);
      }
    }
  });
});

describe('what is made to stock', () => {
  it('has one price a size, at its target in the batch as it is made', () => {
    for (const input of [fairShirts('2026-11-25'), fairMugs('2026-11-25')]) {
      const lists = priceJob(input, grid).prices?.lists ?? [];
      expect(lists).toHaveLength(input.job.lines.length);
      for (const list of lists) {
        expect(list).toMatchObject({ rule: 'onePrice', start: 0, largestOvercharge: null });
        expect(list.breaks.map(({ from }) => from)).toEqual([1]);
        expect(list.leastMargin).toBeGreaterThanOrEqual(0.3);
      }
    }
  });
});

describe('a larger size', () => {
  it('is never suggested cheaper than a smaller one, whatever its blank is said to cost', () => {
    const price = (value: number) => ({ value, unit: 'money/piece', date: '2026-11-25', origin: 'yours' });
    const dear = Object.fromEntries(
      [0, 1, 2, 3].map((at) => [`blank:white-shirt.sizes.${at}.price`, price(6.9)]),
    );
    const list = listOf(clubWith({ ...dear, 'blank:white-shirt.sizes.4.price': price(6.21) }));
    const more = (name: string) => list.sizes.find(({ size }) => size === name)?.more;
    expect([more('S'), more('XL'), more('2XL')]).toEqual([0, 0, 0]);
  });
});
