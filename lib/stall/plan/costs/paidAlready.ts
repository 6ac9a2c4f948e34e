import type { StallDay } from '@/shared/schemas/stallDay';
import type { Workshop } from '@/shared/schemas/workshop';
import { moneyOf } from './dayCosts';

/**
 * @param day on which it is asked, YYYY-MM-DD; what is to be paid later is not paid
 * @returns what of the costs of a stall day is paid by then, currency units
 */
export const paidAlready = ({ costs }: Pick<StallDay, 'costs'>, workshop: Workshop, day: string): number =>
  costs
    .filter(({ paidOn }) => paidOn !== null && paidOn <= day)
    .reduce((sum, cost) => sum + (moneyOf(cost, workshop) ?? 0), 0);
