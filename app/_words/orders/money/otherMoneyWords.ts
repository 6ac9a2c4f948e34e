import { minorMoney } from '@/app/_words/orders/minorWords';
import type { OrderMoney } from '@/lib/orders/money/orderMoney';

/** @returns what of an order’s money is told beside its sums. */
export function otherMoneyWords(money: OrderMoney, locale: string): readonly string[] {
  const { currency, changesMinor, creditedMinor, feesMinor, toReachBankMinor, coveredMinor, other } = money;
  const amount = (minor: number) => minorMoney(minor, currency, locale);
  return [
    ...(changesMinor > 0 ? [`Changes of the order are in the total: ${amount(changesMinor)}.`] : []),
    ...(creditedMinor > 0 ? [`Credit notes are taken off the total: ${amount(creditedMinor)}.`] : []),
    ...(feesMinor > 0 ? [`Fees kept back of what came: ${amount(feesMinor)}.`] : []),
    ...(toReachBankMinor > 0 ? [`Not noted at the bank yet: ${amount(toReachBankMinor)}.`] : []),
    ...(coveredMinor > 0
      ? [`Stock that the receipts pay for is counted once: ${amount(coveredMinor)}.`]
      : []),
    ...(other.length > 0
      ? [
          `In another currency, and in no sum here: ${other.map((one) => minorMoney(one.amountMinor, one.currency, locale)).join(', ')}.`,
        ]
      : []),
  ];
}
