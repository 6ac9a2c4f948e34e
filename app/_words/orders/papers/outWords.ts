import type { Formatter } from '@/app/_words/formatter';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { withCapital } from '@/app/_words/spelledNumber';
import type { OrderPaper } from '@/lib/orders/orderFacts';
import { seriesNumberText, versionText } from '@/shared/orderNumberText';
import type { PaperNumber } from '@/shared/schemas/happened';
import { onePaperWords } from './paperTabWords';

/** @returns what a paper is called inside a sentence: “quote, version 2”, “invoice 26-007A”. */
export const paperSaid = (
  kind: OrderPaper['kind'],
  number: PaperNumber,
  { issuedOn, order }: Pick<OrderPaper['body'], 'issuedOn' | 'order'>,
  word = onePaperWords[kind],
): string =>
  kind === 'quote' || kind === 'confirmation'
    ? `${word}, version ${versionText(number, order)}`
    : `${word} ${seriesNumberText(number, issuedOn)}`;

/** @returns what a paper that went out is called in a list: “Quote, version 2”, “Deposit request 26-003A”. */
export const paperName = (paper: OrderPaper): string =>
  withCapital(
    paperSaid(
      paper.kind,
      paper.number,
      paper.body,
      paper.kind === 'paymentRequest' ? `${paper.body.what} request` : undefined,
    ),
  );

/** @returns when it went out and what it comes to. */
export function outWords({ kind, body }: OrderPaper, formatter: Formatter, locale: string): string {
  const day = formatter.day(body.issuedOn);
  const money = (minor: number) => `${day} · ${minorMoney(minor, body.currency, locale)}`;
  switch (kind) {
    case 'quote':
      return `${money(body.sums.total)} · valid until ${formatter.day(body.validUntil)}`;
    case 'confirmation':
    case 'invoice':
    case 'creditNote':
      return money(body.sums.total);
    case 'paymentRequest':
      return money(body.amount);
    case 'receipt':
      return money(body.payment.amount);
    case 'proof':
      return body.answerBy === null ? day : `${day} · answer by ${formatter.day(body.answerBy)}`;
    case 'deliveryNote':
      return day;
    default:
      return kind satisfies never;
  }
}
