import { expect, test } from 'vitest';
import { percentile, timesBeside } from './measure';

test('a figure and its yardstick run in turn on the same input, each first in half of the turns', () => {
  const ran: string[] = [];
  let step = 0;
  const prepare = () => {
    step += 1;
    return step;
  };
  const spent = timesBeside(
    3,
    prepare,
    (input) => ran.push(`figure ${input}`),
    (input) => ran.push(`yardstick ${input}`),
  );
  expect(ran).toEqual(['figure 1', 'yardstick 1', 'yardstick 2', 'figure 2', 'figure 3', 'yardstick 3']);
  expect(spent.figure).toHaveLength(3);
  expect(spent.yardstick).toHaveLength(3);
});

test('a percentile is the value at the nearest rank', () => {
  const values = [50, 10, 40, 20, 30];
  // Ranks by hand: 0.5 × 5 = 2.5, the 3rd; 0.99 × 5 = 4.95, the 5th; 0.2 × 5 = 1, the 1st.
  expect([0.5, 0.99, 0.2].map((share) => percentile(values, share))).toEqual([30, 50, 10]);
});
