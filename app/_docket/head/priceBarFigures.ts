import { rulerBounds } from '@/app/_ruler/rulerBounds';
import type { RulerBounds, RulerMark } from '@/app/_ruler/rulerMark';
import type { Formatter } from '@/app/_words/formatter';
import type { JobAnswer } from '@/lib/costing/priceJob';
import { wholeJob } from '@/lib/grid/costSheet';
import type { MarkId } from '@/lib/price/rulerMarks';
import { type TaxTerms, taxTerms } from '@/lib/price/taxTerms';
import { formatMinor, toMinor } from '@/shared/money';
import type { Line } from '@/shared/schemas/job';

/** What the price bar shows of a priced job, in figures and words. */
export interface PriceBarFigures {
  readonly price: string;
  /** False where no price is decided and the flag stands at the target. */
  readonly isDecided: boolean;
  readonly marginWords: string;
  readonly pay: string;
  readonly hours: string;
  readonly marks: readonly RulerMark[];
  /** Where the flag stands, without tax like the marks. */
  readonly flag: number;
  readonly bounds: RulerBounds;
  readonly payToWorkBelow: number | null;
  readonly terms: TaxTerms;
  readonly format: (amount: number) => string;
}

/**
 * Reads the price bar of one line off the answer; marks and pay are those of the whole job.
 *
 * @returns null for an answer without prices
 */
export function priceBarFigures(
  { prices, costSheet: sheet }: Pick<JobAnswer, 'prices' | 'costSheet'>,
  { askedPrice }: Pick<Line, 'askedPrice'>,
  context: Readonly<{ formatter: Formatter; locale: string }>,
): PriceBarFigures | null {
  if (prices === null || sheet === null) return null;
  const { formatter, locale } = context;
  const { currency } = prices;
  const format = (amount: number) => formatMinor(toMinor(amount, currency), currency, locale);
  const terms = taxTerms(sheet);
  const each = (id: MarkId) => prices.marks.find((mark) => mark.id === id)?.each;
  const flag = askedPrice === null ? (each('target') ?? 0) : terms.withoutTax(askedPrice);
  const marks = prices.marks.map(({ id, each: value }) => ({
    id,
    label: id === 'target' ? `target ${formatter.share(sheet.jobValues.targetMargin ?? 0)}` : markWords[id],
    value,
  }));
  return {
    price: format(askedPrice ?? terms.written(flag)),
    isDecided: askedPrice !== null,
    marginWords: `margin ${formatter.share(prices.margin)} · markup ${formatter.share(prices.markup)}`,
    pay: format(prices.payPerHour),
    hours: hoursInWords(wholeJob(sheet, 'attended')),
    marks,
    flag,
    bounds: rulerBounds([...marks.map(({ value }) => value), flag]),
    payToWorkBelow: each('outOfPocketFloor') ?? null,
    terms,
    format,
  };
}

// Helpers

const markWords: Readonly<Record<Exclude<MarkId, 'target'>, string>> = {
  outOfPocketFloor: 'out of pocket',
  variableFloor: '+ hands',
  fullCost: 'full cost',
  ceiling: 'most they pay',
};

function hoursInWords(minutes: number): string {
  const whole = Math.round(minutes);
  const hours = Math.floor(whole / 60);
  return hours === 0 ? `${whole} min of your time` : `${hours} h ${whole % 60} min of your time`;
}
