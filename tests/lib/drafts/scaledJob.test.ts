import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scaledJob } from '@/lib/drafts/scaledJob';
import type { Job } from '@/shared/schemas/job';
import { club, clubWith } from '@/tests/fixtures/clubJob';

const counts = (job: Job) => job.lines.map((line) => line.quantities.map(({ quantity }) => quantity));
const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);

describe('scaledJob', () => {
  it('keeps the mix of 37 shirts at 40, by largest remainder', () => {
    // 4, 9, 11, 8, 4 and 1 of 37 at 40: 4.32, 9.73, 11.89, 8.65, 4.32, 1.08; floors make 37, so the three largest
    // remainders (.89, .73, .65) get one more.
    expect(counts(scaledJob(club().job, 40))[0]?.filter((n) => n > 0)).toEqual([4, 10, 12, 9, 4, 1]);
  });

  it('gives the same job back at its own number', () => {
    expect(scaledJob(club().job, 37)).toEqual(club().job);
  });

  it('leaves what the customer said in all', () => {
    const { job } = clubWith({ 'job.lines.0.orderedQuantity': 37 });
    expect(scaledJob(job, 50).lines[0]?.orderedQuantity).toBe(37);
  });

  it('always makes the number asked for, each line and each size within one piece of its share', () => {
    const [line] = club().job.lines;
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.nat(60), { minLength: 1, maxLength: 6 }), { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 1, max: 2000 }),
        (lines, pieces) => {
          const all = sum(lines.flat());
          fc.pre(all > 0);
          const job = {
            ...club().job,
            lines: lines.map((quantities, at) => ({
              ...(line as Job['lines'][number]),
              id: `line-${at}`,
              quantities: quantities.map((quantity, size) => ({ size: `${size}`, quantity })),
            })),
          };
          const made = counts(scaledJob(job, pieces));
          expect(sum(made.flat())).toBe(pieces);
          made.forEach((sizes, at) => {
            const ofLine = sum(lines[at] ?? []);
            expect(Math.abs(sum(sizes) - (pieces * ofLine) / all)).toBeLessThanOrEqual(1);
            sizes.forEach((size, index) => {
              const before = lines[at]?.[index] ?? 0;
              if (before === 0) expect(size).toBe(0);
              else expect(Math.abs(size - (sum(sizes) * before) / ofLine)).toBeLessThanOrEqual(1);
            });
          });
        },
      ),
      { numRuns: 200 },
    );
  });
});
