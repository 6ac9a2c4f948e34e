import type { Block, Paper } from '@/lib/papers/paper';
import type { LabelKey, Labels } from '@/lib/papers/words/englishLabels';
import { filled } from '@/lib/papers/words/labelsFor';
import { orderNumberText, seriesNumberText } from '@/shared/orderNumberText';
import type { CreditNote, Invoice, PaymentRequest, Receipt } from '@/shared/schemas/orderPapers';
import {
  dayFact,
  type Heading,
  headedPaper,
  howToPay,
  oneLine,
  ownNumber,
  type Told,
  toldIn,
} from './heading';
import { saleTable, taxNote, termNotes } from './sale';

/** Asks for the deposit or the balance. */
export function requestPaper(body: PaymentRequest, labels: Labels): Paper {
  const told = toldIn(body, labels);
  const { figures } = told;
  return headedPaper(body, told, {
    title: body.what === 'deposit' ? labels.depositRequest : labels.balanceRequest,
    number: ownNumber(body),
    facts: [dayFact(labels.dueOn, body.dueOn, told)],
    blocks: [
      amountBlock(labels.pleasePay, body.amount, body, told, [
        body.order === null ? '' : filled(labels.payFor, { order: orderNumberText(body.order) }),
        body.dueOn === null ? '' : filled(labels.payBy, { day: figures.day(body.dueOn) }),
      ]),
      sumsTable(body, told, [
        [labels.orderTotal, body.total],
        [labels.paidBefore, body.paid],
        [labels.thisRequest, body.amount],
      ]),
      payNote(body, labels),
    ],
  });
}

export function invoicePaper(body: Invoice, labels: Labels): Paper {
  const told = toldIn(body, labels);
  const { figures } = told;
  const due =
    body.paid === 0 && body.due === body.sums.total
      ? []
      : [
          { name: labels.paid, value: figures.money(body.paid) },
          {
            name: body.due < 0 ? labels.beyond : labels.toPay,
            value: figures.money(Math.abs(body.due)),
            look: 'strong' as const,
          },
        ];
  const notes = [howToPay(body, labels), ...termNotes(body.terms)].filter((note) => note !== null);
  return headedPaper(body, told, {
    title: labels.invoice,
    number: ownNumber(body),
    facts: [dayFact(labels.suppliedOn, body.suppliedOn, told), dayFact(labels.dueOn, body.dueOn, told)],
    blocks: [
      saleTable(body, told, { due, withSays: true }),
      notes.length === 0 ? null : { kind: 'notes', notes },
    ],
  });
}

export function receiptPaper(body: Receipt, labels: Labels): Paper {
  const told = toldIn(body, labels);
  const { payment } = body;
  return headedPaper(body, told, {
    title: labels.receipt,
    number: ownNumber(body),
    blocks: [
      amountBlock(labels.received, payment.amount, body, told, [
        filled(labels.receivedBy, { day: told.figures.day(payment.day), way: labels[ways[payment.way]] }),
        body.order === null ? '' : filled(labels.payFor, { order: orderNumberText(body.order) }),
      ]),
      sumsTable(body, told, [
        [labels.orderTotal, body.total],
        [labels.paid, body.paid],
        [body.left < 0 ? labels.beyond : labels.left, Math.abs(body.left)],
      ]),
    ],
  });
}

export function creditNotePaper(body: CreditNote, labels: Labels): Paper {
  const told = toldIn(body, labels);
  const { figures } = told;
  const { invoice, lines, sums, tax, currency } = body;
  const share = { share: figures.share(tax.share) };
  return headedPaper(body, told, {
    title: labels.creditNote,
    number: ownNumber(body),
    blocks: [
      {
        kind: 'text',
        text: [
          filled(labels.corrects, {
            number: seriesNumberText(invoice.number, invoice.issuedOn),
            day: figures.day(invoice.issuedOn),
          }),
          filled(labels.why, { why: oneLine(body.why) }),
        ].join('\n'),
        isStrong: false,
      },
      {
        kind: 'table',
        columns: [
          { head: labels.what, isFigure: false },
          { head: currency, isFigure: true },
        ],
        rows: lines.map(({ what, amount }) => ({ kind: 'row', cells: [what, figures.money(amount)] })),
        sums: [
          ...(tax.mode === 'added'
            ? [
                { name: labels.withoutTax, value: figures.money(sums.subtotal) },
                { name: filled(labels.tax, share), value: figures.money(sums.tax) },
              ]
            : []),
          ...(tax.mode === 'inside'
            ? [{ name: filled(labels.taxInside, share), value: figures.money(sums.tax) }]
            : []),
          { name: filled(labels.credited, { currency }), value: figures.money(sums.total), look: 'total' },
        ],
        note: taxNote(tax, told),
      },
    ],
  });
}

// Helpers

const ways: Readonly<Record<Receipt['payment']['way'], LabelKey>> = {
  transfer: 'wayTransfer',
  card: 'wayCard',
  cash: 'wayCash',
  cheque: 'wayCheque',
  other: 'wayOther',
};

const amountBlock = (
  words: string,
  amount: number,
  { currency }: Pick<Heading, 'currency'>,
  { figures }: Told,
  under: readonly string[],
): Block => ({
  kind: 'amount',
  words,
  figure: `${figures.money(amount)} ${currency}`,
  under: under.filter((text) => text !== '').join(', '),
});

const sumsTable = (
  { currency }: Pick<Heading, 'currency'>,
  { labels, figures }: Told,
  rows: readonly (readonly [string, number])[],
): Block => ({
  kind: 'table',
  columns: [
    { head: labels.what, isFigure: false },
    { head: currency, isFigure: true },
  ],
  rows: rows.map(([name, amount]) => ({ kind: 'row', cells: [name, figures.money(amount)] })),
  sums: [],
  note: '',
});

function payNote(body: Pick<Heading, 'seller'>, labels: Labels): Block | null {
  const note = howToPay(body, labels);
  return note === null ? null : { kind: 'notes', notes: [note] };
}
