import { expect, it } from 'vitest';
import { finishedAtHome } from '@/lib/stock/finishedAtHome';
import type { Pile } from '@/lib/stock/foldStock';

const pile = (to: Partial<Pile>): Pile => ({
  item: { kind: 'finished', jobId: 'fair', lineId: 'fern', size: 'M' },
  place: { kind: 'home' },
  grade: 'first',
  quantity: 4,
  lots: [],
  counted: null,
  ...to,
});

it('finds finished pieces of first grade at home, and knows that there is none where none is left', () => {
  const found = finishedAtHome([
    pile({}),
    pile({ item: { kind: 'finished', jobId: 'fair', lineId: 'otter', size: 'M' }, quantity: 0 }),
    pile({ grade: 'second' }),
    pile({ place: { kind: 'van' } }),
    pile({ item: { kind: 'blank', blankId: 'white', size: 'M', lot: null } }),
  ]);
  expect(found).toEqual([
    { jobId: 'fair', lineId: 'fern', size: 'M', pieces: 4 },
    { jobId: 'fair', lineId: 'otter', size: 'M', pieces: 0 },
  ]);
});
