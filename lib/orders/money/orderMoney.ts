import { billing, changesTotalMinor, type Ledger, totalMinor } from '@/lib/orders/ledger';
import type { OrderFacts } from '@/lib/orders/orderFacts';
import type { Walked } from '@/lib/orders/walkOrder';
import { type DueDays, dueDays } from './dueDays';
import { type Exposure, exposure } from './exposure';
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
  const { currency, receivedMinor, feesMinor, inBankMinor, inCashMinor, toReachBankMinor } = ledger;
  const owed = totalMinor(ledger, agreed);
  const depositMinor = agreed?.depositMinor ?? null;
  const { spent, blanksMinor, coveredMinor, unpriced, other } = spending(happened, currency, habits);
  const received = happened.flatMap((one) => {
    if (one.kind !== 'payment' || one.body.currency !== currency) return [];
    const { kind, day, amountMinor, feeMinor } = one.body;
    return [{ day, netMinor: (kind === 'payment' ? amountMinor : -amountMinor) - feeMinor }];
  });
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
    inBankMinor,
    inCashMinor,
    toReachBankMinor,
    spent,
    spentMinor: spent.reduce((sum, { amountMinor }) => sum + amountMinor, 0),
    blanksMinor,
    depositOverBlanksMinor: depositMinor === null ? null : depositMinor - blanksMinor,
    coveredMinor,
    unpriced,
    exposure: exposure(spent, received),
    due: dueDays(facts, agreed),
    other: [...ledger.other, ...other],
  };
}

const openOf = (minor: number, { receivedMinor }: Ledger): number => Math.max(0, minor - receivedMinor);
