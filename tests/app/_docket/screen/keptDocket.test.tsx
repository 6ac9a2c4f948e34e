// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, it, vi } from 'vitest';
import { useJob } from '@/app/_docket/common/useJob';
import { benchStore, clearBench } from '@/tests/app/_docket/bench';
import { layOut } from '@/tests/app/_docket/layOut';

vi.mock('@/app/_store/appDocuments', async () => {
  const { benchStore: appDocuments } = await import('@/tests/app/_docket/bench');
  return { appDocuments };
});
vi.mock('@/app/_pricing/priceService', async () => {
  const { benchPrices: prices } = await import('@/tests/app/_docket/bench');
  return { startPriceService: prices.start };
});
const head = vi.hoisted(() => ({ drawn: 0 }));
vi.mock('@/app/_docket/head/JobHead', () => ({
  JobHead: () => {
    head.drawn += 1;
    return <h1>{useJob().input.job.name}</h1>;
  },
}));

afterEach(() => {
  vi.useRealTimers();
  cleanup();
  clearBench();
});

it('a docket is drawn with what is typed, and not again while that is written', async () => {
  await layOut();
  // What is typed is written after a pause: here when the test says so.
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  const before = head.drawn;
  const pieces = screen.getByRole('textbox', { name: 'L' });
  await act(async () => fireEvent.change(pieces, { target: { value: '23' } }));
  const shown = head.drawn;
  expect(shown).toBeGreaterThan(before);
  expect(benchStore().getState().kept.state).toBe('keeping');
  const told = vi.fn();
  const stop = benchStore().subscribe(told);
  await act(() => benchStore().flush());
  stop();
  expect(benchStore().getState().kept.state).toBe('kept');
  // Written, and settled.
  expect(told.mock.calls.length).toBeGreaterThan(1);
  expect(head.drawn).toBe(shown);
});
