import { rulerBounds } from '@/app/_ruler/rulerBounds';
import type { RulerBounds, RulerMark } from '@/app/_ruler/rulerMark';
import {
  priceTaxWords,
  sellingShareWords,
  sellingWords,
  totalTaxWords,
  typicalFiguresWords,
} from '@/app/_words/docket/priceHeadWords';
import type { Formatter } from '@/app/_words/formatter';
import type { JobAnswer } from '@/lib/costing/priceJob';
import type { MarkId } from '@/lib/price/rulerMarks';
import { taxTerms } from '@/lib/price/taxTerms';
import type { Where } from '@/shared/finding';
import { formatMinor, fromMinor, type MinorUnits, toMinor } from '@/shared/money';

/** What the price bar shows of a priced job, in figures and words; all prices as the channel writes them. */
export interface PriceBarFigures {
  readonly price: string;
  /** What the order pays once on top of its pieces; null where it pays by the piece alone. */
  readonly start: string | null;
  /** A price that nobody has decided is that of the list; one that stands on nobody's figures is a guess. */
  readonly state: 'stands' | 'suggested' | 'typical';
  readonly tax: string;
  /** What of the price is the maker's; null where no tax is inside. */
  readonly withoutTax: string | null;
  readonly pay: string;
  readonly selling: string;
  /** Selling takes time and money here, and nobody has said how much. */
  readonly asksForSelling: boolean;
  /** Which share of selling a piece bears; null where there is none. */
  readonly sellingShare: string | null;
  readonly margin: string;
  /** Null where a size has no price. */
  readonly total: string | null;
  /** “for 37”. */
  readonly totalFor: string;
  /** “with tax 761.31”; null where there is nothing to tell. */
  readonly totalTax: string | null;
  readonly typicalWords: string;
  /** Where the first figure is typed that nobody has told; null where all are the maker's own. */
  readonly firstTypical: Where | null;
  readonly marks: readonly RulerMark[];
  /** Where the flag stands: at the price of a piece with its share of the start. */
  readonly flag: number;
  readonly startShare: number;
  readonly bounds: RulerBounds;
  readonly payToWorkBelow: number | null;
  readonly format: (amount: number) => string;
}

/**
 * Reads the price bar of one line off the answer; marks, pay and total are those of the whole job.
 *
 * @param piece what one piece of the line is called
 * @returns null for an answer without prices, or without this line
 */
export function priceBarFigures(
  { prices, costSheet: sheet }: Pick<JobAnswer, 'prices' | 'costSheet'>,
  lineId: string,
  context: Readonly<{
    formatter: Formatter;
    locale: string;
    piece: Readonly<{ one: string; many: string }>;
  }>,
): PriceBarFigures | null {
  const line = prices?.offer.lines.find((one) => one.lineId === lineId);
  if (prices === null || sheet === null || line === undefined) return null;
  const { formatter, locale, piece } = context;
  const { currency, offer, rates } = prices;
  const money = (minor: MinorUnits) => formatMinor(minor, currency, locale);
  const format = (amount: number) => money(toMinor(amount, currency));
  const terms = taxTerms(sheet);
  const marks = prices.marks.map(({ id, each }) => ({
    id,
    label: id === 'target' ? `target ${formatter.share(sheet.jobValues.targetMargin ?? 0)}` : markWords[id],
    value: terms.written(each),
  }));
  const startShare = line.pieces > 0 ? fromMinor(line.start, currency) / line.pieces : 0;
  const flag = fromMinor(line.each, currency) + startShare;
  return {
    price: money(line.each),
    start: line.start > 0 ? money(line.start) : null,
    state: !line.isDecided ? 'suggested' : rates.typical.length === rates.all ? 'typical' : 'stands',
    tax: priceTaxWords(offer.taxMode, offer.tax, formatter),
    withoutTax: terms.inside > 0 ? `${money(line.eachWithoutTax)} without tax` : null,
    pay: format(offer.payPerHour),
    selling: sellingWords(offer.selling),
    asksForSelling: offer.selling.kind === 'notSaid',
    sellingShare: sellingShareWords(offer.selling, piece, formatter),
    margin: formatter.share(offer.margin),
    total: offer.total && money(terms.inside > 0 ? offer.total.with : offer.total.without),
    totalFor: `for ${formatter.number(offer.pieces, 0)}`,
    totalTax: totalTaxWords(offer, money),
    typicalWords: typicalFiguresWords(rates.typical.length, rates.all),
    firstTypical: rates.typical[0] ?? null,
    marks,
    flag,
    startShare,
    bounds: rulerBounds([...marks.map(({ value }) => value), flag]),
    payToWorkBelow: marks.find(({ id }) => id === 'outOfPocketFloor')?.value ?? null,
    format,
  };
}

// Helpers

const markWords: Readonly<Record<Exclude<MarkId, 'target'>, string>> = {
  outOfPocketFloor: 'out of pocket',
  variableFloor: 'your hands',
  fullCost: 'full cost',
  ceiling: 'most they pay',
};
