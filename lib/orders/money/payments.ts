import type { Happening, NotedOf } from '@/lib/orders/orderFacts';
import type { Payment } from '@/shared/schemas/orderEvents';

/** Where money is that came. */
export type PaymentPlace = 'bank' | 'cash' | 'onItsWay';

/** A payment and what is known of it since. */
export interface OrderPayment {
  readonly entry: NotedOf<'payment'>;
  /** Every payout noted for it; the last says how it is. */
  readonly payouts: readonly NotedOf<'payout'>[];
  readonly place: PaymentPlace;
  readonly feeMinor: number;
  /** What it brought less its fee, which is kept back of what comes and paid on top of what goes back. */
  readonly netMinor: number;
}

/** @returns the payments of an order in the order they were noted in; a payout never moves its payment. */
export function paymentsOf(happened: readonly Happening[]): readonly OrderPayment[] {
  const all = happened.flatMap((one) => (one.kind === 'payout' ? [one] : []));
  return happened.flatMap((entry): readonly OrderPayment[] => {
    if (entry.kind !== 'payment') return [];
    const payouts = all.filter(({ body }) => body.paymentId === entry.id);
    const last = payouts.at(-1);
    const feeMinor = last?.body.feeMinor ?? entry.body.feeMinor;
    const place = last !== undefined ? 'bank' : entry.body.way === 'cash' ? 'cash' : 'onItsWay';
    return [{ entry, payouts, place, feeMinor, netMinor: cameMinor(entry.body) - feeMinor }];
  });
}

/** @returns the ids of a payment and of what says of it alone: it goes with it. */
export const withPayouts = ({
  entry,
  payouts,
}: Pick<OrderPayment, 'entry' | 'payouts'>): readonly string[] => [entry.id, ...payouts.map(({ id }) => id)];

/** @returns what came; less than 0 where it went back. */
export const cameMinor = ({ kind, amountMinor }: Pick<Payment, 'kind' | 'amountMinor'>): number =>
  kind === 'payment' ? amountMinor : -amountMinor;
