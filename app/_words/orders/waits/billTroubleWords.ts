import { type Wording, wording } from '@/app/_words/findings/wording';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { type Bill, leftOf } from '@/lib/orders/bills';
import type { BillTroubles } from '@/lib/orders/billTroubles';
import { seriesNumberText } from '@/shared/orderNumberText';

/** @param doubled two or more invoices in force that ask for the same */
export const doubledWords = (doubled: BillTroubles['doubled'], locale: string): Wording =>
  wording(
    `Invoices ${new Intl.ListFormat('en').format(doubled.map((bill) => `${numberOf(bill)} (${leftWords(bill, locale)})`))} ask for the same, so it is owed more than once.`,
    'Give one of them back whole by a credit note, or withdraw it where nobody got it. Changes that it alone named can be billed anew.',
  );

export const overGivenWords = (bill: Bill, locale: string): Wording =>
  wording(
    `${leftWords(bill, locale)} more was given back of invoice ${numberOf(bill)} than it asked for, so too little is owed.`,
    'Withdraw the credit note that nobody got. Where the customer has them all, note what is too much as a change: the next invoice asks for it.',
  );

export const NOTHING_OWED: Wording = wording(
  'All that was billed of the goods was given back, so nothing is owed for them.',
  'Write a new invoice, or note that the order is cancelled.',
);

// Helpers

const numberOf = ({ paper }: Bill): string => seriesNumberText(paper.number, paper.body.issuedOn);

const leftWords = (bill: Bill, locale: string): string =>
  minorMoney(Math.abs(leftOf(bill).total), bill.paper.body.currency, locale);
