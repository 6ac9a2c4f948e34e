import { describe, expect, it } from 'vitest';
import { caseEvaluator } from '@/lib/price/caseEvaluator';
import { inversions } from '@/lib/price/list/inversions';
import { judgedJob } from '@/lib/price/list/judgedJob';
import { type Selling, sellingTotal } from '@/lib/price/list/selling';
import { priceLines } from '@/lib/price/priceTable';
import { listInversions } from '@/lib/studies/breaks/listInversions';
import { nextPieceFloor } from '@/lib/studies/breaks/nextPieceFloor';
import { remedies } from '@/lib/studies/breaks/remedies';
import { sellingEffects } from '@/lib/studies/breaks/sellingEffects';
import { shiftBreaks } from '@/lib/studies/breaks/shiftBreaks';
import { softenSteps } from '@/lib/studies/breaks/softenSteps';
import { thinSteps } from '@/lib/studies/breaks/thinSteps';
import type { MinorUnits } from '@/shared/money';
import { club, clubWith } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';
import { exampleList, listOfPairs } from './listFixture';

const list = exampleList();
const tariff = { currency: 'USD', start: 13_200 as MinorUnits, each: 1250 as MinorUnits };
const paid = (selling: Selling, quantities: readonly number[]) =>
  quantities.map((n) => (sellingTotal(selling, n) ?? 0) / 100);

describe('the remedies of a price list', () => {
  it('cap: no order pays more than a larger one', () => {
    expect(paid({ kind: 'capped', list }, [10, 11, 12, 21, 22, 23, 24, 44, 45, 47, 48])).toEqual([
      230, 240, 240, 420, 432, 432, 432, 792, 792, 792, 792,
    ]);
  });

  it('slab: a new price holds for the pieces beyond the break only', () => {
    // 12: 5 at 26, 6 at 23, 1 at 20.
    expect(paid({ kind: 'slab', list }, [1, 5, 6, 12])).toEqual([26, 130, 153, 288]);
  });

  it('set-up apart: so much to start, so much a piece', () => {
    expect(paid({ kind: 'setUpApart', tariff }, [1, 37])).toEqual([144.5, 594.5]);
  });

  it('softening lifts each price to what a clean edge needs, at the maker’s ending', () => {
    // 12 needs 23 × 11 ÷ 12 = 21.09, written 21.50; 24 then 21.50 × 23 ÷ 24 = 20.61, written 21.00; 48 needs 20.57.
    expect(softenSteps(list, 0.5).breaks.map(({ from, each }) => [from, each])).toEqual([
      [1, 2600],
      [6, 2300],
      [12, 2150],
      [24, 2100],
      [48, 2100],
    ]);
  });

  it('shifting keeps the prices and begins them where the edge is clean', () => {
    // 23 ÷ (23 − 20) = 7.67, 20 ÷ 2 = 10, 18 ÷ 1.5 = 12.
    expect(shiftBreaks(list).breaks.map(({ from, each }) => [from, each])).toEqual([
      [1, 2600],
      [6, 2300],
      [7, 2000],
      [10, 1800],
      [12, 1650],
    ]);
  });

  it('shifting lets a break that falls on the one before take its place', () => {
    const steep = listOfPairs([
      [1, 10],
      [3, 9],
      [5, 1],
    ]);
    expect(shiftBreaks(steep).breaks).toEqual([{ from: 1, each: 100 }]);
  });

  it('are told in a fixed order, and every list they make is clean', () => {
    const told = remedies(list, tariff, 0.5);
    expect(told.map(({ kind }) => kind)).toEqual(['capped', 'setUpApart', 'slab', 'softened', 'shifted']);
    for (const remedy of told)
      if ('list' in remedy && remedy.list !== list) expect(inversions(remedy.list)).toEqual([]);
  });
});

describe('sellingEffects', () => {
  const job = costed(club());
  const [line] = job.laidOut.job.lines;
  const size = line?.sizes[0];
  if (line === undefined || size === undefined) throw new Error('the example has no sizes');
  const evaluate = caseEvaluator(judgedJob(job, line), line, grid);

  it('shows what buyer and maker get before and after', () => {
    const [eleven, twelve] = sellingEffects(
      { kind: 'asListed', list },
      { kind: 'capped', list },
      [11, 12],
      'USD',
      [size],
      evaluate,
    );
    expect(eleven).toMatchObject({ n: 11, before: 25_300, after: 24_000 });
    // Thirteen dollars less, of which 1.5515 % were fees.
    expect((eleven?.profitBefore ?? 0) - (eleven?.profitAfter ?? 0)).toBeCloseTo(13 * (1 - 0.015515), 9);
    expect(eleven?.marginAfter ?? 1).toBeLessThan(eleven?.marginBefore ?? 0);
    expect(twelve?.marginAfter).toBe(twelve?.marginBefore);
  });

  it('warns of a next piece that does not pay for itself, and says where that is on purpose', () => {
    const floor = nextPieceFloor(job.sheet, 0);
    // Cost of one more over 1 − 0.015515.
    expect(floor).toBeCloseTo((job.sheet.cases[0]?.incrementalCost ?? 0) / 0.984485, 9);
    const thin = thinSteps({ kind: 'capped', list }, floor, 48, 'USD');
    expect(thin.find(({ n }) => n === 12)).toEqual({ n: 12, paid: 0, onPurpose: true });
    expect(thinSteps({ kind: 'asListed', list }, floor, 48, 'USD')).toEqual(
      [
        { n: 6, paid: 800, onPurpose: false },
        { n: 12, paid: -1300, onPurpose: false },
        { n: 24, paid: -2800, onPurpose: false },
        { n: 48, paid: -5400, onPurpose: false },
      ].filter(({ paid: next }) => next / 100 < floor),
    );
    expect(thinSteps({ kind: 'slab', list }, floor, 48, 'USD')).toEqual([]);
  });
});

describe('the lists of a job', () => {
  const { lists } = priceLines(
    costed(clubWith({ 'job.lines.0.selling': 'asListed', 'workshop.policy.breaks': [1, 6, 12, 24, 48] })),
    grid,
  );

  it('tell the stretches of sizes that share them together, where they are sold as they stand', () => {
    const told = listInversions(lists, 'USD');
    // 34.50 each up to five pieces' 144.50: two of them already cost more than six at 34.50.
    expect(told[0]).toMatchObject({ lineId: 'shirts', sizes: ['S', 'M', 'L', 'XL'], from: 2, to: 5 });
    expect(new Set(told.flatMap(({ sizes }) => sizes))).toContain('3XL');
  });

  it('have none under any other rule', () => {
    for (const rule of ['capped', 'setUpApart', 'onePrice', 'slab'] as const)
      expect(
        listInversions(
          lists.map((one) => ({ ...one, rule })),
          'USD',
        ),
      ).toEqual([]);
  });
});
