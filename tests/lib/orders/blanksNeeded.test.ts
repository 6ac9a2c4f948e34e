import { describe, expect, it } from 'vitest';
import { blanksNeeded } from '@/lib/orders/bench/blanksNeeded';
import type { JobBlanks } from '@/shared/jobBlanks';
import type { Blank } from '@/shared/schemas/blank';
import type { Job } from '@/shared/schemas/job';
import { club } from '@/tests/fixtures/clubJob';

type Row = JobBlanks['sizes'][number];

const shirt = club().blanks['white-shirt'];
if (shirt === undefined) throw new Error('the example has no shirt');
const blanks: Readonly<Record<string, Blank>> = {
  shirt,
  cap: { ...shirt, name: 'Cap', sizes: shirt.sizes.slice(0, 1).map((one) => ({ ...one, name: 'one size' })) },
};

const row = (size: string, pieces: number, take: number, each: number, blankId = 'shirt'): Row => ({
  ...{ blankId, size, pieces, take, each },
});
/** A job of just the pieces that its sums tell of. */
const jobOf = (rows: readonly Row[]): Pick<Job, 'lines'> => {
  const [line] = club().job.lines;
  if (line === undefined) throw new Error('the example has no line');
  return {
    lines: rows.map(({ blankId, size, pieces }, at) => ({
      ...line,
      ...{ id: `line-${at}`, blankId, quantities: [{ size, quantity: pieces }] },
    })),
  };
};
interface Asked {
  readonly jobs: Readonly<Record<string, JobBlanks>>;
  readonly onHand?: Readonly<Record<string, Readonly<Record<string, number>>>>;
  readonly unknown?: readonly string[];
  readonly customers?: readonly string[];
}
const needs = ({ jobs, onHand = {}, unknown = [], customers = [] }: Asked) =>
  blanksNeeded({
    jobs: Object.entries(jobs).map(([id, { sizes }]) => ({ id, job: jobOf(sizes) })),
    blanks: Object.fromEntries(
      Object.entries(blanks).map(([id, body]) => [
        id,
        customers.includes(id) ? { ...body, suppliedBy: 'customer' as const } : body,
      ]),
    ),
    onHand,
    knownOf: (id) => (unknown.includes(id) ? null : (jobs[id] ?? null)),
  });

const two = {
  first: { freight: 9.5, sizes: [row('M', 9, 11, 4.6), row('L', 11, 13, 4.6)] },
  second: { freight: 6, sizes: [row('M', 3, 4, 4.6), row('one size', 10, 11, 2, 'cap')] },
};

describe('blanks that an order needs', () => {
  it('are those of all its jobs, spares among them, by blank and size, with what they cost', () => {
    const { needed, cost } = needs({ jobs: two });
    expect(needed).toMatchObject([
      {
        ...{ blankId: 'shirt', pieces: 23, take: 28, get: 28 },
        sizes: [
          { size: 'M', pieces: 12, get: 15 },
          { size: 'L', pieces: 11, get: 13 },
        ],
      },
      { blankId: 'cap', pieces: 10, take: 11, get: 11, sizes: [{ size: 'one size', get: 11 }] },
    ]);
    // 28 × 4.60 + 11 × 2.00 + 9.50 + 6.00.
    expect(cost?.amount).toBeCloseTo(166.3, 9);
    expect(cost?.withFreight).toBe(true);
  });

  it('are fewer by what lies here, counted once for all jobs; what nobody counted takes nothing away', () => {
    const { needed, cost } = needs({ jobs: two, onHand: { shirt: { M: 5, L: 40, S: 7 }, cap: {} } });
    expect(needed.map(({ take, get }) => [take, get])).toEqual([
      [28, 10],
      [11, 11],
    ]);
    // 10 × 4.60 + 22.00 + 15.50.
    expect(cost?.amount).toBeCloseTo(83.5, 9);
    expect(needs({ jobs: two, onHand: { shirt: { M: -5 } } }).needed[0]?.get).toBe(28);
  });

  it('cost nothing, freight neither, where all of them lie here', () => {
    const { needed, cost } = needs({ jobs: { first: two.first }, onHand: { shirt: { M: 11, L: 13 } } });
    expect([needed[0]?.get, cost]).toEqual([0, null]);
  });

  it('are asked of a customer who brings them, whatever lies here, and are not bought', () => {
    const { needed, cost } = needs({
      jobs: { first: two.first },
      onHand: { shirt: { M: 5 } },
      customers: ['shirt'],
    });
    expect([needed[0]?.get, cost]).toEqual([24, null]);
  });

  it('say that a job tells no freight', () => {
    const { cost } = needs({ jobs: { first: { ...two.first, freight: null } } });
    expect(cost).toMatchObject({ withFreight: false });
    expect(cost?.amount).toBeCloseTo(110.4, 9);
  });

  it('are good pieces alone while the sums of a job are not known, or are of other pieces', () => {
    const { needed, cost } = needs({ jobs: two, unknown: ['second'] });
    expect(needed.map(({ pieces, take, get }) => [pieces, take, get])).toEqual([
      [23, null, null],
      [10, null, null],
    ]);
    expect(cost).toBeNull();
    const stale = blanksNeeded({
      ...{ blanks, onHand: {} },
      jobs: [{ id: 'first', job: jobOf([row('M', 12, 14, 4.6), row('L', 11, 13, 4.6)]) }],
      knownOf: () => two.first,
    });
    expect([stale.needed[0]?.pieces, stale.needed[0]?.get]).toEqual([23, null]);
  });
});
