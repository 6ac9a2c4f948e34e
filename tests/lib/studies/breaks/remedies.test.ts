import { describe, expect, it } from 'vitest';
import { caseEvaluator } from '@/lib/price/caseEvaluator';
import { inversions } from '@/lib/price/list/inversions';
import { type Selling, sellingTotal } from '@/lib/price/list/selling';
import { priceTable } from '@/lib/price/priceTable';
import { nextPieceFloor } from '@/lib/studies/breaks/nextPieceFloor';
import { remedies } from '@/lib/studies/breaks/remedies';
import { sellingEffects } from '@/lib/studies/breaks/sellingEffects';
import { shiftBreaks } from '@/lib/studies/breaks/shiftBreaks';
import { softenSteps } from '@/lib/studies/breaks/softenSteps';
import { tableBreakLists, tableInversions } from '@/lib/studies/breaks/tableBreakLists';
import { thinSteps } from '@/lib/studies/breaks/thinSteps';
import { writtenTariff } from '@/lib/studies/breaks/writtenTariff';
import { batchTariffs } from '@/lib/studies/curve/batchTariffs';
import { club } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';
import { exampleList, listOfPairs } from './listFixture';

const list = exampleList();
const paid = (selling: Selling, quantities: readonly number[]) =>
  quantities.map((n) => (sellingTotal(selling, n) ?? 0) / 100);

describe('the remedies of a price list', () => {
  it('cap: no order pays more than a larger one', () => {
    expect(paid({ kind: 'cap', list }, [10, 11, 12, 21, 22, 23, 24, 44, 45, 47, 48])).toEqual([
      230, 240, 240, 420, 432, 432, 432, 792, 792, 792, 792,
    ]);
  });

  it('slab: a new price holds for the pieces beyond the break only', () => {
    // 12: 5 at 26, 6 at 23, 1 at 20.
    expect(paid({ kind: 'slab', list }, [1, 5, 6, 12])).toEqual([26, 130, 153, 288]);
  });

  it('tariff: so much to start, so much a piece', () => {
    const tariff = writtenTariff({ start: 131.741, each: 12.7, largestError: 0, largestErrorAt: 1 }, 'USD');
    expect(tariff).toEqual({ currency: 'USD', start: 13_175, each: 1270 });
    if (tariff !== null) expect(paid({ kind: 'tariff', tariff }, [1, 37])).toEqual([144.45, 601.65]);
  });

  it('tariff: a line that starts below nothing is no way to sell', () => {
    expect(writtenTariff({ start: -3, each: 12, largestError: 0, largestErrorAt: 1 }, 'USD')).toBeNull();
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
    const tariff = writtenTariff({ start: 131.741, each: 12.7, largestError: 0, largestErrorAt: 1 }, 'USD');
    const told = remedies(list, tariff, 0.5);
    expect(told.map(({ kind }) => kind)).toEqual(['cap', 'slab', 'tariff', 'softened', 'shifted']);
    for (const remedy of told)
      if ('list' in remedy && remedy.list !== list) expect(inversions(remedy.list)).toEqual([]);
    expect(remedies(list, null, 0.5)).toHaveLength(4);
  });
});

describe('sellingEffects', () => {
  const job = costed(club());
  const [line] = job.laidOut.job.lines;
  const size = line?.sizes[0];
  if (line === undefined || size === undefined) throw new Error('the example has no sizes');
  const evaluate = caseEvaluator(job, line, grid);

  it('shows what buyer and maker get before and after', () => {
    const [eleven, twelve] = sellingEffects(
      { kind: 'asListed', list },
      { kind: 'cap', list },
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
    const thin = thinSteps({ kind: 'cap', list }, floor, 48, 'USD');
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

  it('is fitted to the job: the tariff keeps near the target margin from a dozen on', () => {
    const tariff = writtenTariff(
      batchTariffs(job, grid)?.target ?? { start: 0, each: 0, largestError: 0, largestErrorAt: 1 },
      'USD',
    );
    if (tariff === null) throw new Error('no tariff');
    const remedy = { kind: 'tariff', tariff } as const;
    // The tariff is that of the mix; an S shirt costs 0.24 less than the mean one and so earns a little more.
    for (const { marginAfter } of sellingEffects(remedy, remedy, [12, 24, 48, 100], 'USD', [size], evaluate))
      expect(Math.abs(marginAfter - 0.3)).toBeLessThan(0.02);
  });
});

describe('the lists of a price table', () => {
  const job = costed(club());
  const table = priceTable(job, grid);

  it('are one for each size of each line', () => {
    expect(tableBreakLists(table, 'USD').map(({ size }) => size)).toEqual([
      'S',
      'M',
      'L',
      'XL',
      '2XL',
      '3XL',
    ]);
  });

  it('tell the stretches of sizes that share them together', () => {
    const told = tableInversions(table, 'USD');
    expect(told[0]).toMatchObject({ lineId: 'shirts', sizes: ['S', 'M', 'L', 'XL'], from: 2, to: 5 });
    expect(new Set(told.flatMap(({ sizes }) => sizes))).toContain('3XL');
  });
});
