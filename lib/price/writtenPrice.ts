import type { ResolvedJob } from '@/lib/job/checkedJob';
import { type MinorUnits, toPriceEnding } from '@/shared/money';
import { taxInside } from './taxInside';

/**
 * A price without tax as the maker writes it: tax inside where the channel says so, lifted to the price ending.
 *
 * @param amount currency units without tax, unrounded
 * @param step another ending than the workshop's, in currency units
 * @returns whole minor units, never below the amount
 */
export function writtenPrice(job: ResolvedJob, amount: number, step?: number): MinorUnits {
  const { currency, policy } = job.workshop;
  return toPriceEnding(amount * (1 + taxInside(job)), step ?? policy.priceStep, currency);
}
