import type { AgreedSale } from '@/lib/orders/agreedSale';
import type { OrderFacts } from '@/lib/orders/orderFacts';
import { daysBetween } from '@/shared/days';

/** When money is due; null where no day was set. */
export interface DueDays {
  readonly depositOn: string | null;
  /** Whether a request for it went out. */
  readonly depositAsked: boolean;
  readonly balanceOn: string | null;
  /** Whether an invoice or a request for it went out. */
  readonly balanceAsked: boolean;
}

/** The last paper in force says when: an invoice or a request; else the day the quote named for answers. */
export function dueDays({ happened }: Pick<OrderFacts, 'happened'>, agreed: AgreedSale | null): DueDays {
  const asked = (what: 'deposit' | 'balance') =>
    happened.flatMap((one) =>
      !('withdrawn' in one) || one.withdrawn
        ? []
        : one.kind === 'paymentRequest' && one.body.what === what
          ? [one.body.dueOn]
          : one.kind === 'invoice' && what === 'balance'
            ? [one.body.dueOn]
            : [],
    );
  const [deposit, balance] = [asked('deposit'), asked('balance')];
  return {
    depositOn: deposit.findLast((day) => day !== null) ?? agreed?.quote.body.dates.approveBy ?? null,
    depositAsked: deposit.length > 0,
    balanceOn: balance.findLast((day) => day !== null) ?? null,
    balanceAsked: balance.length > 0,
  };
}

/** @returns days after the day it was due; 0 on that day and before. */
export const lateDays = (dueOn: string | null, today: string): number =>
  dueOn === null ? 0 : Math.max(0, daysBetween(dueOn, today));
