import { formatterFor, type TextContext } from '@/app/_words/formatter';
import { usableLocale } from '@/app/_words/usableLocale';
import type { OrderStanding } from '@/lib/orders/orderStanding';
import { formatMinor, fromMinor, type MinorUnits } from '@/shared/money';

/**
 * An amount of whole minor units; its currency is named where it is not the workshop's own.
 *
 * @example minorWords(24396, 'USD', workshop) // '243.96'
 */
export function minorWords(minor: number, currency: string, context: TextContext): string {
  const figure = formatMinor(minor as MinorUnits, currency, usableLocale(context.locale));
  return currency === context.currency ? figure : `${figure} ${currency}`;
}

/** @returns an amount in a sentence, with its currency. */
export const minorMoney = (minor: number, currency: string, context: TextContext): string =>
  formatterFor({ ...context, currency }).money(fromMinor(minor as MinorUnits, currency));

/** What an order comes to, and what is owed of it. */
interface OrderAmount {
  /** Null where it has no price yet. */
  readonly amount: string | null;
  readonly owed: string;
}

export function orderAmountWords(
  { money, lastQuote }: Pick<OrderStanding, 'money' | 'lastQuote'>,
  context: TextContext,
): OrderAmount {
  const { currency, totalMinor, dueMinor, depositOpenMinor, receivedMinor, overpaidMinor, due } = money;
  const said = (minor: number) => minorWords(minor, currency, context);
  if (totalMinor === null || dueMinor === null) {
    if (lastQuote === null)
      return { amount: null, owed: receivedMinor > 0 ? `${said(receivedMinor)} came` : '' };
    const { body } = lastQuote;
    return { amount: minorWords(body.sums.total, body.currency, context), owed: 'quoted' };
  }
  const amount = said(totalMinor);
  if (overpaidMinor > 0) return { amount, owed: `${said(overpaidMinor)} too much` };
  if (dueMinor === 0) return { amount, owed: 'paid' };
  if (due.balanceAsked) return { amount, owed: `${said(dueMinor)} owed` };
  if (depositOpenMinor !== null && depositOpenMinor > 0) {
    return { amount, owed: `${said(depositOpenMinor)} ${due.depositAsked ? 'asked' : 'deposit'}` };
  }
  return { amount, owed: receivedMinor > 0 ? `${said(dueMinor)} to come` : 'nothing paid yet' };
}
