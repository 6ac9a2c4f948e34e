import type { OrderStanding } from '@/lib/orders/orderStanding';
import { placeOf } from '@/lib/orders/stepOrder';

/** What is to be settled of an order that was cancelled or lost, in whole minor units, 0 or more. */
export interface Settlement {
  /** What its invoices in force come to, less what was credited. */
  readonly owedMinor: number;
  /** What came beyond what its invoices in force ask for: it goes back, or is billed. */
  readonly heldMinor: number;
  /** What of that has not come. */
  readonly openMinor: number;
}

/**
 * Of an order that is called off nothing is owed but what was billed: what was agreed counts no more.
 *
 * @returns null where the order goes on, or went out before
 */
export function settlement(standing: Pick<OrderStanding, 'side' | 'steps' | 'money'>): Settlement | null {
  const { side } = standing.side;
  if ((side !== 'cancelled' && side !== 'lost') || isDelivered(standing)) return null;
  const { billedMinor, creditedMinor, receivedMinor } = standing.money;
  const owedMinor = Math.max(0, (billedMinor ?? 0) - creditedMinor);
  return {
    owedMinor,
    heldMinor: Math.max(0, receivedMinor - owedMinor),
    openMinor: Math.max(0, owedMinor - Math.max(0, receivedMinor)),
  };
}

/** @returns what came beyond all that is owed, called off or not, in whole minor units, 0 or more. */
export const toGiveBackMinor = (standing: Pick<OrderStanding, 'side' | 'steps' | 'money'>): number =>
  settlement(standing)?.heldMinor ?? standing.money.overpaidMinor;

/** Whether the goods went out. */
export const isDelivered = ({ steps }: Pick<OrderStanding, 'steps'>): boolean =>
  steps.some(({ step, holdsSince }) => holdsSince !== null && placeOf(step.what) >= placeOf('delivered'));
