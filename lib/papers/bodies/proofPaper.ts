import type { Block, Paper } from '@/lib/papers/paper';
import type { LabelKey, Labels } from '@/lib/papers/words/englishLabels';
import { filled } from '@/lib/papers/words/labelsFor';
import type { DeliveryNote, Proof } from '@/shared/schemas/orderPapers';
import { drawnGoods } from './goods';
import { dayFact, headedPaper, oneLine, ownNumber, type Told, toldIn } from './heading';

/** What is going to be printed, to be approved. */
export function proofPaper(body: Proof, labels: Labels): Paper {
  const told = toldIn(body, labels);
  const { figures } = told;
  const goods = body.goods.map((one) => drawnGoods(one, told, true));
  return headedPaper(body, told, {
    title: labels.proof,
    number: ownNumber(body),
    mayTighten: true,
    facts: [dayFact(labels.answerBy, body.answerBy, told)],
    blocks: [
      { kind: 'goods', goods, isLarge: true },
      { kind: 'rule', words: labels.rule },
      body.names.length === 0
        ? null
        : { kind: 'list', heading: labels.namesToPrint, items: body.names.map(oneLine) },
      {
        kind: 'text',
        text: `${labels.pleaseCheck} ${filled(labels.roundsUsed, {
          used: figures.count(body.revisionsUsed),
          included: figures.count(body.revisionsIncluded),
        })}`,
        isStrong: false,
      },
      {
        kind: 'ticks',
        answers: [
          { text: labels.approvedAsShown, lines: 0 },
          { text: labels.approvedWith, lines: 1 },
          { text: labels.newProof, lines: 1 },
        ],
        about: goods.map(({ heading, prints }) => ({ heading, lines: prints.map(({ lead }) => lead) })),
      },
      { kind: 'sign', labels: [labels.approvedName, labels.signature, labels.signedOn] },
    ],
  });
}

/** What goes out, by size, and for whom where names are known. */
export function deliveryPaper(body: DeliveryNote, labels: Labels): Paper {
  const told = toldIn(body, labels);
  return headedPaper(body, told, {
    title: labels.deliveryNote,
    number: ownNumber(body),
    blocks: [
      body.way === null ? null : { kind: 'text', text: labels[ways[body.way]], isStrong: true },
      goodsTable(body, told),
      peopleTable(body, labels),
      { kind: 'sign', labels: [labels.receivedName, labels.signature, labels.signedOn] },
    ],
  });
}

// Helpers

const ways: Readonly<Record<NonNullable<DeliveryNote['way']>, LabelKey>> = {
  fetched: 'wayFetched',
  brought: 'wayBrought',
  sent: 'waySent',
};

const goodsTable = ({ goods }: DeliveryNote, { labels, figures }: Told): Block => ({
  kind: 'table',
  columns: [
    { head: labels.size, isFigure: false },
    { head: labels.pieces, isFigure: true },
    { head: labels.packed, isFigure: true },
  ],
  rows: [
    ...goods.flatMap(({ name, says, sizes }) => [
      { kind: 'group' as const, text: name, note: oneLine(says) },
      ...sizes
        .filter(({ quantity }) => quantity > 0)
        .map(({ size, quantity }) => ({
          kind: 'row' as const,
          cells: [size, figures.count(quantity), { ticks: 1 }],
        })),
    ]),
    { kind: 'row', cells: [labels.together, figures.count(piecesOf(goods)), ''] },
  ],
  sums: [],
  note: '',
});

const piecesOf = (goods: DeliveryNote['goods']): number =>
  goods.reduce((all, { sizes }) => all + sizes.reduce((sum, { quantity }) => sum + quantity, 0), 0);

function peopleTable({ people, goods }: DeliveryNote, labels: Labels): Block | null {
  if (people.length === 0) return null;
  const isOneKind = goods.length === 1;
  const hasNumbers = people.some(({ number }) => number.trim() !== '');
  return {
    kind: 'table',
    columns: [
      { head: labels.person, isFigure: false },
      ...(hasNumbers ? [{ head: labels.personNumber, isFigure: true }] : []),
      { head: labels.size, isFigure: true },
      ...(isOneKind ? [] : [{ head: labels.what, isFigure: false }]),
      { head: labels.packed, isFigure: true },
    ],
    rows: people.map(({ name, number, size, goods: what }) => ({
      kind: 'row',
      cells: [
        oneLine(name),
        ...(hasNumbers ? [oneLine(number)] : []),
        oneLine(size),
        ...(isOneKind ? [] : [what]),
        { ticks: 1 },
      ],
    })),
    sums: [],
    note: '',
  };
}
