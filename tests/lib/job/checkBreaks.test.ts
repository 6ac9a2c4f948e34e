import { describe, expect, it } from 'vitest';
import { checkBreaks } from '@/lib/job/checkBreaks';
import { priceTable } from '@/lib/price/priceTable';
import { breakEnds } from '@/lib/studies/breaks/breakEnds';
import type { MinorUnits } from '@/shared/money';
import { club, clubWith } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';

describe('checkBreaks', () => {
  it.each([
    [[1, 6, 12], []],
    [[1], []],
    [[], [{ kind: 'noBreaks' }]],
    [[1, 12, 6], [{ kind: 'outOfOrder', from: 6, after: 12 }]],
    [[1, 6, 6], [{ kind: 'doubled', from: 6 }]],
    [[1, 2.5], [{ kind: 'notWhole', from: 2.5 }]],
    [[6, 12], [{ kind: 'beginsLate', from: 6 }]],
  ])('says of %j %j', (starts, problems) => {
    expect(checkBreaks(starts)).toEqual(problems);
  });

  it('tells of breaks that the price table puts in order by itself', () => {
    const table = (breaks: readonly number[]) =>
      priceTable(costed(clubWith({ 'workshop.policy.breaks': breaks })), grid);
    expect(table([24, 1, 24, 12])).toEqual(table([1, 12, 24]));
  });
});

describe('breakEnds', () => {
  it('shows the margin at both ends of a break, the worst of which is the table’s own', () => {
    const job = costed(club());
    const table = priceTable(job, grid);
    const ends = breakEnds(job, grid, table, 0 as MinorUnits);
    expect(ends).toHaveLength(table.length);
    table.forEach(({ margin, from, to, pricedAt }, index) => {
      const end = ends[index];
      if (from === pricedAt) expect(end?.marginAtFirst).toBeCloseTo(margin, 12);
      if (to === null) expect(end?.marginAtLast).toBeNull();
      else expect(end?.marginAtLast).toBeGreaterThanOrEqual(margin - 1e-12);
    });
  });
});
