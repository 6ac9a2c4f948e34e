import { billsOf, isOfGoods, leftOf } from '@/lib/orders/bills';
import type { OrderPayment } from '@/lib/orders/money/payments';
import { cameMinor } from '@/lib/orders/money/payments';
import type { OrderFacts } from '@/lib/orders/orderFacts';
import type { OrderStanding } from '@/lib/orders/orderStanding';
import { roundDecimal } from '@/shared/decimal';

/** An order with all that was noted of it. */
export interface ToldOrder {
  readonly facts: OrderFacts;
  readonly standing: Pick<OrderStanding, 'agreed' | 'money' | 'side' | 'acceptance' | 'steps' | 'number'>;
}

/**
 * Tax inside each payment of an order: its part of what the papers in force say, bills before what was agreed. Parts are
 * rounded along what came so far, so that those of an order paid whole come to the tax of its papers to the cent; what
 * came beyond them bears none, for it is not the maker's.
 *
 * @param payments of the order in the currency of its papers, in order
 * @returns whole minor units by the id of the payment; empty where no paper says what tax there is
 */
export function taxOfPayments(
  order: ToldOrder | null,
  payments: readonly OrderPayment[],
): ReadonlyMap<string, number> {
  const said = order === null ? null : saidTax(order);
  if (said === null) return new Map();
  let came = 0;
  let taxed = 0;
  return new Map(
    payments.map(({ entry }) => {
      came += cameMinor(entry.body);
      const until = taxUntil(came, said);
      const own = until - taxed;
      taxed = until;
      return [entry.id, own] as const;
    }),
  );
}

// Helpers

interface SaidTax {
  readonly totalMinor: number;
  readonly taxMinor: number;
}

/** What the papers in force say: bills, and what was agreed while none of them is of the goods. */
function saidTax({ facts, standing }: ToldOrder): SaidTax | null {
  const { currency, totalMinor: owedMinor } = standing.money;
  const bills = billsOf(facts.happened).filter(({ paper }) => paper.body.currency === currency);
  const sums = bills.map(leftOf);
  const agreed = standing.agreed?.sums ?? null;
  if (!bills.some(isOfGoods)) {
    if (agreed === null) return null;
    sums.push(agreed);
  }
  const sum = (of: 'total' | 'tax') => sums.reduce((all, one) => all + one[of], 0);
  const said = { totalMinor: sum('total'), taxMinor: sum('tax') };
  // Changes that no bill names yet bear the tax of their quote.
  if (owedMinor === null || said.totalMinor <= 0 || owedMinor <= said.totalMinor) return said;
  return { totalMinor: owedMinor, taxMinor: partOf(owedMinor, said) };
}

function taxUntil(cameSoFar: number, said: SaidTax): number {
  if (cameSoFar <= 0 || said.totalMinor <= 0) return 0;
  return cameSoFar >= said.totalMinor ? said.taxMinor : partOf(cameSoFar, said);
}

const partOf = (minor: number, { totalMinor, taxMinor }: SaidTax): number =>
  roundDecimal((minor * taxMinor) / totalMinor, 0, 'halfUp');
