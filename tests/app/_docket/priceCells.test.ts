import { describe, expect, it } from 'vitest';
import { askTablePrices } from '@/app/_docket/prices/askTablePrices';
import { priceGrid } from '@/app/_docket/prices/priceGrid';
import { breakWords } from '@/app/_words/docket/breakWords';
import { sizesWords } from '@/app/_words/docket/sizesWords';
import { priceTable } from '@/lib/price/priceTable';
import { club, clubWith } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';

const table = priceTable(costed(clubWith({ 'workshop.policy.breaks': [1, 6, 12, 24, 48] })), grid);

describe('priceGrid', () => {
  const { breaks, groups } = priceGrid(table, 'shirts');

  it('puts sizes that do not differ into one row', () => {
    expect(groups.map(({ sizes }) => sizesWords(sizes))).toEqual(['S to XL', '2XL', '3XL']);
  });

  it('has one cell for each break in each row', () => {
    expect(breaks.map(breakWords)).toEqual(['1 to 5', '6 to 11', '12 to 23', '24 to 47', '48 and up']);
    for (const { cells } of groups) expect(cells.map(({ from }) => from)).toEqual([1, 6, 12, 24, 48]);
  });

  it('is empty for a line that is not priced', () => {
    expect(priceGrid(table, 'gone')).toEqual({ breaks: [], groups: [] });
  });
});

describe('breakWords', () => {
  it('names a break of one quantity by that alone', () => {
    expect(breakWords({ from: 1, to: 1 })).toBe('1');
  });
});

describe('sizesWords', () => {
  it.each([
    [['one size'], 'one size'],
    [['S', 'M'], 'S and M'],
    [['S', 'M', 'L'], 'S to L'],
  ])('%s', (sizes, words) => expect(sizesWords(sizes)).toBe(words));
});

describe('askTablePrices', () => {
  it('asks the first size’s price and what the others add, all from one break', () => {
    const { job } = club();
    const asked = askTablePrices(job, table, { lineId: 'shirts', from: 48 }, 'USD').lines[0];
    expect(asked?.askedPrice).toBe(15.5);
    expect(asked?.upCharges).toEqual([
      { size: '2XL', amount: 2.5 },
      { size: '3XL', amount: 4 },
    ]);
  });

  it('keeps the up-charge of a size that the table does not price', () => {
    const { job } = club();
    const [line] = job.lines;
    if (line === undefined) throw new Error('the job has no line');
    const upCharges = [...line.upCharges, { size: '4XL', amount: 5 }];
    const asked = askTablePrices(
      { ...job, lines: [{ ...line, upCharges }] },
      table,
      { lineId: 'shirts', from: 24 },
      'USD',
    );
    expect(asked.lines[0]?.upCharges[0]).toEqual({ size: '4XL', amount: 5 });
  });
});
