import { describe, expect, it } from 'vitest';
import { priceJob } from '@/lib/costing/priceJob';
import { sellingOf } from '@/lib/price/list/lineList';
import { sellingTotal } from '@/lib/price/list/selling';
import { priceLines } from '@/lib/price/priceTable';
import { freezeItem } from '@/lib/priceLists/freezeItem';
import { breaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import { chargesAnswer } from '@/lib/studies/charges/chargesAnswer';
import type { MinorUnits } from '@/shared/money';
import type { Job } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';
import { changed, club } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';
import { plainJob } from '@/tests/fixtures/plainJob';

type Line = Job['lines'][number];

function withCopy(input: JobInput, fields: Partial<Line> = {}): JobInput {
  const [line] = input.job.lines;
  if (line === undefined) throw new ReferenceError('the job has no line');
  const placements = line.placements.map((one) => ({ ...one, id: `${one.id}-two` }));
  const copy = { ...line, id: 'two', name: 'Two', placements, ...fields };
  return { ...input, job: { ...input.job, lines: [line, copy] } };
}

/** 70.00 of freight an order and blanks of 7.00 at a margin of 30 %: 100.00 and 10.00 a piece. */
const plain = (fields: Partial<Line>, gang: Job['gang'] = 'apart'): JobInput => {
  const input = plainJob({
    sizes: [{ quantity: 10, blank: 7 }],
    rates: { targetMargin: 0.3 },
    freight: 70,
  });
  const [line] = input.job.lines;
  const job = { ...input.job, gang, lines: line === undefined ? [] : [{ ...line, ...fields }] };
  return withCopy({ ...input, job });
};

describe('the list of one of several lines', () => {
  it('with set-up apart starts at all that an order of this line alone costs once', () => {
    const [list, other] = priceLines(costed(plain({ selling: 'setUpApart' })), grid).lists;
    expect([list?.start, list?.breaks[0]?.each]).toEqual([10_000, 1000]);
    expect([other?.start, other?.breaks[0]?.each]).toEqual([10_000, 1000]);
    expect(list?.leastMargin).toBeCloseTo(0.3, 10);
    // One pays 110.00 and costs 77.00: what it leaves counts the start too.
    const answer = breaksAnswer(plain({ selling: 'setUpApart' }), grid, { lineId: 'line', quantities: [] });
    expect(answer?.ends[0]?.marginAtFirst).toBeCloseTo(0.3, 10);
  });

  it.each(['capped', 'asListed', 'slab'] as const)('%s asks of one piece what it costs alone', (selling) => {
    const priced = priceLines(costed(plain({ selling, breaks: [1, 10] })), grid);
    // (70 + 7) ÷ 0.7 and (70 + 70) ÷ 0.7 ÷ 10.
    expect(priced.lists[0]?.breaks.map(({ each }) => each)).toEqual([11_000, 2000]);
    expect(priced.table[0]?.fullCost).toBeCloseTo(77, 10);
    expect(priced.table[0]?.margin).toBeCloseTo(0.3, 10);
  });

  it('is judged in the batch with the other lines where it is made to stock', () => {
    const input = plain({ selling: 'onePrice' });
    const [list] = priceLines(costed({ ...input, job: { ...input.job, madeFor: 'stock' } }), grid).lists;
    // 70 over twenty pieces and 7.00: 10.50 over 0.7.
    expect(list?.breaks.map(({ from, each }) => [from, each])).toEqual([[1, 1500]]);
  });

  it('is that of the example by itself, where its line is there twice', () => {
    const input = changed(club(), { 'job.wantedOn': null, 'workshop.blocks': null });
    const alone = priceJob(input, grid).prices?.lists[0];
    const both = priceJob(withCopy(input), grid).prices?.lists ?? [];
    expect(both).toHaveLength(2);
    for (const list of both) {
      const { lineId, leastMargin, largestOvercharge, ...printed } = list;
      expect(alone).toMatchObject(printed);
      expect(leastMargin).toBeCloseTo(alone?.leastMargin ?? 0, 9);
      expect(largestOvercharge).toBeCloseTo(alone?.largestOvercharge ?? 0, 9);
      // One shirt alone costs 98.57 in full and must bring 144.44.
      expect(list.breaks[0]?.total).toBeGreaterThanOrEqual(14_444);
    }
  });

  it('is the same where prints of all lines share sheets', () => {
    const ganged = (input: JobInput): JobInput => ({ ...input, job: { ...input.job, gang: 'together' } });
    const input = changed(club(), { 'job.wantedOn': null, 'workshop.blocks': null });
    const [alone] = priceLines(costed(ganged(input)), grid).lists;
    const [list] = priceLines(costed(ganged(withCopy(input))), grid).lists;
    expect(list?.breaks).toEqual(alone?.breaks);
  });

  it('is frozen, looked at and charged beside by the same sums', () => {
    const input = plain({ selling: 'capped', breaks: [1, 10] });
    const frozen = freezeItem(input, grid, {
      id: 'item',
      jobId: 'job',
      lineId: 'line',
      charges: [],
      ownAmounts: [],
    });
    // Up to nine pay the 200.00 of ten; one pays 110.00.
    expect(frozen).toMatchObject({ kind: 'frozen', item: { breaks: [{ each: 11_000 }, { each: 2000 }] } });
    if (frozen.kind === 'frozen')
      for (const { leastMargin } of frozen.item.breaks) expect(leastMargin).toBeCloseTo(0.3, 10);
    const answer = breaksAnswer(input, grid, { lineId: 'line', quantities: [4] });
    expect(answer?.staircase.points[0]).toMatchObject({ n: 1, pays: 11_000 });
    expect(answer?.staircase.points[0]?.target).toBeCloseTo(110, 9);
    expect(answer?.staircase.points[0]?.fullCost).toBeCloseTo(77, 9);
    expect(answer?.ends[0]?.marginAtFirst).toBeCloseTo(0.3, 10);
    expect(answer?.tariff?.start).toBeCloseTo(100, 9);
    // Four cost 98.00 and pay 200.00.
    expect(answer?.sold.find(({ n }) => n === 4)?.marginAfter).toBeCloseTo(0.51, 10);
    const least = chargesAnswer(input, grid)?.charges.find(({ id }) => id === 'minimumOrder');
    expect(least?.cost).toBeCloseTo(77, 9);
  });

  it('leaves out the press and the print that only the other line has', () => {
    const input = changed(club(), { 'job.wantedOn': null, 'workshop.blocks': null });
    const [line] = input.job.lines;
    const one = line?.placements.slice(0, 1).map((placement) => ({ ...placement, id: 'only' })) ?? [];
    const both = withCopy(input, { placements: one });
    const lines = both.job.lines.filter(({ id }) => id === 'two');
    const [alone] = priceLines(costed({ ...both, job: { ...both.job, lines } }), grid).lists;
    const list = priceLines(costed(both), grid).lists[1];
    expect(list?.breaks).toEqual(alone?.breaks);
    expect(list?.leastMargin).toBeCloseTo(alone?.leastMargin ?? 0, 9);
  });

  it('never lets an order of it pay less than it costs by itself', () => {
    const [list] = priceLines(costed(plain({ selling: 'capped' })), grid).lists;
    const selling = list === undefined ? null : sellingOf(list, 0 as MinorUnits, 'USD');
    if (!selling?.ok) throw new Error('the line has a list');
    for (let n = 1; n <= 150; n += 1)
      expect(sellingTotal(selling.value, n)).toBeGreaterThanOrEqual(10_000 + 1000 * n);
  });
});
