// @vitest-environment jsdom
import { act, cleanup, renderHook } from '@testing-library/react';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { LaidOutAnswer } from '@/app/_pricing/laidOutAnswers';
import { usePricedJob } from '@/app/_pricing/usePricedJob';
import { priceJob } from '@/lib/costing/priceJob';
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

beforeEach(() => void told.splice(0));
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
