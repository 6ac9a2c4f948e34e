import { expect, it } from 'vitest';
import { jobAsSold } from '@/lib/quotes/agreed/jobAsSold';
import { club } from '@/tests/fixtures/clubJob';

it('a job of an accepted alternative has its quantities and prints, and no longer what was said of the others', () => {
  const { job } = club();
  const [line] = jobAsSold(
    'club-order',
    { ...job, lines: job.lines.map((one) => ({ ...one, orderedQuantity: 37 })) },
    [
      {
        ...{ jobId: 'club-order', lineId: 'shirts', without: ['badge'] },
        sizes: [
          { size: 'L', quantity: 11 },
          { size: 'L', quantity: 3 },
        ],
      },
    ],
  ).lines;
  expect(line).toMatchObject({ quantities: [{ size: 'L', quantity: 14 }], orderedQuantity: null });
  expect(line?.placements.map(({ id }) => id)).toEqual(['back']);
});

it('a line that nothing is said of stays as it is', () => {
  const { job } = club();
  expect(jobAsSold('club-order', job, [])).toEqual(job);
});
