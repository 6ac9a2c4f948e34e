// @vitest-environment jsdom
import { act, cleanup, renderHook } from '@testing-library/react';
import { afterEach, expect, it, vi } from 'vitest';
import { useFormerThings } from '@/app/_documents/formerThings';
import { useWorkspace } from '@/app/_documents/useWorkspace';
import { benchStore, clearBench } from '@/tests/app/_docket/bench';

vi.mock('@/app/_store/appDocuments', async () => {
  const { benchStore: appDocuments } = await import('@/tests/app/_docket/bench');
  return { appDocuments };
});

afterEach(() => {
  cleanup();
  clearBench();
});

const changeJob = (to: Partial<{ name: string; customer: string }>) =>
  act(async () => {
    benchStore().actions.edit('Job', [
      { do: 'change', kind: 'job', id: 'club-order', to: (job) => ({ ...job, ...to }) },
    ]);
  });

it('what says names stays the same with every edit but one of a name', async () => {
  const { result } = renderHook(() => useFormerThings(useWorkspace()));
  await act(() => benchStore().open());
  const { nameOf } = result.current;
  expect(nameOf('job', 'club-order')).toBe('Ramblers Club shirts');
  expect(nameOf('job', 'never-was')).toBeNull();
  await changeJob({ customer: 'Somebody else' });
  expect(result.current.nameOf).toBe(nameOf);
  await changeJob({ name: 'Hikers' });
  expect(result.current.nameOf('job', 'club-order')).toBe('Hikers');
  await act(async () => {
    benchStore().actions.edit('Away', [{ do: 'delete', kind: 'job', id: 'club-order' }]);
  });
  expect(result.current.nameOf('job', 'club-order')).toBe('Hikers');
});
