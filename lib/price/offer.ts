import type { CostedJob } from '@/lib/grid/costJob';
import { type CostSheet, caseValue, wholeJob } from '@/lib/grid/costSheet';
import { piecesOf } from '@/lib/grid/fillLine';
import type { ResolvedJob, ResolvedLine } from '@/lib/job/checkedJob';
import { type MinorUnits, toMinor } from '@/shared/money';
import type { Channel } from '@/shared/schemas/workshop';
import type { Taxed } from './tax/taxOf';
import { orderTotal } from './tax/tillOf';
import { taxTerms } from './taxTerms';

/** The price of a line as the buyer sees it, whole minor units as the channel writes prices. */
interface OfferedLine {
  readonly lineId: string;
  readonly pieces: number;
  /** Price of a piece in the first size that is ordered. */
  readonly each: MinorUnits;
  /** What the order pays once on top; 0 but for set-up apart. */
  readonly start: MinorUnits;
  /** The price of a piece without tax. */
  readonly eachWithoutTax: MinorUnits;
  /** False where nobody has decided it and what the sums suggest stands. */
  readonly isDecided: boolean;
  /** Sizes that cost and are priced alike, in the order of the blank. */
  readonly sizes: readonly OfferedSizes[];
}

/** Sizes at one price, and what a piece of them leaves at it. */
export interface OfferedSizes {
  readonly sizes: readonly string[];
  readonly price: MinorUnits;
  readonly margin: number;
  readonly payPerHour: number;
}

/** A job as it would go out, with what it then leaves: one price, one margin, one pay an hour. */
export interface Offer {
  readonly lines: readonly OfferedLine[];
  readonly pieces: number;
  readonly taxMode: Channel['taxMode'];
  /** Share of tax, 0 where there is none or nobody has said. */
  readonly tax: number;
  /** What the order comes to; null where a size has no price in the list either. */
  readonly total: Taxed | null;
  /** Currency units without tax, unrounded. */
  readonly profit: number;
  readonly margin: number;
  readonly markup: number;
  readonly payPerHour: number;
  readonly selling: Selling;
}

/** What of selling a piece bears. */
export type Selling =
  /** Serving the order is among its minutes, and nothing comes on top. */
  | { readonly kind: 'withOrder' }
  | {
      readonly kind: 'counted';
      /** Null where nobody has said how long selling takes. */
      readonly minutesEach: number | null;
      readonly day: SellingDay | null;
      /** There are days of selling here, and nobody has said what one costs. */
      readonly lacksDay: boolean;
    }
  /** Selling takes time and money here, and nobody has said how much: it is in no figure. */
  | { readonly kind: 'notSaid' };

/** A day of selling in currency units, and what of it one piece and the whole job bear. */
interface SellingDay {
  readonly cost: number;
  readonly pieces: number;
  readonly each: number;
  /** 1.6 where the job's pieces bear more than a day and a half. */
  readonly daysOfJob: number;
}

/**
 * @param offered a job at its asked prices, or at those suggested where none is decided
 * @param isDecided whether the maker has decided the price of a line
 */
export function offerOf({ laidOut, sheet }: CostedJob, isDecided: (lineId: string) => boolean): Offer {
  const { job } = laidOut;
  const { currency } = sheet;
  const tax = taxTerms(sheet);
  const whole = (row: string) => wholeJob(sheet, row);
  return {
    lines: job.lines.map((line): OfferedLine => {
      const each = line.line.askedPrice ?? line.sizes[0]?.askedPrice ?? 0;
      return {
        lineId: line.line.id,
        pieces: piecesOf(line),
        each: toMinor(each, currency),
        start: toMinor(line.sizes[0]?.askedStart ?? 0, currency),
        eachWithoutTax: toMinor(tax.withoutTax(each), currency),
        isDecided: isDecided(line.line.id),
        sizes: offeredSizes(sheet, line),
      };
    }),
    pieces: whole('goodPieces'),
    taxMode: job.channel.taxMode,
    tax: sheet.jobValues.tax ?? 0,
    total: orderTotal(job),
    profit: whole('profit'),
    margin: whole('margin'),
    markup: whole('markup'),
    payPerHour: whole('payPerHour'),
    selling: sellingOf(job, whole('goodPieces')),
  };
}

function offeredSizes(sheet: CostSheet, { line, sizes }: ResolvedLine): readonly OfferedSizes[] {
  const groups: OfferedSizes[] = [];
  sheet.cases.forEach(({ lineId, size }, at) => {
    const asked = lineId === line.id ? sizes.find((one) => one.size === size)?.askedPrice : null;
    if (asked == null) return;
    const price = toMinor(asked, sheet.currency);
    const [margin, payPerHour] = [caseValue(sheet, 'margin', at), caseValue(sheet, 'payPerHour', at)];
    const last = groups.at(-1);
    const isAlike = last?.price === price && Math.abs(last.margin - margin) < 1e-9;
    if (last !== undefined && isAlike) groups[groups.length - 1] = { ...last, sizes: [...last.sizes, size] };
    else groups.push({ sizes: [size], price, margin, payPerHour });
  });
  return groups;
}

function sellingOf({ channel }: ResolvedJob, jobPieces: number): Selling {
  const { kind, sellingMinutesPerPiece: minutes, dayCost, dayPieces } = channel;
  const day =
    dayCost === null || dayPieces === null
      ? null
      : {
          cost: dayCost.value,
          pieces: dayPieces.value,
          each: dayCost.value / dayPieces.value,
          daysOfJob: jobPieces / dayPieces.value,
        };
  if (minutes !== null || day !== null)
    return {
      kind: 'counted',
      minutesEach: minutes?.value ?? null,
      day,
      lacksDay: kind === 'stall' && day === null,
    };
  return { kind: kind === 'order' ? 'withOrder' : 'notSaid' };
}
