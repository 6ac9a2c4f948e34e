import { figuresOfAmounts, type PriceBarFigures } from '@/app/_docket/head/priceBarFigures';
import { pieceWords } from '@/app/_words/docket/pieceWords';
import { formatterFor } from '@/app/_words/formatter';
import { clubOrder } from '@/lib/examples/clubOrder';
import { regionOf } from '@/lib/examples/regionOf';
import { amountsOf } from './amountsOf';

/** The example's head, written out: plain data that goes into the page as it is sent. */
export interface SentHead {
  /** The language it was written for, as the browser names it. */
  readonly language: string;
  readonly name: string;
  readonly customer: string;
  readonly whose: string;
  readonly currency: string;
  readonly figures: Omit<PriceBarFigures, 'format' | 'firstTypical'>;
  /** How each amount of the ruler is written: a function cannot be sent. */
  readonly written: Readonly<Record<string, string>>;
}

/** Of a browser that asks in no language. */
const UNTOLD = 'en-US';

/** Any day: the sums are those of every other. */
const DAY = '2026-11-27';

/**
 * The head of the example as a visitor finds it.
 *
 * @param accepted what the browser asks for in `Accept-Language`
 * @returns null where the example's figures are not known in the money of the place
 */
export function sentHead(accepted: string | null): SentHead | null {
  const language = accepted?.split(',')[0]?.split(';')[0]?.trim() || UNTOLD;
  const region = regionOf(language);
  const amounts = amountsOf(region);
  if (amounts === null) return null;
  const { job, blanks } = clubOrder(DAY, DAY);
  const piece = pieceWords(blanks[job.lines[0]?.blankId ?? '']);
  const formatter = formatterFor(region);
  const all = figuresOfAmounts(amounts, { formatter, locale: region.locale, piece }, null);
  const { format, firstTypical, ...figures } = all;
  const onRuler = [...figures.marks.map(({ value }) => value), figures.flag];
  return {
    language,
    name: job.name,
    customer: job.customer,
    whose: `a ${piece.one}`,
    currency: region.currency,
    figures,
    written: Object.fromEntries(onRuler.map((value) => [String(value), format(value)])),
  };
}
