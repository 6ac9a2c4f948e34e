import { sizesWords } from '@/app/_words/docket/sizesWords';
import type { Formatter } from '@/app/_words/formatter';
import type { JobAnswer } from '@/lib/costing/priceJob';
import type { RulerMark } from '@/lib/price/rulerMarks';
import { formatMinor, toMinor } from '@/shared/money';
import type { JobInput } from '@/shared/schemas/request';

type Prices = NonNullable<JobAnswer['prices']>;

/** What the card of a first job says of its price. */
interface StartPriceWords {
  readonly price: string;
  /** “a shirt, S to XL”. */
  readonly per: string;
  readonly pay: string;
  readonly total: string;
  /** “for 12; tax not decided yet”. */
  readonly totalOf: string;
  readonly typical: string;
  /** What the price of that size stands on, in currency units a piece without tax. */
  readonly marks: readonly RulerMark[];
}

/** @param piece what one of them is called */
export function startPriceWords(
  { offer, rates, table, suggested, marks, currency }: Prices,
  { job }: JobInput,
  piece: string,
  formatter: Formatter,
  locale: string,
): StartPriceWords | null {
  const [line] = job.lines;
  const [offered] = offer.lines;
  if (line === undefined || offered === undefined) return null;
  const made = line.quantities.filter(({ quantity }) => quantity > 0).map(({ size }) => size);
  const sizes = suggested.find(({ lineId }) => lineId === line.id)?.sizes ?? [];
  const moreOf = (size: string | undefined) => sizes.find((one) => one.size === size)?.more;
  const alike = made.filter((size) => moreOf(size) === moreOf(made[0]));
  const cell = table.findLast(
    ({ lineId, size, from }) => lineId === line.id && size === made[0] && from <= offered.pieces,
  );
  const money = (minor: typeof offered.each) => formatMinor(minor, currency, locale);
  return {
    price: money(offered.each),
    per: made.length > 1 ? `a ${piece}, ${sizesWords(alike)}` : `a ${piece}`,
    pay: money(toMinor(offer.payPerHour, currency)),
    total:
      offer.total === null ? '–' : money(offer.taxMode === 'inside' ? offer.total.with : offer.total.without),
    totalOf: `${currency} for ${formatter.number(offer.pieces, 0)}${offer.taxMode === null ? '; tax not decided yet' : ''}`,
    typical:
      rates.typical.length === rates.all
        ? `all ${formatter.number(rates.all, 0)} figures are typical`
        : `${formatter.number(rates.typical.length, 0)} of ${formatter.number(rates.all, 0)} figures are typical`,
    // The marks of the job are averages over its sizes: beside the price of one of several they would mislead.
    marks:
      alike.length === made.length || cell === undefined
        ? marks
        : [
            { id: 'fullCost', each: cell.fullCost },
            { id: 'target', each: cell.target },
          ],
  };
}
