import { cameMinor } from '@/lib/orders/money/payments';
import type { Run } from '@/shared/schemas/making/run';
import type { Payment } from '@/shared/schemas/orderEvents';

/** Money that came for the orders a run was made for, whole minor units, tax in it. */
interface PaidOfRun {
  /** Null where nobody noted any in the currency asked for. */
  readonly minor: number | null;
  /** Some was noted in another currency; it is in no sum. */
  readonly isElsewhere: boolean;
  /** Of these orders something is made in another run as well: the money is that of both. */
  readonly isShared: boolean;
}

/**
 * @param runs all, so that an order of several is told
 * @param payments in force; those in another currency than asked for count for nothing
 * @returns null where nobody waits for the run by an order
 */
export function paidOfRun(
  runId: string,
  runs: Readonly<Record<string, Pick<Run, 'works'>>>,
  payments: readonly Payment[],
  currency: string,
): PaidOfRun | null {
  const orders = new Set(ordersOf(runs[runId]));
  if (orders.size === 0) return null;
  const others = Object.entries(runs).flatMap(([id, run]) => (id === runId ? [] : ordersOf(run)));
  const noted = payments.filter(({ orderId }) => orders.has(orderId));
  const own = noted.filter((payment) => payment.currency === currency);
  return {
    minor: own.length === 0 ? null : own.reduce((sum, payment) => sum + cameMinor(payment), 0),
    isElsewhere: noted.length > own.length,
    isShared: others.some((orderId) => orders.has(orderId)),
  };
}

// Helpers

const ordersOf = (run: Pick<Run, 'works'> | undefined): readonly string[] =>
  (run?.works ?? []).flatMap(({ orderId }) => (orderId === null ? [] : [orderId]));
