import { fromMinor, LARGEST_AMOUNT, type MinorUnits, toMinor } from '@/shared/money';
import { failed, ok, type Result } from '@/shared/result';
import type { Order } from '@/shared/schemas/order';
import type { Quote } from '@/shared/schemas/orderPapers';
import type { SaleSums } from '@/shared/schemas/paperParts';
import type { OrderTax } from './orderTax';
import { beforeDiscount, saleSums, shareOf } from './saleSums';
import type { SoldLine } from './soldLine';

/** What is sold and what it comes to. */
export interface Sale {
  readonly lines: readonly SoldLine[];
  /** Those of the lines first, then those of the order. */
  readonly charges: Quote['charges'];
  readonly discount: Quote['discount'];
  readonly sums: SaleSums;
}

type SaleProblem =
  | { readonly kind: 'discountOver'; readonly discount: number; readonly before: number }
  | { readonly kind: 'asksNothing' }
  | { readonly kind: 'tooLarge' };

/** @returns lines put together with the charges and the discount of their order. */
export function orderSale(
  lines: readonly SoldLine[],
  order: Order,
  tax: OrderTax,
  currency: string,
): Result<Sale, SaleProblem> {
  const charges = [
    ...lines.flatMap((line) => line.charges.map(({ what, amount }) => ({ what, amount }))),
    ...order.charges.map(({ what, amount }) => ({ what, amount: tax.onPaper(toMinor(amount, currency)) })),
  ];
  const before = beforeDiscount({ lines, charges });
  // With tax on top it must stay an amount that is kept exact to the last coin.
  const largest = beforeDiscount({ lines, charges: charges.filter((one) => one.amount > 0) });
  if (fromMinor(largest as MinorUnits, currency) * 2 > LARGEST_AMOUNT) return failed({ kind: 'tooLarge' });
  const amount = discountOf(order, before, tax, currency);
  if (amount > Math.max(0, before)) return failed({ kind: 'discountOver', discount: amount, before });
  const sums = saleSums({ lines, charges }, amount, tax.paper, currency);
  if (sums.total <= 0) return failed({ kind: 'asksNothing' });
  const discount = order.discount === null || amount === 0 ? null : { amount, why: order.discount.why };
  return ok({ lines, charges, discount, sums });
}

function discountOf({ discount }: Order, before: number, tax: OrderTax, currency: string): number {
  if (discount === null) return 0;
  return discount.kind === 'share'
    ? shareOf(Math.max(0, before), discount.share)
    : tax.onPaper(toMinor(discount.amount, currency));
}
