import type { Block, Paper, Row, Sum } from '@/lib/papers/paper';
import type { Labels } from '@/lib/papers/words/englishLabels';
import { type Figures, figuresOf } from '@/lib/papers/words/figures';
import { filled } from '@/lib/papers/words/labelsFor';
import { orderNumberText } from '@/shared/orderNumberText';
import type { SupplyOrder } from '@/shared/schemas/making/runPapers';
import { headOf, oneLine, textLines } from './heading';

/** What a supplier is told of an order: who it is from and what hangs on it stays with the maker. */
export type SuppliersOrder = Omit<SupplyOrder, 'supplierId' | 'buyingListId'>;

/** What is asked of a supplier, with the supplier's own prices where they are known. */
export function supplyOrderPaper(body: SuppliersOrder, labels: Labels): Paper {
  const figures = figuresOf({ ...body, length: 'mm' });
  const number = orderNumberText(body.number);
  const { supplier, from } = body;
  const facts = [
    { name: labels.number, value: number },
    { name: labels.date, value: figures.day(body.issuedOn) },
    { name: labels.wantedOn, value: body.wantedBy === null ? '' : figures.day(body.wantedBy) },
    { name: labels.customerNumber, value: oneLine(supplier.customerNumber) },
  ];
  const isPriced = body.rows.some(({ each }) => each !== null);
  return {
    page: body.page,
    language: body.language,
    title: `${labels.supplyOrder} ${number}`,
    foot: labels.page,
    blocks: [
      headOf({ ...from, tagline: '', taxNumber: '', howToPay: '', logo: null }, labels),
      {
        kind: 'title',
        title: labels.supplyOrder,
        subject: '',
        party: { words: labels.supplyTo, name: supplier.name, lines: textLines(supplier.contact) },
        facts: facts.filter(({ value }) => value !== ''),
      },
      rowsTable(body, labels, figures, isPriced),
      ...(textLines(body.note).length === 0
        ? []
        : [{ kind: 'text', text: textLines(body.note).join('\n'), isStrong: false } as const]),
      { kind: 'text', text: isPriced ? labels.pleaseConfirm : labels.pleaseTell, isStrong: false },
    ],
  };
}

// Helpers

function rowsTable(body: SuppliersOrder, labels: Labels, figures: Figures, isPriced: boolean): Block {
  const hasArticles = body.rows.some(({ articleNumber }) => articleNumber !== '');
  const hasSizes = body.rows.some(({ size }) => size !== '');
  const hasPacks = body.rows.some(({ packs }) => packs !== null);
  const number = figures.quantity;
  const cellsOf = (row: SuppliersOrder['rows'][number]): Row => ({
    kind: 'row',
    cells: [
      ...(hasArticles ? [oneLine(row.articleNumber)] : []),
      oneLine(row.name),
      ...(hasSizes ? [row.size] : []),
      filled(labels.quantityOf, { count: number(row.quantity), unit: row.unit }),
      ...(hasPacks
        ? [
            row.packs === null
              ? ''
              : filled(labels.packsOf, {
                  packs: number(row.packs),
                  size: number(row.packSize),
                  unit: row.unit,
                }),
          ]
        : []),
      ...(isPriced
        ? [
            row.each === null ? '' : figures.unitPrice(row.each),
            row.amountMinor === null ? '' : figures.money(row.amountMinor),
          ]
        : []),
    ],
  });
  return {
    kind: 'table',
    columns: [
      ...(hasArticles ? [{ head: labels.articleNumber, isFigure: false }] : []),
      { head: labels.what, isFigure: false },
      ...(hasSizes ? [{ head: labels.size, isFigure: false }] : []),
      { head: labels.quantity, isFigure: true },
      ...(hasPacks ? [{ head: '', isFigure: true }] : []),
      ...(isPriced
        ? [
            { head: labels.each, isFigure: true },
            { head: body.currency, isFigure: true },
          ]
        : []),
    ],
    rows: body.rows.map(cellsOf),
    sums: isPriced ? sumsOf(body, labels, figures) : [],
    note: '',
  };
}

/** A sum stands there only where every part of it is known. */
function sumsOf(body: SuppliersOrder, labels: Labels, figures: Figures): readonly Sum[] {
  const { goodsMinor, freightMinor, totalMinor, currency } = body;
  return [
    ...(goodsMinor === null ? [] : [{ name: labels.goodsTotal, value: figures.money(goodsMinor) }]),
    ...(freightMinor === null
      ? []
      : [
          {
            name: labels.freight,
            value: freightMinor === 0 ? labels.freightFree : figures.money(freightMinor),
          },
        ]),
    ...(totalMinor === null
      ? []
      : [
          {
            name: filled(labels.supplyTotal, { currency }),
            value: figures.money(totalMinor),
            look: 'total' as const,
          },
        ]),
  ];
}
