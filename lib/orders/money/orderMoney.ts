import { billing, changesTotalMinor, type Ledger, totalMinor } from '@/lib/orders/ledger';
import type { OrderFacts } from '@/lib/orders/orderFacts';
import type { Walked } from '@/lib/orders/walkOrder';
import { type DueDays, dueDays } from './dueDays';
import { type Exposure, exposure } from './exposure';
import { type PaymentPlace, paymentsOf } from './payments';
import { type Spent, spending } from './spending';

/** Money of one order in its one currency, whole minor units. Null where nothing was agreed yet. */
export interface OrderMoney {
  readonly currency: string;
  /** All that the customer owes, changes and credit notes included. */
  readonly totalMinor: number | null;
  readonly changesMinor: number;
  readonly billedMinor: number | null;
  readonly creditedMinor: number;
  readonly depositMinor: number | null;
  /** What of the deposit has not come. */
  readonly depositOpenMinor: number | null;
  /** Payments less refunds and reversals, before fees. */
  readonly receivedMinor: number;
  readonly dueMinor: number | null;
  readonly overpaidMinor: number;
  readonly isPaid: boolean;
  readonly feesMinor: number;
  readonly netMinor: number;
  readonly inBankMinor: number;
  readonly inCashMinor: number;
  readonly toReachBankMinor: number;
  readonly spent: readonly Spent[];
  readonly spentMinor: number;
  readonly blanksMinor: number;
  /** The deposit less what was spent on blanks and their freight. */
  readonly depositOverBlanksMinor: number | null;
  readonly coveredMinor: number;
  readonly unpriced: readonly string[];
  readonly exposure: Exposure;
  readonly due: DueDays;
  /** Amounts in other currencies: told, and never added. */
  readonly other: readonly { readonly id: string; readonly amountMinor: number; readonly currency: string }[];
}

export function orderMoney(
  facts: OrderFacts,
  { ledger, agreed }: Pick<Walked, 'ledger' | 'agreed'>,
): OrderMoney {
  const { happened, habits } = facts;
  const { currency, receivedMinor } = ledger;
  const owed = totalMinor(ledger, agreed);
  const depositMinor = agreed?.depositMinor ?? null;
  const { spent, blanksMinor, coveredMinor, unpriced, other } = spending(happened, currency, habits);
  const received = paymentsOf(happened).filter(({ entry }) => entry.body.currency === currency);
  const feesMinor = received.reduce((sum, one) => sum + one.feeMinor, 0);
  const netAt = (place: PaymentPlace) =>
    received.reduce((sum, one) => (one.place === place ? sum + one.netMinor : sum), 0);
  return {
    currency,
    totalMinor: owed,
    changesMinor: changesTotalMinor(ledger, agreed),
    ...billing(ledger),
    depositMinor,
    depositOpenMinor: depositMinor === null ? null : openOf(depositMinor, ledger),
    receivedMinor,
    dueMinor: owed === null ? null : openOf(owed, ledger),
    overpaidMinor: owed === null ? 0 : Math.max(0, receivedMinor - owed),
    isPaid: owed !== null && receivedMinor >= owed,
    feesMinor,
    netMinor: receivedMinor - feesMinor,
    inBankMinor: netAt('bank'),
    inCashMinor: netAt('cash'),
    toReachBankMinor: netAt('onItsWay'),
    spent,
    spentMinor: spent.reduce((sum, { amountMinor }) => sum + amountMinor, 0),
    blanksMinor,
    depositOverBlanksMinor: depositMinor === null ? null : depositMinor - blanksMinor,
    coveredMinor,
    unpriced,
    exposure: exposure(
      spent,
      received.map(({ entry, netMinor }) => ({ day: entry.body.day, netMinor })),
    ),
    due: dueDays(facts, agreed),
    other: [...ledger.other, ...other],
  };
}

const openOf = (minor: number, { receivedMinor }: Ledger): number => Math.max(0, minor - receivedMinor);
