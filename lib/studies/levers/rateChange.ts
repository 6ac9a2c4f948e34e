import type { Change } from '@/shared/finding';
import type { Rate } from '@/shared/schemas/rate';

/** @returns the change that gives a rate another value, in its own unit, as the maker's own of that day. */
export const rateChange = (
  where: Omit<Change, 'value'>,
  rate: Rate,
  value: number,
  asOf: string,
): Change => ({
  ...where,
  value: { value, unit: rate.unit, date: asOf, origin: 'yours' },
});
