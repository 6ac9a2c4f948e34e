// @vitest-environment jsdom
import { renderHook } from '@testing-library/react';
import { expect, it } from 'vitest';
import { useInTurns } from '@/app/_year/useInTurns';
import { eventually } from '@/tests/tools/eventually';

function* counting(told: number[], upTo: number): Generator<undefined, number, undefined> {
  for (let at = 1; at <= upTo; at++) {
    told.push(at);
    yield;
  }
  return upTo;
}

it('reckons few at once', () => {
  const told: number[] = [];
  const begin = () => counting(told, 3);
  const { result } = renderHook(() => useInTurns(begin, false));
  expect(result.current).toBe(3);
});

it('reckons many one stop a turn, and keeps what it had until the newer is done', async () => {
  const told: number[] = [];
  const first = () => counting(told, 3);
  const { result, rerender, unmount } = renderHook(({ begin }) => useInTurns(begin, true), {
    initialProps: { begin: first },
  });
  expect(result.current).toBeNull();
  expect(told).toEqual([]);
  await eventually(() => expect(result.current).toBe(3));
  const later: number[] = [];
  rerender({ begin: () => counting(later, 5) });
  expect(result.current).toBe(3);
  unmount();
  const seen = later.length;
  await new Promise((resolve) => setTimeout(resolve, 20));
  // Whoever left asks for nothing more.
  expect(later.length).toBe(seen);
});
