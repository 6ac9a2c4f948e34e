import type { Formatter } from '@/app/_words/formatter';
import type { OrderPaper } from '@/lib/orders/orderFacts';
import { seriesNumberText } from '@/shared/orderNumberText';
import { minorMoney } from './minorWords';
import { onePaperWords } from './paperTabWords';

/** @returns what a paper is called in a list: “Quote, version 2”, “Invoice 26-007A”. */
export function paperName(paper: OrderPaper): string {
  const { kind, number, body } = paper;
  const words = kind === 'paymentRequest' ? `${paper.body.what} request` : onePaperWords[kind];
  const name = `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
  return kind === 'quote' || kind === 'confirmation'
    ? `${name}, version ${number.count}`
    : `${name} ${seriesNumberText(number, body.issuedOn)}`;
}

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
