import { describe, expect, it } from 'vitest';
import { jobsAsAgreed } from '@/lib/quotes/agreed/jobAsAgreed';
import { quoteAsChosen } from '@/lib/quotes/following/followingPapers';
import { quoteBody } from '@/lib/quotes/quoteBody';
import { stillHolds } from '@/lib/quotes/stillHolds';
import type { Job } from '@/shared/schemas/job';
import type { Quote } from '@/shared/schemas/orderPapers';
import { club } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';
import { DAY } from '@/tests/fixtures/numbers';
import { plainInput } from '@/tests/lib/quotes/plainQuote';
import { anOrder, asking, clubAlternatives, clubCustomer, ready } from '@/tests/lib/quotes/quoteTools';

type Asked = NonNullable<Parameters<typeof ready>[0]>;

const quoteOf = (asked: Asked) => quoteBody(ready(asked), { count: 1, letter: 'A' }, ({ id }) => id);

/** What the job of a quote becomes by a yes to one of its alternatives. */
function agreed(asked: Asked, alternativeId: string | null, change: (job: Job) => Job = (job) => job) {
  const input = asked.input ?? club();
  return jobsAsAgreed({
    ...{ quote: quoteOf(asked), alternativeId, order: anOrder(asked.order) },
    jobs: [{ jobId: 'club-order', job: change(input.job) }],
    workshop: input.workshop,
  });
}

/** What the job comes to when it is quoted anew, in whole minor units. */
function anew(asked: Asked, alternativeId: string) {
  const [found] = agreed(asked, alternativeId);
  if (found === undefined) throw new Error('the job stays as it is');
  const input = { ...(asked.input ?? club()), job: found.job };
  const { goods, charges, sums } = ready({
    ...asked,
    input,
    order: { ...asked.order, alternatives: [] },
  }).body;
  return { goods, charges, sums };
}

const choices: Asked = { order: { alternatives: clubAlternatives } };

describe('a job of which an alternative was accepted', () => {
  it('has its pieces, and comes to the same sum when it is quoted anew', () => {
    const [found] = agreed(choices, 'forty');
    const quantities = found?.job.lines[0]?.quantities;
    expect(quantities).toContainEqual({ size: 'L', quantity: 14 });
    expect(found?.changes).toMatchObject([
      { line: 'Club shirt', pieces: { before: 37, after: 40 }, without: [], isPriceOther: true },
    ]);
    // 711.50 and three at 12.50 are 749.00; less 8.50 that large sizes add, 740.50 ÷ 40 is 18.51 and 0.10 once.
    expect(found?.job.lines[0]).toMatchObject({ askedPrice: 18.51, askedStart: 0.1 });
    expect(anew(choices, 'forty').sums).toEqual({ subtotal: 74_900, tax: 5243, total: 80_143 });
  });

  it('is without the print that was left out, at the price without it', () => {
    const [found] = agreed(choices, 'backOnly');
    expect(found?.job.lines[0]?.placements.map(({ id }) => id)).toEqual(['back']);
    expect(found?.changes[0]).toMatchObject({ pieces: null, without: ['Chest badge'] });
    const other = ready(choices).body.alternatives.find(({ id }) => id === 'backOnly');
    expect(anew(choices, 'backOnly').sums).toEqual(other?.sums);
    // Every size costs as much less, so sizes add what they added.
    expect(found?.job.lines[0]?.upCharges).toEqual(club().job.lines[0]?.upCharges);
    expect(found?.job.lines[0]?.askedStart).toBeNull();
  });

  it('keeps what is taken off so that fewer pieces are not dearer than all', () => {
    // By hand: five stand at 150.00 by the list, and at 145.00 as all ten are.
    const input = plainInput({
      ...{ sizes: [{ quantity: 10, blank: 6 }], freight: 30, targetMargin: 0.4, asked: 14.5 },
    });
    const five = { id: 'five', kind: 'pieces', jobId: 'club-order', lineId: 'line', quantity: 5, size: null };
    const asked: Asked = { input, day: DAY, order: { alternatives: [five] } };
    expect(anew(asked, 'five')).toMatchObject({ charges: [], sums: { total: 14_500 } });
  });

  it('asks prices with tax inside also where its customer was told them without', () => {
    // 10.70 with 7 % inside is 10.00 to whoever pays none.
    const input = plainInput({
      ...{ sizes: [{ quantity: 10, blank: 6 }], asked: 10.7, tax: { mode: 'inside', share: 0.07 } },
    });
    const asked: Asked = {
      ...{ input, day: DAY, order: { exempt: true } },
      customer: clubCustomer({ exemption: { number: 'X-1', validUntil: null, proof: null } }),
    };
    const cheaper = (job: Job): Job => ({
      ...job,
      lines: job.lines.map((line) => ({ ...line, askedPrice: 9 })),
    });
    expect(agreed(asked, null)).toEqual([]);
    expect(agreed(asked, null, cheaper)[0]?.job.lines[0]?.askedPrice).toBe(10.7);
  });

  it('keeps its names, and what the customer said in all follows', () => {
    const [found] = agreed(choices, 'forty', (job) => ({
      ...job,
      lines: job.lines.map((line) => ({ ...line, nameList: 'Ada\nBo', orderedQuantity: 37 })),
    }));
    expect(found?.job.lines[0]).toMatchObject({ nameList: 'Ada\nBo', orderedQuantity: 40 });
  });

  it('is left alone where it is what was accepted already', () => {
    expect(agreed(choices, null)).toEqual([]);
    const [found] = agreed(choices, 'forty');
    expect(agreed(choices, 'forty', (job) => found?.job ?? job)).toEqual([]);
  });

  it('is brought back to what was asked for where it was edited since', () => {
    const fewer = (job: Job): Job => ({
      ...job,
      lines: job.lines.map((line) => ({ ...line, quantities: [{ size: 'L', quantity: 11 }] })),
    });
    const [found] = agreed(choices, null, fewer);
    expect(found?.changes).toMatchObject([{ pieces: { before: 11, after: 37 }, isPriceOther: false }]);
    expect(found?.job).toEqual(club().job);
  });

  it('still holds as what was accepted', () => {
    const [found] = agreed(choices, 'forty');
    const input = { ...club(), job: found?.job ?? club().job };
    const standing = (quote: Quote) => stillHolds(quote, asking({ input }), grid);
    const quote = quoteOf(choices);
    expect(standing(quote).kind).toBe('otherGoods');
    expect(standing(quoteAsChosen(quote, 'forty'))).toMatchObject({
      ...{ kind: 'compared', holds: true, quoted: { total: 80_143 }, now: { total: 80_143 } },
    });
  });
});
