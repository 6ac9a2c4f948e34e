import type { JobAnswer } from '@/lib/costing/priceJob';
import type { Offer } from '@/lib/price/offer';
import type { MarkId } from '@/lib/price/rulerMarks';
import { taxTerms } from '@/lib/price/taxTerms';
import { fromMinor } from '@/shared/money';

/** What a price bar shows, before it is put into anybody's words: amounts in currency units, as plain data. */
export interface BarAmounts
  extends Pick<Offer, 'taxMode' | 'tax' | 'pieces' | 'margin' | 'payPerHour' | 'selling'> {
  readonly currency: string;
  readonly each: number;
  /** What the order pays once on top of its pieces. */
  readonly start: number;
  readonly startShare: number;
  readonly eachWithoutTax: number;
  readonly hasTaxInside: boolean;
  readonly isDecided: boolean;
  /** Where the flag stands: at the price of a piece with its share of the start. */
  readonly flag: number;
  /** Null where a size has no price. */
  readonly total: { readonly without: number; readonly tax: number; readonly with: number } | null;
  readonly targetMargin: number;
  /** As the channel writes prices. */
  readonly marks: readonly { readonly id: MarkId; readonly value: number }[];
  /** How many figures the price stands on, and how many of them nobody has told. */
  readonly rates: number;
  readonly typical: number;
}

/**
 * Reads the amounts of one line off the answer; marks, pay and total are those of the whole job.
 *
 * @returns null for an answer without prices, or without this line
 */
export function barAmounts(
  { prices, costSheet: sheet }: Pick<JobAnswer, 'prices' | 'costSheet'>,
  lineId: string,
): BarAmounts | null {
  const line = prices?.offer.lines.find((one) => one.lineId === lineId);
  if (prices === null || sheet === null || line === undefined) return null;
  const { currency, offer, rates } = prices;
  const units = (minor: typeof line.each) => fromMinor(minor, currency);
  const terms = taxTerms(sheet);
  const start = units(line.start);
  const startShare = line.pieces > 0 ? start / line.pieces : 0;
  const { taxMode, tax, pieces, margin, payPerHour, selling, total } = offer;
  return {
    ...{ taxMode, tax, pieces, margin, payPerHour, selling, currency, start, startShare },
    each: units(line.each),
    eachWithoutTax: units(line.eachWithoutTax),
    hasTaxInside: terms.inside > 0,
    isDecided: line.isDecided,
    flag: units(line.each) + startShare,
    total: total && { without: units(total.without), tax: units(total.tax), with: units(total.with) },
    targetMargin: sheet.jobValues.targetMargin ?? 0,
    marks: prices.marks.map(({ id, each }) => ({ id, value: terms.written(each) })),
    rates: rates.all,
    typical: rates.typical.length,
  };
}
