import { expect, it } from 'vitest';
import { goodsToSend } from '@/lib/stall/shops/goodsToSend';
import type { Pile } from '@/lib/stock/foldStock';
import type { Job } from '@/shared/schemas/job';
import type { StockGrade } from '@/shared/schemas/stock';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const job = (name: string, sizes: readonly string[], archivedOn: string | null) =>
  ({
    name,
    archivedOn,
    lines: [{ id: 'fern', name: 'Fern', quantities: sizes.map((size) => ({ size })) }],
  }) as Job;
const pile = (jobId: string, size: string, grade: StockGrade, quantity: number): Pile => ({
  ...{ item: { kind: 'finished', jobId, lineId: 'fern', size }, place: { kind: 'home' }, grade, quantity },
  ...{ lots: [], counted: null },
});

it('what can go to a shop is all that jobs in use make, and all else that lies finished at home', () => {
  const jobs = [
    { id: 'shirts', job: job('Shirts', ['S', 'M'], null) },
    { id: 'last-year', job: job('Last year', ['S', 'M'], TEST_DAY) },
  ];
  const piles = [
    pile('shirts', 'M', 'second', 1),
    pile('shirts', 'L', 'first', 2),
    pile('shirts', 'XL', 'first', 0),
    pile('last-year', 'M', 'first', 4),
    pile('gone', '', 'first', 1),
    { ...pile('shirts', '2XL', 'first', 5), place: { kind: 'van' } } as const,
  ];
  const told = goodsToSend(jobs, piles).map(({ job: name, line, sizes }) => [
    name,
    line,
    sizes.map(({ size, grades }) => [size, ...grades].join(' ')),
  ]);
  expect(told).toEqual([
    ['Shirts', 'Fern', ['S first', 'M first second', 'L first']],
    ['Last year', 'Fern', ['M first']],
    [null, null, [' first']],
  ]);
});
