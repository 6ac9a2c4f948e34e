import { expect } from 'vitest';

/** Equal to a thousand-millionth of the larger value, and outright where both are near 0. */
export function near(value: number, wanted: number): void {
  const slack = 1e-9 * Math.max(1, Math.abs(value), Math.abs(wanted));
  expect(Math.abs(value - wanted), `${value} and not ${wanted}`).toBeLessThanOrEqual(slack);
}
