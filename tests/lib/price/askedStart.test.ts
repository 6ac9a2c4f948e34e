import { describe, expect, it } from 'vitest';
import { askTablePrices } from '@/app/_docket/prices/askTablePrices';
import { priceJob } from '@/lib/costing/priceJob';
import { wholeJob } from '@/lib/grid/costSheet';
import { priceTable } from '@/lib/price/priceTable';
import type { Line } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';
import { clubWith } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';
import { fixedRate } from '@/tests/fixtures/numbers';
import { plainJob } from '@/tests/fixtures/plainJob';

const apart = { 'job.lines.0.selling': 'setUpApart' };

/** 70.00 of freight an order and blanks of 7.00, sold with set-up apart; tax of 20 % inside where it is told. */
function plain(fields: Partial<Line>, taxMode: 'added' | 'inside' = 'added'): JobInput {
  const input = plainJob({
    sizes: [
      { quantity: 4, blank: 7 },
      { quantity: 6, blank: 7 },
    ],
    rates: { targetMargin: 0.3 },
    freight: 70,
    channel: { taxMode, tax: fixedRate(0.2, 'share') },
  });
  const lines = input.job.lines.map((line) => ({ ...line, selling: 'setUpApart' as const, ...fields }));
  return { ...input, job: { ...input.job, lines } };
}

describe('what an order pays once on top of its pieces', () => {
  it('is counted once, whatever its sizes, in price, profit and margin', () => {
    const { sheet } = costed(plain({ askedPrice: 10, askedStart: 100 }));
    // 100 + 10 × 10, of which the blanks and the freight are 140.
    expect(wholeJob(sheet, 'price')).toBeCloseTo(200, 10);
    expect(wholeJob(sheet, 'margin')).toBeCloseTo(0.3, 10);
  });

  it('has tax inside where the channel writes prices so', () => {
    const { sheet } = costed(plain({ askedPrice: 12, askedStart: 120 }, 'inside'));
    expect(wholeJob(sheet, 'price')).toBeCloseTo(200, 10);
  });

  it('leaves the list of its line as it is', () => {
    const listed = (fields: Partial<Line>) =>
      priceTable(costed(plain(fields)), grid).map(({ price, start, margin }) => [price, start, margin]);
    expect(listed({ askedPrice: 10, askedStart: 100 })).toEqual(listed({}));
    expect(listed({})[0]).toEqual([1000, 10_000, expect.closeTo(0.3, 10)]);
  });

  it('is in the total of the example: 132 + 37 × 12.50 + 4 × 2.50 + 1 × 4.00 = 608.50', () => {
    const undecided = clubWith({ ...apart, 'job.lines.0.askedPrice': null, 'job.lines.0.upCharges': [] });
    const table = priceJob(undecided, grid).prices?.table ?? [];
    const [first] = table;
    if (first === undefined) throw new Error('the example has a list');
    const job = askTablePrices(undecided.job, table, first, 'USD');
    expect(job.lines[0]).toMatchObject({
      askedPrice: 12.5,
      askedStart: 132,
      upCharges: [
        { size: '2XL', amount: 2.5 },
        { size: '3XL', amount: 4 },
      ],
    });
    const asked = priceJob({ ...undecided, job }, grid).prices;
    expect(asked?.offer.total?.without).toBe(60_850);
    expect(asked?.offer.lines[0]).toMatchObject({ each: 1250, start: 13_200 });
    expect(asked?.total).toBeCloseTo(608.5, 9);
    // Nobody has decided: it is offered at the same prices.
    const offered = priceJob(undecided, grid).prices?.offer;
    expect(offered?.total?.without).toBe(60_850);
    expect(offered?.margin).toBeCloseTo(asked?.margin ?? 0, 12);
    expect(offered?.margin).toBeGreaterThan(0.3);
  });

  it('is taken away with the price of a list that has none', () => {
    const input = clubWith({ 'job.lines.0.askedStart': 132 });
    const table = priceTable(costed(input), grid);
    const [first] = table;
    if (first === undefined) throw new Error('the example has a list');
    expect(askTablePrices(input.job, table, first, 'USD').lines[0]?.askedStart).toBeNull();
  });
});
