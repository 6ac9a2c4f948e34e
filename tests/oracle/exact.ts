import { Decimal } from 'decimal.js';

/** Fifty decimal digits: what is computed here carries no error that a comparison to 1e-9 could see. */
const Exact = Decimal.clone({ precision: 50, rounding: Decimal.ROUND_HALF_EVEN, defaults: true });

/** The decimal a number was typed as: 0.1 is a tenth here, not the double nearest to it. */
export const exact = (value: Decimal.Value): Decimal => new Exact(value);

export const ZERO = exact(0);
export const ONE = exact(1);

export const sum = (values: readonly Decimal[]): Decimal =>
  values.reduce((running, value) => running.plus(value), ZERO);

export const greater = (a: Decimal, b: Decimal): Decimal => (a.gt(b) ? a : b);

/** What must be there in a job that is complete. */
export function known<T>(value: T | null | undefined, name: string): T {
  if (value === null || value === undefined) throw new ReferenceError(`the job does not say ${name}`);
  return value;
}
