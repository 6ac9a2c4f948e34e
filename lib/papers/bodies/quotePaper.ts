import type { Block, Note, Paper, Sum } from '@/lib/papers/paper';
import type { Labels } from '@/lib/papers/words/englishLabels';
import { apart, filled } from '@/lib/papers/words/labelsFor';
import { versionText } from '@/shared/orderNumberText';
import type { Confirmation, Quote } from '@/shared/schemas/orderPapers';
import { drawnGoods } from './goods';
import { dayFact, headedPaper, howToPay, oneLine, type Told, toldIn, versionNumber } from './heading';
import { saleTable, termNotes } from './sale';

/** What of a quote a customer sees: the owner's side is no part of it. */
export type CustomersQuote = Omit<Quote, 'owner'>;

export function quotePaper(body: CustomersQuote, labels: Labels): Paper {
  const told = toldIn(body, labels);
  const { figures } = told;
  return headedPaper(body, told, {
    title: labels.quote,
    number: versionNumber(body, labels),
    mayTighten: true,
    facts: [
      dayFact(labels.validUntil, body.validUntil, told),
      dayFact(labels.wantedOn, body.wantedOn, told),
      dayFact(labels.approveBy, body.dates.approveBy, told),
      dayFact(labels.ready, body.dates.ready, told),
    ],
    blocks: [
      goodsBlock(body, told),
      saleTable(body, told, { due: dueOf(body, body.depositShare, told), withSays: false }),
      choicesOf(body, told),
      notesOf(body, told),
      { kind: 'sign', labels: [labels.acceptedName, labels.signature, labels.signedOn] },
    ],
  });

  function choicesOf(
    { alternatives, goods, sums, deposit }: CustomersQuote,
    { labels: words }: Told,
  ): Block | null {
    if (alternatives.length === 0) return null;
    const count = goods.reduce(
      (all, { sizes }) => all + sizes.reduce((sum, { quantity }) => sum + quantity, 0),
      0,
    );
    const asked = {
      label: words.asAsked,
      total: sums.total,
      says: count === 1 ? words.onePiece : filled(words.chosenPieces, { count: figures.count(count) }),
      deposit,
    };
    const boxes = [
      asked,
      ...alternatives.map((one) => ({ ...one, total: one.sums.total, says: oneLine(one.says) })),
    ].map(({ label, total, says, deposit: first }, at) => ({
      label,
      figure: figures.money(total),
      lines: [says, first === 0 ? '' : filled(words.choiceDeposit, { amount: figures.money(first) })].filter(
        (line) => line !== '',
      ),
      isAsked: at === 0,
    }));
    return { kind: 'choices', heading: words.chooseOne, boxes };
  }
}

export function confirmationPaper(body: Confirmation, labels: Labels): Paper {
  const told = toldIn(body, labels);
  const { accepted, quote } = body;
  return headedPaper(body, told, {
    title: labels.confirmation,
    number: versionNumber(body, labels),
    mayTighten: true,
    facts: [
      dayFact(labels.approveBy, body.dates.approveBy, told),
      dayFact(labels.ready, body.dates.ready, told),
    ],
    blocks: [
      {
        kind: 'text',
        text: filled(accepted.choice === '' ? labels.confirmsAsAsked : labels.confirms, {
          by: apart(oneLine(accepted.by)),
          choice: apart(oneLine(accepted.choice)),
          version: versionText(quote.number, body.order),
          day: told.figures.day(accepted.on),
        }),
        isStrong: false,
      },
      goodsBlock(body, told),
      saleTable(body, told, { due: dueOf(body, null, told), withSays: false }),
      notesOf(body, told),
    ],
  });
}

/** @returns the goods of a sale, drawn. */
const goodsBlock = ({ goods }: Pick<Quote, 'goods'>, told: Told): Block => ({
  kind: 'goods',
  goods: goods.map((one) => drawnGoods(one, told, false)),
  isLarge: false,
});

function dueOf(
  { deposit, balance }: Pick<Quote, 'deposit' | 'balance'>,
  share: number | null,
  { labels, figures }: Told,
): readonly Sum[] {
  if (deposit === 0) return [];
  return [
    {
      name:
        share === null || share === 0
          ? labels.depositPlain
          : filled(labels.deposit, { share: figures.share(share) }),
      value: figures.money(deposit),
    },
    { name: labels.balance, value: figures.money(balance) },
  ];
}

function leadTime(days: number | null, { labels, figures }: Told): Note | null {
  if (days === null) return null;
  const text = days === 1 ? labels.leadTimeOne : filled(labels.leadTime, { days: figures.count(days) });
  return { lead: `${labels.leadTimeHeading}.`, text };
}

function notesOf(body: Pick<Quote, 'terms' | 'seller' | 'dates'>, told: Told): Block | null {
  const { labels } = told;
  const notes = [
    leadTime(body.dates.leadDays, told),
    ...termNotes(body.terms),
    howToPay(body, labels),
  ].filter((note) => note !== null);
  return notes.length === 0 ? null : { kind: 'notes', notes };
}
