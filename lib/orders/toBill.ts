import { billsOf, isAsking, isOfGoods, leftOf } from './bills';
import type { Happening } from './orderFacts';
import type { OrderStanding } from './orderStanding';

/** What the next invoice of an order would be of. */
interface ToBill {
  /** Whether the goods are to be billed: no invoice asks for them. */
  readonly isOfGoods: boolean;
  /** Charged in the order's money, and no invoice asks for them. */
  readonly changes: OrderStanding['changes'];
  /** Those of them that an invoice in force named which was given back whole. */
  readonly givenBack: OrderStanding['changes'];
  /** What is left of the invoices in force in the order's money, with tax. */
  readonly earlierMinor: number;
}

/** A whole invoice that was given back can be written again, and what was changed since the last one alone. */
export function toBill(
  happened: readonly Happening[],
  { changes, money: { currency } }: Pick<OrderStanding, 'changes' | 'money'>,
): ToBill {
  const bills = billsOf(happened);
  const asking = bills.filter(isAsking);
  const names = (some: typeof bills, entryId: string) =>
    some.some(({ paper }) => paper.body.changeIds.includes(entryId));
  const open = changes.filter(
    (one) => one.currency === currency && one.amountMinor > 0 && !names(asking, one.entryId),
  );
  return {
    isOfGoods: !asking.some(isOfGoods),
    changes: open,
    givenBack: open.filter(({ entryId }) => names(bills, entryId)),
    earlierMinor: asking
      .filter(({ paper }) => paper.body.currency === currency)
      .reduce((sum, bill) => sum + leftOf(bill).total, 0),
  };
}
