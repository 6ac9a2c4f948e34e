import type { Formatter } from '@/app/_words/formatter';
import type { Offer, Selling } from '@/lib/price/offer';
import type { Channel } from '@/shared/schemas/workshop';

/** @returns how the price stands to tax, as it is said beside the price. */
export function priceTaxWords(mode: Channel['taxMode'], tax: number, formatter: Formatter): string {
  switch (mode) {
    case 'added':
      return 'tax added later';
    case 'inside':
      return `incl. ${formatter.share(tax)} tax`;
    case 'none':
      return 'no tax';
    case null:
      return 'tax not decided';
    default:
      return mode satisfies never;
  }
}

/** @returns what stands after the pay an hour: whether the time and money of selling are in it. */
export function sellingWords(selling: Selling): string {
  switch (selling.kind) {
    case 'withOrder':
      return 'selling included';
    case 'counted':
      if (selling.lacksDay) return 'selling hours included, the stall day not';
      return selling.minutesEach === null ? 'selling day included, its hours not' : 'selling included';
    case 'notSaid':
      return 'selling not counted';
    default:
      return selling satisfies never;
  }
}

/** @returns what of selling a piece bears, and which share of a day; null where there is nothing to say. */
export function sellingShareWords(
  selling: Selling,
  { one, many }: Readonly<{ one: string; many: string }>,
  formatter: Formatter,
): string | null {
  if (selling.kind !== 'counted') return null;
  const { minutesEach, day } = selling;
  const minutes = minutesEach === null ? [] : [`${formatter.number(minutesEach, 1)} min of selling`];
  const money =
    day === null
      ? []
      : [
          `${formatter.money(day.each)} of a selling day of ${formatter.money(day.cost)} for ${formatter.count(day.pieces, one, many)}`,
        ];
  return `A ${one} bears ${[...minutes, ...money].join(' and ')}.`;
}

/**
 * @param total in whatever `money` writes
 * @returns what is said of tax after the total of an order; null where there is none to tell
 */
export function totalTaxWords<Amount>(
  { total, taxMode }: { readonly total: Totals<Amount> | null } & Pick<Offer, 'taxMode'>,
  money: (amount: Amount) => string,
): string | null {
  if (total === null || taxMode === null || taxMode === 'none') return null;
  return taxMode === 'inside' ? `${money(total.tax)} of it is tax` : `with tax ${money(total.with)}`;
}

interface Totals<Amount> {
  readonly tax: Amount;
  readonly with: Amount;
}

/** @returns how many of the figures a price stands on nobody has told yet. */
export function typicalFiguresWords(typical: number, all: number): string {
  if (typical === 0) return `all ${all} figures are yours`;
  return typical === all ? `all ${all} figures are typical` : `${typical} of ${all} figures are typical`;
}
