import type { AnswerWords } from '@/app/_words/docket/answerWords';
import type { Formatter } from '@/app/_words/formatter';
import { minorWords } from '@/app/_words/orders/minorWords';
import type { CashReason } from '@/lib/stall/evening/eveningAnswers';
import type { Evening } from '@/lib/stall/evening/reconcile';
import { toMinor } from '@/shared/money';
import { cashStep } from '@/shared/tables/cashRounding';

export const cashReasonWords: Readonly<Record<CashReason, string>> = {
  wrongChange: 'Wrong change',
  boughtWithIt: 'Bought with it',
  notKnown: 'Not known',
  other: 'Something else',
};

/** A cost of the plan that was paid from the tin must not count twice. */
export const spentWords =
  'What was spent is a cost of the day beside those of the plan. What the plan has already, such as parking, is noted as taken out instead.';

/** @param words what on, as noted; may be empty */
export const spentOnWords = (words: string): string =>
  words === '' ? 'spent, a cost of the day' : `spent on ${words}, a cost of the day`;

export function cashAnswer({ money, plan, soldFrom }: Evening, locale: string): AnswerWords {
  const minor = (amount: number) => minorWords(amount, plan.currency, locale);
  const { countedCash, expectedCash, difference, cash, reason } = money;
  if (countedCash === null) {
    if (reason === 'notKnown')
      return { key: 'Not counted', after: `, ${minor(expectedCash)} should be in the tin` };
    if (soldFrom === 'count')
      return { key: 'Count the tin', after: ': nobody tapped, so it says what came in' };
    return { key: minor(expectedCash), after: ' should be in the tin' };
  }
  if (difference === null) return { key: minor(cash), after: ' came in cash, by what is in the tin' };
  if (difference === 0) return { key: minor(countedCash), after: ' in the tin, as it should be' };
  return {
    key: `${minor(Math.abs(difference))} ${difference < 0 ? 'short' : 'over'}:`,
    after: ` ${minor(countedCash)} in the tin, ${minor(expectedCash)} should be`,
  };
}

/**
 * @returns what coins made of the cash, and where that is less sure than customer by customer; null where every amount
 *   could be paid as it was due
 */
export function coinsWords({ money, count, plan }: Evening, locale: string): string | null {
  const minor = (amount: number) => minorWords(amount, plan.currency, locale);
  const { cashRounding } = money;
  const open = count.tickets.filter((one) => one.isOpen && !one.isUnclosed && one.cashMinor !== 0).length;
  const openToo = ['', ', on the ticket still open too', ', on tickets still open too'][Math.min(open, 2)];
  const once = count.tickets.filter((one) => one.isRoundedOnce).length;
  const phones = once === 1 ? 'On one phone' : `On ${once} phones`;
  const halfCoin = Math.floor(toMinor(cashStep(plan.currency) ?? 0, plan.currency) / 2);
  const told = [
    ...(cashRounding === 0
      ? []
      : [
          `Cash is paid in coins${openToo}: ${minor(Math.abs(cashRounding))} ${cashRounding > 0 ? 'more' : 'less'} in all.`,
        ]),
    ...(once === 0
      ? []
      : [
          `${phones} nobody tapped Next customer, so ${once === 1 ? 'its' : 'their'} cash is rounded at once: the tin may differ by up to ${minor(halfCoin)} a customer.`,
        ]),
  ];
  return told.length === 0 ? null : told.join(' ');
}

export function cardAnswer({ money, plan, soldFrom }: Evening, isTold: boolean, locale: string): AnswerWords {
  const minor = (amount: number) => minorWords(amount, plan.currency, locale);
  if (soldFrom === 'count' && !isTold) return { key: 'What did the reader take?' };
  if (money.payout === null) return { key: minor(money.payoutDue), after: ' should reach the bank' };
  const missing = money.payoutDue - money.payout.minor;
  if (missing === 0) return { key: minor(money.payout.minor), after: ' reached the bank, as it should' };
  return {
    key: minor(money.payout.minor),
    after: ` reached the bank, ${minor(Math.abs(missing))} ${missing > 0 ? 'less' : 'more'} than it should`,
  };
}

/** What a reader's total beyond all goods means, and how to mend it. */
export const beyondWords = ({ money, plan }: Evening, locale: string): string =>
  `The reader took ${minorWords(money.beyond, plan.currency, locale)} more than all goods come to, so takings and tax are told by it. Look whether its total is of this day alone and whether a size is counted too high; else say that it is right.`;

/** How the number of card tickets is known. */
export function ticketsWords({ money, plan }: Evening, { count, number }: Formatter): string {
  const tickets = count(money.cardTickets, 'ticket');
  switch (money.ticketsAre) {
    case 'counted':
      return tickets;
    case 'typed':
      return `${tickets}, as you say`;
    case 'estimated':
      return `about ${tickets}, at ${number(plan.piecesPerTicket)} pieces each`;
    default:
      return money.ticketsAre satisfies never;
  }
}

/** “fees, 2.6 % and 0.10 each”. */
export const feesWords = ({ plan }: Evening, { share, money }: Formatter): string =>
  plan.cardFixedFee === 0
    ? `fees, ${share(plan.cardFee)}`
    : `fees, ${share(plan.cardFee)} and ${money(plan.cardFixedFee)} each`;

export function taxAnswer({ money, plan }: Evening, locale: string): AnswerWords {
  if (plan.taxMode === 'none') return { key: 'No tax', after: ' is charged here' };
  return { key: minorWords(money.tax, plan.currency, locale), after: ' goes into the tax pot' };
}

/** How it was reckoned; which rule holds is for the authority to say. */
export function taxRule({ money, plan }: Evening, locale: string, { number }: Formatter): string {
  // Rates of tax have up to three decimals, and none may be told otherwise than it is.
  const rate = `${number(plan.tax * 100, 3)} %`;
  const minor = (amount: number) => minorWords(amount, plan.currency, locale);
  const ask = 'Which rule holds, ask your local authority.';
  if (plan.taxMode === 'added')
    return `${rate} added to ${minor(money.net)}, on each ticket as it was paid; ${minor(money.gross)} with it. ${ask}`;
  const rule = plan.taxRounding === 'document' ? 'taken once on the day' : 'taken on each ticket';
  return `${rate} inside ${minor(money.gross)}, ${rule}; ${minor(money.net)} without it. ${ask}`;
}
