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

it('what counts stays in its place when something else that told how late the clock was is taken back', () => {
  const view = happenedViewer<Record<never, never>, EntryBodies>({ entryKinds, paperKinds });
  const far = { ...refill(1), at: 9000 };
  const late = { ...refill(2), at: 10 };
  const other = { ...refill(1), id: 'laptop00-1', device: 'laptop00', at: 50 };
  const back = { ...refill(3), kind: 'takeBack', at: 11, body: { entryId: far.id } };
  const shown = (...entries: readonly Entry[]) =>
    view({ ...emptyTabState, entries: new Map(entries.map((entry) => [entry.id, entry])) }).happened.map(
      ({ id }) => id,
    );
  expect(shown(far, late, other)).toEqual(['laptop00-1', 'phone000-1', 'phone000-2']);
  expect(shown(far, late, other, back)).toEqual(['laptop00-1', 'phone000-2']);
});
