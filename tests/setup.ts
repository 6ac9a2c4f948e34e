import { afterEach, beforeEach, expect, vi } from 'vitest';
import { patience } from '@/tests/tools/cases';
import { startClock } from '@/tests/tools/clock/startClock';

startClock();
// A test of its own time says so through `patience`, too.
vi.setConfig({ testTimeout: patience(120_000) });

const channels = ['log', 'info', 'warn', 'error', 'debug'] as const;

// A screen is waited for as long as a slow machine needs; where there is a page, its library is loaded anyway.
if (typeof document !== 'undefined') {
  const { configure } = await import('@testing-library/react');
  configure({ asyncUtilTimeout: 60_000 });
}

/** Any word on the console fails the test that caused it. */
beforeEach(() => {
  for (const channel of channels) vi.spyOn(console, channel);
});

afterEach(() => {
  for (const channel of channels) {
    const spy = vi.mocked(console[channel]);
    expect(spy.mock.calls, `console.${channel} was called`).toEqual([]);
    spy.mockRestore();
  }
});
