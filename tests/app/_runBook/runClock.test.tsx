// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { clockMemory } from '@/app/_runBook/clockMemory';
import { RunClock } from '@/app/_runBook/RunClock';

const MINUTE_MS = 60_000;
const note = vi.fn(() => ({ state: 'shown' as const, edits: [] }));
const clock = () => render(<RunClock workspace={{ note: note as never }} runId="run" locale="en-US" />);
const press = (name: string) => userEvent.click(screen.getByRole('button', { name }));
const noted = () => (note.mock.calls as unknown as [string, { body: object }[]][])[0]?.[1][0]?.body;
const begun = (minutesAgo: number) =>
  clockMemory.remember('run', { element: 'finish', startedAt: Date.now() - minutesAgo * MINUTE_MS });

beforeEach(() => {
  localStorage.clear();
  sessionStorage.clear();
  note.mockClear();
});
afterEach(cleanup);

describe('the clock of a run', () => {
  it('runs on through a reload, and notes minutes of its element when it is stopped', async () => {
    const { unmount } = clock();
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Work' }), 'Finishing');
    await press('Start the clock');
    expect(clockMemory.recall('run')?.element).toBe('finish');
    unmount();
    begun(72);
    clock();
    expect(screen.getByText(/^Finishing since .*, 1 h 12 min$/)).toBeVisible();
    await press('Stop and note it');
    expect(noted()).toMatchObject({
      minutes: 72,
      element: 'finish',
      from: 'clock',
      for: { kind: 'run', id: 'run' },
    });
    expect(clockMemory.recall('run')).toBeNull();
    expect(screen.getByRole('button', { name: 'Start the clock' })).toBeVisible();
  });

  it('asks about a whole night and notes what is typed then', async () => {
    begun(9 * 60);
    clock();
    await press('Stop and note it');
    expect(note).not.toHaveBeenCalled();
    expect(screen.getByText(/^The clock ran for 9 h\./)).toBeVisible();
    const time = screen.getByRole('textbox', { name: /^It took/ });
    await userEvent.clear(time);
    await userEvent.type(time, '55');
    await userEvent.tab();
    await press('Note it');
    expect(noted()).toMatchObject({ minutes: 55, from: 'clock' });
  });

  it('asks still after a reload, with what was typed, and asks the next clock anew', async () => {
    begun(9 * 60);
    const { unmount } = clock();
    await press('Stop and note it');
    const time = () => screen.getByRole('textbox', { name: /^It took/ });
    await userEvent.clear(time());
    await userEvent.type(time(), '55');
    await userEvent.tab();
    unmount();
    clock();
    expect(time()).toHaveValue('55');
    await press('Note it');
    expect(noted()).toMatchObject({ minutes: 55, from: 'clock' });
    expect(Object.keys(sessionStorage)).toEqual([]);
    await press('Start the clock');
    expect(screen.getByRole('button', { name: 'Stop and note it' })).toBeVisible();
  });

  it('asks too where the clock of the device went back, or ran for more than a day', async () => {
    begun(-30);
    const { unmount } = clock();
    await press('Stop and note it');
    expect(screen.getByText(/was set back meanwhile/)).toBeVisible();
    expect(screen.getByRole('button', { name: 'Note it' })).toHaveAttribute('aria-disabled', 'true');
    unmount();
    begun(3000);
    clock();
    await press('Stop and note it');
    expect(screen.getByRole('textbox', { name: /^It took/ })).toHaveValue('');
  });

  it('notes nothing of no time, and nothing that is thrown away', async () => {
    begun(0);
    const { unmount } = clock();
    await press('Stop and note it');
    expect(screen.getByRole('status')).toHaveTextContent('The clock ran for no time, so nothing was noted.');
    unmount();
    begun(20);
    clock();
    await press('Throw it away');
    expect(note).not.toHaveBeenCalled();
    expect(clockMemory.recall('run')).toBeNull();
  });
});
