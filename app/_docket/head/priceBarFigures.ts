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
import type { Where } from '@/shared/finding';
import { formatMinor, type MinorUnits, toMinor } from '@/shared/money';
import { type BarAmounts, barAmounts } from './barAmounts';

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

interface FiguresContext {
  readonly formatter: Formatter;
  readonly locale: string;
  /** What one piece of the line is called. */
  readonly piece: Readonly<{ one: string; many: string }>;
}

/**
 * Reads the price bar of one line off the answer; marks, pay and total are those of the whole job.
 *
 * @returns null for an answer without prices, or without this line
 */
export function priceBarFigures(
  answer: Pick<JobAnswer, 'prices' | 'costSheet'>,
  lineId: string,
  context: FiguresContext,
): PriceBarFigures | null {
  const amounts = barAmounts(answer, lineId);
  return amounts && figuresOfAmounts(amounts, context, answer.prices?.rates.typical[0] ?? null);
}

/** Writes the amounts of a price bar the maker's way. */
export function figuresOfAmounts(
  amounts: BarAmounts,
  { formatter, locale, piece }: FiguresContext,
  firstTypical: Where | null,
): PriceBarFigures {
  const { currency, startShare, flag, pieces, total } = amounts;
  const money = (minor: MinorUnits) => formatMinor(minor, currency, locale);
  const format = (amount: number) => money(toMinor(amount, currency));
  const marks = amounts.marks.map(({ id, value }) => ({
    id,
    label: id === 'target' ? `target ${formatter.share(amounts.targetMargin)}` : markWords[id],
    value,
  }));
  return {
    price: format(amounts.each),
    start: amounts.start > 0 ? format(amounts.start) : null,
    state: !amounts.isDecided ? 'suggested' : amounts.typical === amounts.rates ? 'typical' : 'stands',
    tax: priceTaxWords(amounts.taxMode, amounts.tax, formatter),
    withoutTax: amounts.hasTaxInside ? `${format(amounts.eachWithoutTax)} without tax` : null,
    pay: format(amounts.payPerHour),
    selling: sellingWords(amounts.selling),
    asksForSelling: amounts.selling.kind === 'notSaid',
    sellingShare: sellingShareWords(amounts.selling, piece, formatter),
    margin: formatter.share(amounts.margin),
    total: total && format(amounts.hasTaxInside ? total.with : total.without),
    totalFor: `for ${formatter.number(pieces, 0)}`,
    totalTax: totalTaxWords(amounts, format),
    typicalWords: typicalFiguresWords(amounts.typical, amounts.rates),
    firstTypical,
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
