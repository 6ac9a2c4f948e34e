import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import type { StallPlan } from '@/shared/schemas/stallPapers';

/**
 * What a second costs.
 *
 * @param minor the price of a piece of first grade just then, whole minor units
 * @returns whole minor units; null where the plan has no price for seconds
 */
export const secondPrice = (
  { secondsShare, currency }: Pick<StallPlan, 'secondsShare' | 'currency'>,
  minor: number,
): number | null =>
  secondsShare === undefined
    ? null
    : toMinor(fromMinor(minor as MinorUnits, currency) * secondsShare, currency);
