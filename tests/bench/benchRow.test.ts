import { expect, test } from 'vitest';
import { lineOf, timeRow, withRatio } from './benchRow';

test('the ratio is median by median, not mean by mean', () => {
  // Medians 6 and 4; the means would be 37 and 5.
  const row = timeRow('edit', { figure: [100, 6, 5], yardstick: [4, 9, 2] }, 'the loop');
  expect(row).toMatchObject({ median: 6, p99: 100, yardstick: { what: 'the loop', median: 4 }, ratio: 1.5 });
});

test('of an even number of runs the lower of the two in the middle counts, on both sides', () => {
  const row = timeRow('edit', { figure: [8, 2, 4, 6], yardstick: [1, 2, 3, 4] }, 'the loop');
  expect(row).toMatchObject({ median: 4, yardstick: { median: 2 }, ratio: 2 });
});

test('there is no ratio to nothing, to zero or of what could not be laid out', () => {
  const row = { what: 'bins', unit: 'bins', median: 3, p99: null, yardstick: null } as const;
  expect(withRatio(row).ratio).toBeNull();
  expect(withRatio({ ...row, yardstick: { what: 'the library', median: 0 } }).ratio).toBeNull();
  expect(
    withRatio({ ...row, median: Number.NaN, yardstick: { what: 'the library', median: 3 } }).ratio,
  ).toBeNull();
});

test('a line shows the ratio and the yardstick in three figures, and what it showed without them', () => {
  const row = withRatio({
    what: 'edit',
    unit: 'ms',
    median: 8.44,
    p99: 21.96,
    yardstick: { what: 'the loop', median: 0.012_345 },
  });
  // 8.44 / 0.012345 = 683.68
  expect(lineOf(row)).toBe(`edit${' '.repeat(62)}8.4 ms   p99 22.0 ms   684 × the loop (0.0123 ms)`);
  expect(lineOf({ ...row, yardstick: null, ratio: null })).toBe(`edit${' '.repeat(62)}8.4 ms   p99 22.0 ms`);
});
