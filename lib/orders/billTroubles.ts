import { type Bill, billsOf, doubledBills, isAsking, isOfGoods, leftOf } from './bills';
import type { Happening } from './orderFacts';
import type { OrderStanding } from './orderStanding';

/** What papers of devices that had not heard of each other come to, and nobody meant. */
export interface BillTroubles {
  /** Invoices in force that ask for the same: two or more, or none. */
  readonly doubled: readonly Bill[];
  /** Invoices of which more was given back than they asked for. */
  readonly overGiven: readonly Bill[];
  /** The goods were billed, all of that was given back, and the order goes on: nothing is owed for them. */
  readonly isNothingOwed: boolean;
}

export function billTroubles(
  happened: readonly Happening[],
  { side, agreed }: Pick<OrderStanding, 'side' | 'agreed'>,
): BillTroubles {
  const bills = billsOf(happened);
  const ofGoods = bills.filter(isOfGoods);
  const isGoingOn = agreed !== null && (side.side === 'open' || side.side === 'held');
  return {
    doubled: doubledBills(bills),
    overGiven: bills.filter((bill) => leftOf(bill).total < 0),
    isNothingOwed: isGoingOn && ofGoods.some(({ credits }) => credits.length > 0) && !ofGoods.some(isAsking),
  };
}
