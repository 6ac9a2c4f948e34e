// @vitest-environment jsdom
import { act, cleanup, renderHook } from '@testing-library/react';
import { startTransition } from 'react';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { LaidOutAnswer } from '@/app/_pricing/laidOutAnswers';
import { usePricedJob } from '@/app/_pricing/usePricedJob';
import { priceJob } from '@/lib/costing/priceJob';
import { aPicture } from '@/tests/fixtures/aPicture';
import { grid } from '@/tests/fixtures/costed';
import { sharedJob } from '@/tests/fixtures/sharedJob';

type Listener = (answered: { kind: 'answered'; answer: LaidOutAnswer; isLast: boolean }) => void;

const told: Listener[] = [];
vi.mock('@/app/_pricing/priceService', () => ({
  startPriceService: () => ({
    ask: (_: string, __: unknown, listener: Listener) => told.push(listener),
    leave: () => undefined,
    stop: () => undefined,
  }),
}));

vi.mock('react', async (original) => {
  const react = await original<typeof import('react')>();
  return { ...react, startTransition: vi.fn(react.startTransition) };
});

beforeEach(() => {
  told.splice(0);
  vi.mocked(startTransition).mockClear();
});
afterEach(cleanup);

const tell = (answer: LaidOutAnswer, isLast: boolean) =>
  act(() => told.at(-1)?.({ kind: 'answered', answer, isLast }));

const input = sharedJob();
const answerWith = (sheets: number): LaidOutAnswer => ({
  answer: priceJob(input, grid),
  layouts: {},
  shared: { spared: { sheets, rollMm: null }, drawn: [] },
});

it('a better answer takes the place of the first, with the layouts it was made by, and the end of the search changes no figure', () => {
  const { result } = renderHook(() => usePricedJob(input));
  const [first, better] = [answerWith(0), answerWith(1)];
  tell(first, false);
  const { lastPriced: early } = result.current;
  expect(early?.input.layouts).toBe(first.layouts);
  expect(early?.shared).toEqual({ spared: { sheets: 0, rollMm: null }, drawn: [], isLooking: true });
  tell(better, false);
  const { lastPriced: later } = result.current;
  expect(later?.answer).toBe(better.answer);
  expect(later?.input.layouts).toBe(better.layouts);
  tell(better, true);
  // The same documents: no study is asked again.
  expect(result.current.lastPriced?.input).toBe(later?.input);
  expect(result.current.lastPriced?.shared).toEqual({
    spared: { sheets: 1, rollMm: null },
    drawn: [],
    isLooking: false,
  });
});

it('what is typed is followed at once, and the figures of another picture are drawn between the keys', () => {
  const { result, rerender } = renderHook((now) => usePricedJob(now), { initialProps: input });
  const drawnBetweenKeys = () => vi.mocked(startTransition).mock.calls.length;
  tell(answerWith(0), true);
  expect(drawnBetweenKeys()).toBe(1);
  const typed = { ...input, job: { ...input.job, name: 'Twenty caps' } };
  rerender(typed);
  tell(answerWith(0), true);
  expect(drawnBetweenKeys()).toBe(1);
  const artworks = Object.fromEntries(
    Object.entries(input.artworks).map(([id, artwork]) => [id, { ...artwork, picture: aPicture() }]),
  );
  rerender({ ...typed, artworks });
  const ofPicture = answerWith(1);
  tell(ofPicture, true);
  expect(drawnBetweenKeys()).toBe(2);
  expect(result.current.answer).toBe(ofPicture.answer);
});
