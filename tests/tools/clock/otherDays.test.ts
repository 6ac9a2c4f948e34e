import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { allMoments } from './moments.mjs';
import { runAt } from './otherDays.mjs';
import { sameEverywhere } from './sameEverywhere.mjs';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const early = { clock: '2026-11-25T00:15', zone: 'UTC' };
const late = { clock: '2026-11-26T23:45', zone: 'Pacific/Auckland' };

describe('running the tests on other days', () => {
  // The runs name their moments, which is theirs to do.
  beforeEach(() => void vi.mocked(console.log).mockImplementation(() => undefined));
  afterEach(() => void vi.mocked(console.log).mockClear());

  test('finds a test that fails on Thursdays, and names the day', { timeout: 120_000 }, async () => {
    const planted = { config: 'tests/tools/clock/planted/vitest.config.ts', files: [] };
    const count = await runAt(root, [early, late], planted);
    expect(count).toMatchObject({ passed: 1, failed: 1 });
    expect(count.why).toMatch(/^2026-11-26T23:45 Pacific\/Auckland: 0 of 1 passed/);
  });

  test('covers a fortnight, a leap day and the end of a year in each of three zones', () => {
    const zones = ['UTC', 'America/Los_Angeles', 'Pacific/Auckland'];
    expect([...new Set(allMoments.map(({ zone }) => zone))]).toEqual(zones);
    for (const one of zones) {
      const days = allMoments.filter(({ zone }) => zone === one).map(({ clock }) => clock.slice(0, 10));
      expect(days.slice(0, 14)).toEqual(
        [23, 24, 25, 26, 27, 28, 29, 30]
          .map((day) => `2026-11-${day}`)
          .concat([1, 2, 3, 4, 5, 6].map((day) => `2026-12-0${day}`)),
      );
      expect(days).toEqual(expect.arrayContaining(['2028-02-29', '2026-12-31', '2027-03-14', '2027-04-04']));
    }
  });
});

describe('the results of several days', () => {
  const run = (moment: typeof early, passed: number, failed = 0) => ({ moment, count: { passed, failed } });

  test('are added up where all are the same', () => {
    expect(sameEverywhere([run(early, 3), run(late, 3)])).toEqual({ passed: 6, failed: 0 });
  });

  test('are a failure where one day passes fewer without failing any', () => {
    expect(sameEverywhere([run(early, 3), run(late, 2)])).toMatchObject({ passed: 5, failed: 1 });
  });
});
