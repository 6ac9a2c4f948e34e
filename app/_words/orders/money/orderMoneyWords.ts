import type { AnswerWords } from '@/app/_words/docket/answerWords';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { shortDay } from '@/app/_words/orders/orderDayWords';
import { withCapital } from '@/app/_words/spelledNumber';
import type { Exposure } from '@/lib/orders/money/exposure';
import type { OrderMoney } from '@/lib/orders/money/orderMoney';
import type { OrderPayment } from '@/lib/orders/money/payments';
import type { Settlement } from '@/lib/orders/money/settlement';
import type { Expense, Payment } from '@/shared/schemas/orderEvents';

export const expenseWords: Readonly<Record<Expense['kind'], string>> = {
  blanks: 'Blanks',
  freight: 'Freight',
  paper: 'Paper',
  ink: 'Ink',
  packaging: 'Packaging',
  delivery: 'Delivery',
  machine: 'Machine',
  upkeep: 'Upkeep and repairs',
  power: 'Power',
  rent: 'Room',
  insurance: 'Insurance',
  fees: 'Fees',
  stall: 'Stall',
  office: 'Office',
  advertising: 'Advertising',
  other: 'Something else',
};

/**
 * @param left what is to be settled of an order that was called off; null where it goes on
 * @returns what was spent and what came, in one line
 */
export function moneyAnswer(money: OrderMoney, left: Settlement | null, locale: string): AnswerWords {
  const { spentMinor, receivedMinor, dueMinor, overpaidMinor, isPaid, currency } = money;
  const amount = (minor: number) => minorMoney(minor, currency, locale);
  const spent = spentMinor === 0 ? 'nothing spent' : `${amount(spentMinor)} spent`;
  if (left !== null) return settledAnswer(left, receivedMinor, withCapital(spent), amount);
  if (overpaidMinor > 0)
    return { key: `${amount(overpaidMinor)} too much came,`, after: ' give it back or note what it is for' };
  if (isPaid)
    return {
      key: 'All paid,',
      after: spentMinor === 0 ? ' nothing spent is noted' : ` ${amount(spentMinor)} spent`,
    };
  if (receivedMinor === 0) return { key: `${withCapital(spent)},`, after: ' nothing received yet' };
  const due = dueMinor === null ? '' : `, ${amount(dueMinor)} to come`;
  return { key: `${amount(receivedMinor)} came,`, after: ` ${spent}${due}` };
}

/** @returns how far the deposit covers what is laid out; null where no deposit is agreed. */
export function depositCover(
  { depositMinor, depositOverBlanksMinor, blanksMinor, currency }: OrderMoney,
  locale: string,
): { readonly sentence: string; readonly isShort: boolean } | null {
  if (depositMinor === null || depositOverBlanksMinor === null) return null;
  if (depositMinor === 0)
    return { sentence: 'No deposit was asked: what you lay out is your own.', isShort: blanksMinor > 0 };
  if (depositOverBlanksMinor < 0)
    return {
      sentence: `Blanks and freight cost ${minorMoney(-depositOverBlanksMinor, currency, locale)} more than the deposit.`,
      isShort: true,
    };
  return {
    sentence:
      blanksMinor === 0 ? 'Nothing is laid out for blanks yet.' : 'The deposit covers what you lay out.',
    isShort: false,
  };
}

/** @returns the lowest point in words. */
export function lowestWords({ lowest }: Exposure, currency: string, today: string, locale: string): string {
  if (lowest === null) return 'No money has moved yet.';
  return lowest.balanceMinor < 0
    ? `At most ${minorMoney(-lowest.balanceMinor, currency, locale)} of your own money was in it, on ${shortDay(lowest.day, today, locale)}.`
    : 'At no time was your own money in it.';
}

interface Typed {
  readonly kind: Payment['kind'];
  readonly amountMinor: number | null;
  readonly feeMinor: number;
}

/** @returns what a payment comes to before it is noted: what stays open, or what is too much. */
export function paymentTold(
  { kind, amountMinor, feeMinor }: Typed,
  { totalMinor, receivedMinor }: Pick<OrderMoney, 'totalMinor' | 'receivedMinor'>,
  currency: string,
  locale: string,
): { readonly sentence: string; readonly isCaution: boolean } | null {
  if (amountMinor === null) return null;
  const amount = (minor: number) => minorMoney(minor, currency, locale);
  const caution = (sentence: string) => ({ sentence, isCaution: true });
  if (feeMinor > amountMinor && kind === 'payment')
    return caution(
      `The fee is ${amount(feeMinor - amountMinor)} more than what came. Look for a slip in one of them.`,
    );
  if (kind !== 'payment') {
    return amountMinor > receivedMinor
      ? caution(
          `Only ${amount(Math.max(0, receivedMinor))} came, and ${amount(amountMinor)} would go back. It is kept as you say.`,
        )
      : { sentence: `${amount(receivedMinor - amountMinor)} stays received.`, isCaution: false };
  }
  if (totalMinor === null)
    return { sentence: 'Nothing is agreed yet, so nobody knows what stays open.', isCaution: false };
  const left = totalMinor - receivedMinor - amountMinor;
  if (left < 0)
    return caution(
      `${amount(-left)} more than is owed. It is kept as you say; give the rest back, or note what it is for.`,
    );
  return { sentence: left === 0 ? 'Then all is paid.' : `${amount(left)} stays open.`, isCaution: false };
}

/** @returns where a payment is: at the bank, in the cash box, on its way. */
export function payoutWords({ entry, payouts, place }: OrderPayment, today: string, locale: string): string {
  const { day, reference = '' } = payouts.at(-1)?.body ?? {};
  if (day !== undefined)
    return `at the bank since ${shortDay(day, today, locale)}${reference === '' ? '' : `, reference ${reference}`}`;
  if (place === 'cash') return entry.body.kind === 'payment' ? 'in the cash box' : 'from the cash box';
  return 'not noted at the bank yet';
}

// Helpers

/** Nothing is to come of what was agreed; what came and was never billed is another’s money. */
function settledAnswer(
  { heldMinor, openMinor }: Settlement,
  receivedMinor: number,
  spent: string,
  amount: (minor: number) => string,
): AnswerWords {
  if (heldMinor > 0)
    return {
      key: `${amount(heldMinor)} ${heldMinor === receivedMinor ? '' : `of ${amount(receivedMinor)} that `}came and is held:`,
      after: ' give it back, or bill it and credit what you do not keep',
    };
  if (openMinor > 0)
    return { key: `${amount(openMinor)} billed and not paid:`, after: ' ask for it, or credit it' };
  return {
    key: `${spent},`,
    after: receivedMinor > 0 ? ` ${amount(receivedMinor)} kept as billed` : ' nothing held',
  };
}
