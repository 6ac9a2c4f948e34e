import { describe, expect, it } from 'vitest';
import { jobsAsAgreed } from '@/lib/quotes/agreed/jobAsAgreed';
import { mixedPrices } from '@/lib/quotes/agreed/mixedPrices';
import type { OfAgreed } from '@/lib/quotes/agreed/writingOf';
import { quoteBody } from '@/lib/quotes/quoteBody';
import type { Job, Line } from '@/shared/schemas/job';
import { club } from '@/tests/fixtures/clubJob';
import { DAY } from '@/tests/fixtures/numbers';
import { plainInput } from '@/tests/lib/quotes/plainQuote';
import { anOrder, clubAlternatives, ready } from '@/tests/lib/quotes/quoteTools';

type Asked = NonNullable<Parameters<typeof ready>[0]>;

const choices: Asked = { order: { alternatives: clubAlternatives } };

/** An order of which a choice was accepted, its job brought to that. */
function accepted(asked: Asked, alternativeId: string | null): OfAgreed {
  const input = asked.input ?? club();
  const before: OfAgreed = {
    quote: quoteBody(ready(asked), { count: 1, letter: 'A' }, ({ id }) => id),
    ...{ alternativeId, order: anOrder(asked.order), workshop: input.workshop },
    jobs: [{ jobId: 'club-order', job: input.job }],
  };
  const [become] = jobsAsAgreed(before);
  return { ...before, jobs: [{ jobId: 'club-order', job: become?.job ?? input.job }] };
}

const withLine = (of: OfAgreed, change: (line: Line) => Line): OfAgreed => ({
  ...of,
  jobs: of.jobs.map(({ jobId, job }) => ({
    jobId,
    job: { ...job, lines: job.lines.map(change) } satisfies Job,
  })),
});

describe('the price of a job that was made of what it was sold at', () => {
  it('is told where a size was sold at two prices', () => {
    const of = accepted(choices, 'forty');
    // 37 at 19.00 to 21.50 and three at 12.50: 18.51 a piece and 0.10 once.
    expect(of.jobs[0]?.job.lines[0]).toMatchObject({ askedPrice: 18.51, askedStart: 0.1 });
    expect(mixedPrices(of)).toEqual([{ jobId: 'club-order', lineId: 'shirts' }]);
  });

  it('is told where something was taken off beside the pieces', () => {
    // By hand: five stand at 150.00 by the list, and 5.00 are taken off, since all ten cost 145.00.
    const input = plainInput({
      ...{ sizes: [{ quantity: 10, blank: 6 }], freight: 30, targetMargin: 0.4, asked: 14.5 },
    });
    const five = { id: 'five', kind: 'pieces', jobId: 'club-order', lineId: 'line', quantity: 5, size: null };
    expect(mixedPrices(accepted({ input, day: DAY, order: { alternatives: [five] } }, 'five'))).toEqual([
      { jobId: 'club-order', lineId: 'line' },
    ]);
  });

  it('is no other than it was sold at where each size has one', () => {
    expect(mixedPrices(accepted(choices, 'backOnly'))).toEqual([]);
    expect(mixedPrices(accepted(choices, null))).toEqual([]);
  });

  it('is the maker’s own again where another was typed since, and stays so for other quantities', () => {
    const of = accepted(choices, 'forty');
    expect(mixedPrices(withLine(of, (line) => ({ ...line, askedPrice: 18 })))).toEqual([]);
    const more = withLine(of, (line) => ({ ...line, quantities: [{ size: 'L', quantity: 50 }] }));
    expect(mixedPrices(more)).toHaveLength(1);
  });

  it('is not looked at where the line went by a price list', () => {
    const of = accepted(choices, 'forty');
    const price = { from: 'list', paperId: 'p', itemId: 'i' } as const;
    const lines = [{ jobId: 'club-order', lineId: 'shirts', price, names: [] }];
    expect(mixedPrices({ ...of, order: { ...of.order, lines } })).toEqual([]);
  });
});

it('a job whose sizes were all sold at two prices keeps what they add', () => {
  const spread = { id: 'spread', kind: 'pieces', jobId: 'club-order', lineId: 'shirts', quantity: 74 };
  const of = accepted(
    { order: { wantedOn: '2027-01-29', alternatives: [{ ...spread, size: null }] } },
    'spread',
  );
  expect(of.jobs[0]?.job.lines[0]?.upCharges).toEqual(club().job.lines[0]?.upCharges);
});
