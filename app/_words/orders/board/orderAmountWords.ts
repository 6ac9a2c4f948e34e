import type { TextContext } from '@/app/_words/formatter';
import { minorInRow } from '@/app/_words/orders/minorWords';
import { type Settlement, settlement } from '@/lib/orders/money/settlement';
import type { OrderStanding } from '@/lib/orders/orderStanding';

/** What an order comes to, and what is owed of it. */
interface OrderAmount {
  /** Null where it has no price yet. */
  readonly amount: string | null;
  readonly owed: string;
}

export function orderAmountWords(
  standing: Pick<OrderStanding, 'money' | 'lastQuote' | 'side' | 'steps'>,
  context: TextContext,
): OrderAmount {
  const words = goingOnWords(standing, context);
  const left = settlement(standing);
  if (left === null) return words;
  const { currency, receivedMinor } = standing.money;
  return {
    ...words,
    owed: settledWords(left, receivedMinor, (minor) => minorInRow(minor, currency, context)),
  };
}

// Helpers

/** Of an order that was called off what is held or billed counts, never what was agreed. */
function settledWords(
  { heldMinor, openMinor }: Settlement,
  receivedMinor: number,
  said: (minor: number) => string,
): string {
  if (heldMinor > 0) return `${said(heldMinor)} held`;
  if (openMinor > 0) return `${said(openMinor)} billed`;
  return receivedMinor > 0 ? `${said(receivedMinor)} kept` : '';
}

function goingOnWords(
  { money, lastQuote }: Pick<OrderStanding, 'money' | 'lastQuote'>,
  context: TextContext,
): OrderAmount {
  const { currency, totalMinor, dueMinor, depositOpenMinor, receivedMinor, overpaidMinor, due } = money;
  const said = (minor: number) => minorInRow(minor, currency, context);
  if (totalMinor === null || dueMinor === null) {
    if (lastQuote === null)
      return { amount: null, owed: receivedMinor > 0 ? `${said(receivedMinor)} came` : '' };
    const { body } = lastQuote;
    return { amount: minorInRow(body.sums.total, body.currency, context), owed: 'quoted' };
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
