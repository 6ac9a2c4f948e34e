import { checkJob } from '@/lib/check/checkJob';
import { reviewCosts } from '@/lib/check/reviewCosts';
import { makeFinding } from '@/lib/findings/makeFinding';
import { orderFindings } from '@/lib/findings/orderFindings';
import { type CostedJob, costJob } from '@/lib/grid/costJob';
import { type CostSheet, wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { readOwnFormulas } from '@/lib/grid/readOwnFormulas';
import { faultFindings, formulaFindings, negativeRowFindings } from '@/lib/grid/rowFindings';
import type { CheckedJob } from '@/lib/job/checkedJob';
import type { RatesInUse } from '@/lib/job/ratesInUse';
import { type LaidOutPrint, layOutJob } from '@/lib/layout/layOutJob';
import type { LineList } from '@/lib/price/list/lineList';
import { type Offer, offerOf } from '@/lib/price/offer';
import { priceLines, type TablePrice } from '@/lib/price/priceTable';
import { type RulerMark, rulerMarks } from '@/lib/price/rulerMarks';
import type { SuggestedPrice } from '@/lib/price/suggestedPrice';
import { type Finding, isStanding } from '@/shared/finding';
import { LARGEST_AMOUNT } from '@/shared/money';
import type { KnownLayouts } from '@/shared/packedSheets';
import type { JobInput } from '@/shared/schemas/request';
import { costFactsOf } from './costFactsOf';
import { offeredJob } from './offeredJob';

/** Prices of a job. Money in currency units without tax and unrounded, unless a name says otherwise. */
interface JobPrices {
  readonly currency: string;
  /** Whether the prices of the table, as they are written, have tax inside. */
  readonly taxInside: boolean;
  /** Whole job at the target margin. */
  readonly targetTotal: number;
  /** Whole job as it would go out: at the asked prices, or at those suggested where none is decided. */
  readonly total: number;
  readonly fees: number;
  readonly profit: number;
  readonly margin: number;
  readonly markup: number;
  readonly payPerHour: number;
  readonly marks: readonly RulerMark[];
  /** Every price of the lists, with what it leaves. */
  readonly table: readonly TablePrice[];
  /** What each line is sold by, whole minor units as the channel writes prices; one for each line. */
  readonly lists: readonly LineList[];
  /** What the sums suggest to ask for each line in this job; it stands wherever no price is decided. */
  readonly suggested: readonly SuggestedPrice[];
  /** The job as it would go out. */
  readonly offer: Offer;
  /** The figures it stands on that nobody has told yet. */
  readonly rates: RatesInUse;
}

export interface JobAnswer {
  readonly findings: readonly Finding[];
  /** Null while a stop keeps the job from being costed. */
  readonly layout: readonly LaidOutPrint[] | null;
  readonly costSheet: CostSheet | null;
  /** Null while any stop stands, also one that only the sums could show; given when only the asked price is too low. */
  readonly prices: JobPrices | null;
}

type LayoutsOf = (job: CheckedJob) => KnownLayouts | undefined;

/** A job with all that is found about it, before its prices. */
interface JudgedJob {
  readonly answer: Omit<JobAnswer, 'prices'>;
  /** What prices are made from; null while a stop withholds them. */
  readonly priced: { readonly costed: CostedJob; readonly rates: RatesInUse } | null;
}

/**
 * The whole way of a job: check, layout, costs, a second look that needs the costs, prices.
 *
 * @param input documents that their schemas have read
 * @param grid the thread's formula grid
 * @param layoutsOf asked once the job is checked, by whoever remembers layouts; else those of the documents are taken
 */
export function priceJob(input: JobInput, grid: Grid, layoutsOf?: LayoutsOf): JobAnswer {
  const { answer, priced } = judgeJob(input, grid, layoutsOf);
  return { ...answer, prices: priced === null ? null : pricesOf(priced.costed, priced.rates, grid) };
}

/** The same way up to its prices. */
export function judgeJob(input: JobInput, grid: Grid, layoutsOf?: LayoutsOf): JudgedJob {
  const { findings, checked, rates } = checkJob(input);
  const formulas = formulaFindings(
    readOwnFormulas(ownRowsOf(input), mostPlacements(input)),
    input.workshop.ownRows,
    input.job.ownRows,
  );
  const found = orderFindings([...findings, ...formulas]);
  if (checked === null || formulas.some(isStanding)) return uncosted(found);
  const known = layoutsOf === undefined ? checked : { ...checked, layouts: layoutsOf(checked) };
  return judgeChecked(known, rates, found, grid);
}

function judgeChecked(
  checked: CheckedJob,
  rates: RatesInUse,
  found: readonly Finding[],
  grid: Grid,
): JudgedJob {
  const laidOut = layOutJob(checked);
  const result = costJob(laidOut, grid);
  if (result.kind === 'faulty') {
    return uncosted(orderFindings([...found, ...faultFindings(result.faults, checked.ownRows)]));
  }
  const costed = result.job;
  if (!isExact(costed)) return uncosted(orderFindings([...found, tooLarge(checked)]));
  const findings = orderFindings([
    ...found,
    ...negativeRowFindings(costed.sheet, checked.ownRows),
    ...reviewCosts(checked, costFactsOf(costed, grid)),
  ]);
  // A price under the floor is a stop whose way out is the prices themselves: they are not withheld for it.
  const isWithheld = findings.some((finding) => isStanding(finding) && finding.id !== 'RATE-08');
  return {
    answer: { findings, layout: laidOut.prints, costSheet: costed.sheet },
    priced: isWithheld ? null : { costed, rates },
  };
}

function pricesOf(costed: CostedJob, rates: RatesInUse, grid: Grid): JobPrices {
  const { table, lists, suggested } = priceLines(costed, grid);
  const offered = offeredJob(costed, suggested, grid);
  const { sheet } = offered;
  const decided = new Map(costed.laidOut.job.lines.map(({ line }) => [line.id, line.askedPrice !== null]));
  return {
    currency: sheet.currency,
    taxInside: costed.laidOut.job.channel.taxMode === 'inside',
    targetTotal: wholeJob(sheet, 'target'),
    total: wholeJob(sheet, 'price'),
    fees: wholeJob(sheet, 'fees'),
    profit: wholeJob(sheet, 'profit'),
    margin: wholeJob(sheet, 'margin'),
    markup: wholeJob(sheet, 'markup'),
    payPerHour: wholeJob(sheet, 'payPerHour'),
    marks: rulerMarks(costed),
    table,
    lists,
    suggested,
    offer: offerOf(offered, (lineId) => decided.get(lineId) === true),
    rates,
  };
}

const uncosted = (findings: readonly Finding[]): JudgedJob => ({
  answer: { findings, layout: null, costSheet: null },
  priced: null,
});

/** The job's own row replaces the workshop's of the same id. */
function ownRowsOf({ workshop, job }: JobInput) {
  return [...new Map([...workshop.ownRows, ...job.ownRows].map((row) => [row.id, row])).values()];
}

const mostPlacements = ({ job }: JobInput): number =>
  Math.max(...job.lines.map((line) => line.placements.length));

/** Whether every amount that will be shown or written is one that stays exact to the last coin. */
function isExact({ sheet }: CostedJob): boolean {
  return ['fullCost', 'target', 'price', 'variableFloor'].every((row) => {
    // Half is kept for tax and for a single piece that bears what the whole batch shares.
    return Math.abs(wholeJob(sheet, row)) * 2 <= LARGEST_AMOUNT;
  });
}

const tooLarge = ({ workshop }: CheckedJob): Finding =>
  makeFinding({
    id: 'RATE-03',
    severity: 'stop',
    variant: 'tooLarge',
    waivable: false,
    where: { document: 'job', path: [] },
    limit: { value: LARGEST_AMOUNT, unit: 'money' },
    facts: { most: LARGEST_AMOUNT, currency: workshop.currency },
  });
