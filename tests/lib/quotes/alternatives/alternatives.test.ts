import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alternativeOffers } from '@/lib/quotes/alternatives/alternativeOffers';
import { fewerOf } from '@/lib/quotes/alternatives/fewerPieces';
import { club, clubWith } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';
import { DAY } from '@/tests/fixtures/numbers';
import { plainInput, plainQuote } from '@/tests/lib/quotes/plainQuote';
import { asking, clubAlternatives, ready, refused } from '@/tests/lib/quotes/quoteTools';
import { cases, patience } from '@/tests/tools/cases';

const clubLine = { jobId: 'club-order', lineId: 'shirts' };
const pieces = (quantity: number, size: string | null = null) => ({
  alternatives: [{ id: 'other', kind: 'pieces', ...clubLine, quantity, size }],
});
const plainPieces = (quantity: number) => ({
  alternatives: [{ id: 'other', kind: 'pieces', jobId: 'club-order', lineId: 'line', quantity, size: null }],
});
const problemOf = (...asked: Parameters<typeof refused>) =>
  refused(...asked).map((one) => (one.kind === 'alternative' ? one.problem.kind : one.kind));

describe('more pieces', () => {
  it('cost what a piece of their size adds where the set-up is apart', () => {
    // 12.50, 15.00 and 16.50: one more 2XL and 3XL.
    const more = (size: string) => ready({ order: pieces(38, size) }).body.alternatives[0]?.sums.subtotal;
    expect([more('S'), more('2XL'), more('3XL')]).toEqual([72_400, 72_650, 72_800]);
  });

  it('are spread as the asked ones where no size is named, by largest remainder', () => {
    // 37 more are as many again: 32 at 12.50, four at 15.00, one at 16.50 are 476.50.
    const [twice] = ready({ order: pieces(74), input: clubWith({ 'job.wantedOn': null }) }).body.alternatives;
    expect(twice?.sums.subtotal).toBe(71_150 + 47_650);
    expect(twice?.sizes.map(({ quantity }) => quantity)).toEqual([8, 18, 22, 16, 8, 2]);
  });

  it('name what each of them costs where it is one price', () => {
    const says = (...of: Parameters<typeof pieces>) =>
      ready({ order: pieces(...of), input: clubWith({ 'job.wantedOn': null }) }).body.alternatives[0]?.says;
    expect(says(38, '2XL')).toBe('1 more in 2XL, 15.00 each');
    expect(says(38)).toBe('1 more, in sizes as ordered, 12.50 each');
    // As many again cost 12.50, 15.00 and 16.50.
    expect(says(74)).toBe('37 more, in sizes as ordered');
  });

  it('are not offered where there is no time for them', () => {
    expect(problemOf({ order: pieces(400) })).toEqual(['stopped']);
  });

  it('of a size that nobody makes are not offered', () => {
    expect(problemOf({ order: pieces(40, '9XL') })).toEqual(['gone']);
  });
});

describe('fewer pieces', () => {
  it('are split over the sizes by largest remainder', () => {
    // 24 of 37: 2.59, 5.84, 7.14, 5.19, 2.59, 0.65. Three are left after the wholes: M, 3XL, and S before 2XL.
    const sizes = [4, 9, 11, 8, 4, 1].map((quantity, at) => ({
      size: ['S', 'M', 'L', 'XL', '2XL', '3XL'][at] ?? '',
      quantity,
      each: 0 as never,
      total: 0 as never,
    }));
    expect(fewerOf({ sizes }, 24).map(({ quantity }) => quantity)).toEqual([3, 6, 7, 5, 2, 1]);
  });

  /* (30 + 6 n) ÷ 0.6: ten need 15.00 each; one to nine stand at 60.00 and pay the 150.00 of ten at most. */
  const job = { sizes: [{ quantity: 10, blank: 6 }], freight: 30, targetMargin: 0.4 };

  it('cost what the list asks of so few where that is more than the asked price', () => {
    const { alternatives } = plainQuote({ ...job, asked: 16, order: plainPieces(5) });
    // Five at 16.00 are 80.00; by the list they pay 150.00.
    expect(alternatives[0]?.sums.total).toBe(15_000);
  });

  it('stay at the asked price where that is more', () => {
    const { alternatives } = plainQuote({ ...job, asked: 40, order: plainPieces(5) });
    expect(alternatives[0]?.sums.total).toBe(20_000);
  });

  it('never cost more than all that was asked, which is told in a line of its own', () => {
    const { alternatives } = plainQuote({ ...job, asked: 14.5, order: plainPieces(5) });
    expect(alternatives[0]?.sums.total).toBe(14_500);
    expect(alternatives[0]?.priced.charges).toEqual([
      { what: 'Line: no more than for all that was asked', amount: -500 },
    ]);
  });

  it('never cost more in any order, discount and way of rounding tax', { timeout: patience(60_000) }, () => {
    fc.assert(
      fc.property(
        fc.record({
          quantities: fc.array(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 4 }),
          cents: fc.integer({ min: 700, max: 4000 }),
          left: fc.double({ min: 0.01, max: 0.99, noNaN: true }),
          share: fc.integer({ min: 0, max: 2500 }),
          off: fc.integer({ min: 0, max: 3000 }),
          rounding: fc.constantFrom(undefined, 'line' as const),
          mode: fc.constantFrom('added' as const, 'inside' as const),
        }),
        ({ quantities, cents, left, share, off, rounding, mode }) => {
          const asked = quantities.reduce((sum, one) => sum + one, 0);
          fc.pre(asked > 1);
          const quantity = Math.min(asked - 1, Math.max(1, Math.round(asked * left)));
          const quote = plainQuote({
            ...job,
            sizes: quantities.map((one) => ({ quantity: one, blank: 6 })),
            asked: cents / 100,
            tax: { mode, share: share / 10_000, ...(rounding === undefined ? {} : { rounding }) },
            order: {
              ...plainPieces(quantity),
              discount: { kind: 'share', share: off / 10_000, why: '' },
              underCostWhy: 'drawn at random',
            },
          });
          const [fewer] = quote.alternatives;
          expect(fewer?.sums.total).toBeLessThanOrEqual(quote.sums.total);
          const { priced, sums } = fewer ?? {};
          const before = [
            ...(priced?.lines ?? []).flatMap(({ sizes, start }) => [
              ...sizes.map(({ total }) => total),
              start,
            ]),
            ...(priced?.charges ?? []).map(({ amount }) => amount),
          ].reduce((sum, one) => sum + one, 0);
          expect(before - (priced?.discount?.amount ?? 0)).toBe(sums?.subtotal);
          expect(fewer?.sizes.reduce((sum, one) => sum + one.quantity, 0)).toBe(quantity);
          expect(quote.deposit + quote.balance).toBe(quote.sums.total);
        },
      ),
      cases(25),
    );
  });
});

describe('one print less', () => {
  const without = (placementId: string, each: number | null = null) => ({
    alternatives: [{ id: 'other', kind: 'without', ...clubLine, placementId, each }],
  });

  it('has the price that its maker typed, to which sizes add what they added', () => {
    // 32 at 15.00, four at 16.50, one at 17.50.
    const [back] = ready({ order: without('badge', 15) }).body.alternatives;
    expect(back?.sums.subtotal).toBe(48_000 + 6600 + 1750);
  });

  it('costs the asked price less what the charge of that print comes to', () => {
    // What the badge adds to the full cost, a piece, over what a target of 30 % and fees of 1.5515 % leave, on the
    // ending of 0.50.
    const backOnly = {
      ...club(),
      job: {
        ...club().job,
        lines: club().job.lines.map((line) => ({
          ...line,
          placements: line.placements.filter(({ id }) => id !== 'badge'),
        })),
      },
    };
    const adds =
      (costed(club()).sheet.fullCost - costed(backOnly).sheet.fullCost) / 37 / (1 - 0.3 - 0.015515);
    const [back] = ready({ order: without('badge') }).body.alternatives;
    expect(back?.sums.subtotal).toBe(71_150 - 37 * 50 * Math.ceil(adds / 0.5));
  });

  it('is not offered under what it costs without a reason, nor where nothing would be printed', () => {
    expect(problemOf({ order: without('badge', 2) })).toEqual(['underCost']);
    expect(problemOf({ order: without('no-such-print') })).toEqual(['gone']);
    // Blanks alone say nothing.
    expect(problemOf({ order: { ...without('badge', 2), underCostWhy: '  ' } })).toEqual(['underCost']);
    const why = { underCostWhy: 'They bring a second order in spring.' };
    expect(ready({ order: { ...without('badge', 2), ...why } }).body.alternatives).toHaveLength(1);
    const plain = {
      alternatives: [{ id: 'a', kind: 'without', jobId: 'club-order', lineId: 'line', placementId: 'print' }],
    };
    const input = plainInput({ sizes: [{ quantity: 3, blank: 1 }], asked: 10 });
    expect(problemOf({ input, day: DAY, order: plain })).toEqual(['onlyPrint']);
  });
});

describe('what could be offered beside', () => {
  it('is what uses up a begun sheet, fewer, and each print left out, with what each comes to', () => {
    const offers = alternativeOffers(asking(), grid);
    const forty = offers.find(
      ({ alternative }) => alternative.kind === 'pieces' && alternative.quantity === 40,
    );
    expect(forty?.sums).toEqual({ subtotal: 74_900, tax: 5243, total: 80_143 });
    // Three more shirts add 25.67 to the cost.
    expect(forty?.why).toMatchObject({ kind: 'usedUp', addedCost: expect.closeTo(25.67, 1) });
    // The next spot, 44, would take 25 + 10 + 10 + 178 × 44 / 37 = 257 min at the press: no Saturday of 240 holds them,
    // and a second one comes before the blanks can be here.
    expect(offers.map(({ why }) => why.kind)).toEqual(['usedUp', 'fewer', 'onePrintLess', 'onePrintLess']);
  });

  it('is nothing while the order itself cannot be quoted', () => {
    expect(alternativeOffers(asking({ jobs: [], order: { jobIds: [] } }), grid)).toEqual([]);
  });
});

it('an alternative of as many pieces is told, with the others made', () => {
  expect(problemOf({ order: { alternatives: [...pieces(37).alternatives, clubAlternatives[0]] } })).toEqual([
    'same',
  ]);
});
