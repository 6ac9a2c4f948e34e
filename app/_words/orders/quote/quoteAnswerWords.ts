import type { Formatter } from '@/app/_words/formatter';
import { minorMoney, minorWords } from '@/app/_words/orders/minorWords';
import type { AnswerLine } from '@/app/_words/orders/papers/followingWords';
import type { QuoteDraft } from '@/lib/quotes/makeQuote';
import type { Order } from '@/shared/schemas/order';
import type { Workshop } from '@/shared/schemas/workshop';

/** @returns what a quote comes to: “761.31 USD, deposit 380.66, balance 380.65; valid until 10 Dec 2026”. */
export function quoteAnswer(
  { sums, currency, deposit, balance, validUntil, alternatives }: QuoteDraft['body'],
  formatter: Formatter,
  locale: string,
): AnswerLine {
  const minor = (amount: number) => minorWords(amount, currency, locale);
  const paid = deposit === 0 ? '' : `, deposit ${minor(deposit)}, balance ${minor(balance)}`;
  const others =
    alternatives.length === 0
      ? ''
      : `; or ${alternatives.map(({ sums: other }) => minor(other.total)).join(' or ')}`;
  return {
    strong: minorMoney(sums.total, currency, locale),
    rest: `${paid}${others}; valid until ${formatter.day(validUntil)}`,
  };
}

/** @returns what is set of a quote in a few words. */
export function settingsLine(order: Order, { quoting }: Workshop, formatter: Formatter): string {
  const { charges, discount, exempt, alternatives } = order;
  return [
    `deposit ${formatter.share(order.depositShare ?? quoting.depositShare)}`,
    `valid ${formatter.count(order.validDays ?? quoting.validDays, 'day')}`,
    ...(charges.length === 0 ? [] : [formatter.count(charges.length, 'charge')]),
    ...(discount === null ? [] : ['a discount']),
    ...(exempt ? ['no tax'] : []),
    ...(alternatives.length === 0 ? [] : [formatter.count(alternatives.length, 'alternative')]),
  ].join(', ');
}

/** What holds while an order says nothing of its own. */
export const ofWorkshopWords = (what: string): string => `Until then the workshop’s holds: ${what}.`;

/** @returns why a quote cannot go out now. */
export function waitsWords(isStopped: boolean, isUnnumbered: boolean): string {
  if (isStopped) return 'See what stands in the way.';
  return isUnnumbered
    ? 'A quote bears the number of its order, and this order has none yet. Give it one under “What it waits for”.'
    : 'The quote is being worked out.';
}
