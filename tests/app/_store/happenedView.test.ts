import { expect, it } from 'vitest';
import { happenedViewer } from '@/app/_store/happenedView';
import { emptyTabState, type TabState } from '@/app/_store/tabState';
import { type EntryBodies, entryKinds } from '@/lib/kinds/entryKinds';
import { paperKinds } from '@/lib/kinds/paperKinds';
import type { Entry } from '@/shared/schemas/happened';

const refill = (count: number): Entry => ({
  id: `phone000-${count}`,
  kind: 'inkRefill',
  version: 1,
  device: 'phone000',
  count,
  at: 0,
  body: { day: '2026-11-03', mL: count },
});
const stateOf = (...counts: readonly number[]): TabState => ({
  ...emptyTabState,
  entries: new Map(counts.map((count) => [`phone000-${count}`, refill(count)])),
});

it('what is seen follows the entries that are held, also where others take their place', () => {
  const view = happenedViewer<Record<never, never>, EntryBodies>({ entryKinds, paperKinds });
  const counts = (state: TabState) => view(state).entries.inkRefill.map(({ count }) => count);
  expect(counts(stateOf(1, 3))).toEqual([1, 3]);
  expect(counts(stateOf(1, 2, 3))).toEqual([1, 2, 3]);
  expect(counts(stateOf(2))).toEqual([2]);
  expect(counts(stateOf())).toEqual([]);
});
