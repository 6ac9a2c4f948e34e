import { describe, expect, it } from 'vitest';
import { clubOrder } from '@/lib/examples/clubOrder';
import { breakSpans } from '@/lib/price/list/breakStarts';
import { priceTable, type TablePrice } from '@/lib/price/priceTable';
import type { OwnRow } from '@/shared/schemas/ownRow';
import type { JobInput } from '@/shared/schemas/request';
import { costed, grid } from '@/tests/fixtures/costed';
import { fixedRate } from '@/tests/fixtures/numbers';
import { plainJob } from '@/tests/fixtures/plainJob';

const club = clubOrder('2026-11-25', '2026-12-11');

const tableOf = (input: JobInput): readonly TablePrice[] => priceTable(costed(input), grid);

const withBreaks = (input: JobInput, breaks: readonly number[], priceStep = 0.5): JobInput => ({
  ...input,
  workshop: { ...input.workshop, policy: { ...input.workshop.policy, breaks: [...breaks], priceStep } },
});

describe('breakSpans', () => {
  it.each([
    [[1], [[1, null]]],
    [
      [1, 6, 12],
      [
        [1, 5],
        [6, 11],
        [12, null],
      ],
    ],
    // Typed in any order, or twice.
    [
      [12, 1, 12],
      [
        [1, 11],
        [12, null],
      ],
    ],
    [
      [3, 4],
      [
        [3, 3],
        [4, null],
      ],
    ],
  ])('%j gives %j', (starts, spans) => {
    expect(breakSpans(starts).map(({ from, to }) => [from, to])).toEqual(spans);
  });
});

describe('a break is priced at the quantity inside it that needs the highest price', () => {
  it('its first, where nothing steps', () => {
    const cells = tableOf(withBreaks(club, [12, 24]));
    expect(new Set(cells.map(({ from, pricedAt }) => `${from} ${pricedAt}`))).toEqual(
      new Set(['12 12', '24 24']),
    );
  });

  it('the one that begins another session, where sessions cost most', () => {
    // Nothing but sessions of ten costs anything: two of them over eleven pieces are dearer than one over ten.
    const input = plainJob({
      sizes: [{ quantity: 20, blank: 0.01 }],
      rates: { wage: 60, setUpMinutes: 100 },
    });
    const job = { ...input.job, piecesPerSession: 10 };
    const cells = tableOf(withBreaks({ ...input, job }, [8, 16]));
    expect(cells.map(({ pricedAt }) => pricedAt)).toEqual([11, 21]);
  });

  it('one of an order of this line alone: the other lines of the job fill no session of it', () => {
    // With the seventeen pieces of the other line a second session of 29 would begin at thirteen of this one; alone
    // six have one session, and so have all up to 29.
    const input = plainJob({
      sizes: [{ quantity: 6, blank: 0.01 }],
      rates: { wage: 60, setUpMinutes: 100 },
    });
    const [line] = input.job.lines;
    if (line === undefined) throw new ReferenceError('the job has no line');
    const other = {
      ...line,
      id: 'other',
      name: 'Other',
      quantities: line.quantities.map((one) => ({ ...one, quantity: 17 })),
      placements: line.placements.map((one) => ({ ...one, id: 'other-print' })),
    };
    const job = { ...input.job, lines: [line, other], piecesPerSession: 29 };
    const cells = tableOf(withBreaks({ ...input, job }, [6])).filter(({ lineId }) => lineId === 'line');
    expect(cells.map(({ pricedAt }) => pricedAt)).toEqual([6]);
  });

  it('another in each size, where a formula of the maker makes more of the blank at some quantity', () => {
    const surcharge: OwnRow = {
      id: 'own_insurance',
      label: 'Insurance from ten pieces on',
      outOfPocket: true,
      cost: { kind: 'formula', formula: 'IF(pieces >= 10; blankPrice * 3; 0)' },
    };
    const input = plainJob({
      sizes: [
        { quantity: 5, blank: 0.05 },
        { quantity: 5, blank: 20 },
      ],
      freight: 50,
      ownRows: [surcharge],
    });
    // At six the freight is 8.33 a piece, at ten 5.00: less for the cheap blank, more with 60.00 for the dear one.
    const cells = tableOf(withBreaks(input, [6, 12])).filter(({ from }) => from === 6);
    expect(cells.map(({ size, pricedAt }) => [size, pricedAt])).toEqual([
      ['size 1', 6],
      ['size 2', 10],
    ]);
  });
});

describe('the price to write', () => {
  const one = (taxMode: 'added' | 'inside', priceStep: number) =>
    tableOf(
      withBreaks(
        plainJob({
          sizes: [{ quantity: 1, blank: 10.01 }],
          channel: { taxMode, tax: fixedRate(0.2, 'share') },
        }),
        [1],
        priceStep,
      ),
    )[0];

  it.each([
    // 10.01 is lifted to the step; with tax inside it is 12.012 first.
    ['added', 0.01, 1001],
    ['added', 0.5, 1050],
    ['added', 5, 1500],
    ['inside', 0.01, 1202],
    ['inside', 1, 1300],
  ] as const)('with tax %s on steps of %d is %d', (taxMode, step, price) => {
    expect(one(taxMode, step)?.price).toBe(price);
  });

  it('leaves its target as it is', () => {
    expect(one('inside', 1)?.target).toBeCloseTo(10.01, 12);
    // 13 ÷ 1.2 − 10.01 of 13 ÷ 1.2.
    expect(one('inside', 1)?.margin).toBeCloseTo(1 - 10.01 / (13 / 1.2), 12);
  });

  it('is the same whichever price was asked in the job', () => {
    const asked = (askedPrice: number | null) =>
      tableOf({
        ...club,
        job: { ...club.job, lines: club.job.lines.map((line) => ({ ...line, askedPrice })) },
      });
    expect(asked(5)).toEqual(asked(null));
  });
});
