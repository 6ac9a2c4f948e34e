// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, expect, it, vi } from 'vitest';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';

afterEach(cleanup);

const shown = (failure: WorkerFailure | null) => (
  <AnswerMissing what="The levers could not be tried out" failure={failure} />
);

it('says what is missing where a worker could not start, and asks again by its button', () => {
  const again = vi.fn();
  render(shown({ kind: 'notStarted', why: 'its script did not come', again }));
  expect(screen.getByRole('alert')).toHaveTextContent(
    /^The levers could not be tried out: the part of the app that does it could not be fetched/,
  );
  fireEvent.click(screen.getByRole('button', { name: 'Try again' }));
  expect(again).toHaveBeenCalledOnce();
  expect(screen.getByRole('alert')).toHaveTextContent(/Trying again/);
});

it('offers the page anew, once, where the server has a newer version', () => {
  sessionStorage.clear();
  const failure: WorkerFailure = { kind: 'gone', why: '', again: () => undefined };
  const { unmount } = render(shown(failure));
  expect(screen.getByRole('alert')).toHaveTextContent(
    /^The levers could not be tried out: the server has a newer version.*Open the page anew to get it/,
  );
  fireEvent.click(screen.getByRole('button', { name: 'Open it anew' }));
  unmount();
  render(shown(failure));
  expect(screen.getByRole('alert')).toHaveTextContent(/did not help/);
  expect(screen.queryByRole('button')).toBeNull();
});

it('keeps its words while the same failure comes again by itself, so that nothing is read out twice', () => {
  const failure = (): WorkerFailure => ({ kind: 'notStarted', why: '', again: () => undefined });
  const { rerender } = render(shown(failure()));
  const words = screen.getByText(/could not be fetched/);
  rerender(shown(failure()));
  expect(screen.getByText(/could not be fetched/)).toBe(words);
});

it('says of a fault of the app what it was, with no button where the same would come of it', () => {
  render(shown({ kind: 'failed', why: 'RangeError: too deep', again: null }));
  expect(screen.getByRole('alert')).toHaveTextContent(/RangeError: too deep/);
  expect(screen.queryByRole('button')).toBeNull();
});

it('is not there while nothing is missing', () => {
  render(shown(null));
  expect(screen.queryByRole('alert')).toBeNull();
});
