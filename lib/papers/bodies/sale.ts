import type { Block, Note, Row, Sum } from '@/lib/papers/paper';
import { filled } from '@/lib/papers/words/labelsFor';
import { sizeGroups } from '@/lib/papers/words/sizeGroups';
import { sizeRow } from '@/lib/papers/words/sizeRow';
import type { Invoice } from '@/shared/schemas/orderPapers';
import type { TaxOnPaper } from '@/shared/schemas/paperParts';
import { oneLine, type Told } from './heading';

type Sale = Pick<Invoice, 'goods' | 'charges' | 'discount' | 'tax' | 'sums' | 'currency'>;

interface SaleTable {
  /** Below the total: what is to be paid of it. */
  readonly due: readonly Sum[];
  /** Whether what the goods are is told in the table, and nowhere else. */
  readonly withSays: boolean;
}

/** @returns what is sold, a row for sizes of one price, and what it comes to; changes alone have neither pieces nor a price each. */
export function saleTable(sale: Sale, told: Told, { due, withSays }: SaleTable): Block {
  const { labels, figures } = told;
  const { goods, charges, currency } = sale;
  const only = goods.length === 1 && !withSays ? goods[0] : undefined;
  const rows = goods.flatMap(({ name, says, sizes, start }): readonly Row[] => [
    ...(only === undefined
      ? [{ kind: 'group', text: name, note: withSays ? oneLine(says) : '' } as const]
      : []),
    ...sizeGroups(sizes).map(
      (group): Row => ({
        kind: 'row',
        cells: [
          sizeRow(group, labels),
          figures.count(group.quantity),
          figures.money(group.each),
          figures.money(group.total),
        ],
      }),
    ),
    ...(start === 0 ? [] : [{ kind: 'row', cells: [labels.start, '', '', figures.money(start)] } as const]),
  ]);
  const [between, empty] =
    goods.length === 0
      ? [[], []]
      : [
          [
            { head: labels.pieces, isFigure: true },
            { head: labels.each, isFigure: true },
          ],
          ['', ''],
        ];
  return {
    kind: 'table',
    columns: [
      { head: goods.length === 0 ? labels.changesAlone : (only?.name ?? labels.what), isFigure: false },
      ...between,
      { head: currency, isFigure: true },
    ],
    rows: [
      ...rows,
      ...charges.map(
        ({ what, amount }): Row => ({
          kind: 'row',
          cells: [what, ...empty, amount === 0 ? labels.included : figures.money(amount)],
        }),
      ),
    ],
    sums: [...sumsOf(sale, told), ...due],
    note: taxNote(sale.tax, told),
  };
}

function sumsOf({ discount, tax, sums, currency }: Sale, { labels, figures }: Told): readonly Sum[] {
  const taken: readonly Sum[] =
    discount === null || discount.amount === 0
      ? []
      : [
          { name: labels.together, value: figures.money(sums.subtotal + discount.amount) },
          {
            name:
              oneLine(discount.why) === ''
                ? labels.discount
                : filled(labels.discountWhy, { why: oneLine(discount.why) }),
            value: figures.money(-discount.amount),
          },
        ];
  const share = { share: figures.share(tax.share) };
  switch (tax.mode) {
    case 'added':
      return [
        ...taken,
        { name: labels.withoutTax, value: figures.money(sums.subtotal) },
        { name: filled(labels.tax, share), value: figures.money(sums.tax) },
        { name: filled(labels.total, { currency }), value: figures.money(sums.total), look: 'total' },
      ];
    case 'inside':
      return [
        ...taken,
        { name: filled(labels.taxInside, share), value: figures.money(sums.tax) },
        { name: filled(labels.totalInside, { currency }), value: figures.money(sums.total), look: 'total' },
      ];
    case 'none':
      return [
        ...taken,
        { name: filled(labels.total, { currency }), value: figures.money(sums.total), look: 'total' },
      ];
    default:
      return tax.mode satisfies never;
  }
}

/** @returns how tax was rounded, or why there is none. */
export function taxNote({ mode, rounding, exemption }: TaxOnPaper, { labels }: Told): string {
  if (exemption !== null) return filled(labels.exempt, { number: oneLine(exemption) });
  if (mode === 'none') return labels.noTax;
  return rounding === 'line' ? labels.taxByLine : labels.taxByTotal;
}

/** @returns terms as they are set: each begins with what it is about. */
export const termNotes = (terms: Invoice['terms']): readonly Note[] =>
  terms.map(({ heading, text }) => ({
    lead:
      oneLine(heading) === '' || /[.:!?]$/.test(oneLine(heading)) ? oneLine(heading) : `${oneLine(heading)}.`,
    text: text.trim(),
  }));
