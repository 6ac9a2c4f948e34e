import { checkJob } from '@/lib/check/checkJob';
import { costOffered } from '@/lib/costing/offeredJob';
import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { piecesOf } from '@/lib/grid/fillLine';
import { lastBatch } from '@/lib/layout/batchSheets';
import { taxTerms } from '@/lib/price/taxTerms';
import { type Finding, isStanding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import { type BatchPrice, batchEvaluator } from './batchEvaluator';
import type { BatchPoint } from './batchPoint';
import { type BreakEven, breakEven } from './breakEven';
import { type Knee, knee } from './knee';
import { type QuantitySpot, quantitySpots } from './quantitySpots';
import { scrapRange } from './scrapRange';
import { type SpreadPoint, spoilageSpread } from './spoilageSpread';
import { usedUpAt } from './usedUpAt';

export interface CostCurveQuestion {
  /** Price of every piece as it is typed, in currency units; null takes the job's own prices. */
  readonly flatPrice: number | null;
}

/** A job at every batch from 1 to twice the asked one, 100 at least and 500 at most. */
export interface CostCurve {
  readonly kind: 'curve';
  /** Good pieces the job asks for. */
  readonly asked: number;
  /** The last batch drawn. */
  readonly to: number;
  /** Which price stands in the points: `suggested` where none of the job's own is decided. */
  readonly priced: 'flat' | 'asked' | 'suggested';
  /** The job's own price of a piece where all its lines have the same, as the channel writes prices; else null. */
  readonly askedEach: number | null;
  /** Share of tax that written prices have inside: `taxTermsOf` turns the money of the points into written money. */
  readonly taxInside: number;
  /** In rising order; a batch for which a formula of the maker gives no number is left out. */
  readonly points: readonly BatchPoint[];
  /** The same batches with little and with much spoiled. */
  readonly spread: readonly SpreadPoint[];
  readonly breakEven: BreakEven | null;
  readonly knee: Knee | null;
  /** The next good quantities above the asked one. */
  readonly spots: readonly QuantitySpot[];
  /** Quantities at which sheets or a session are just used up, rising. */
  readonly steps: readonly number[];
}

export type CurveAnswer =
  | CostCurve
  /** What stops the job; null where its sums give no number. */
  | { readonly kind: 'stopped'; readonly why: Finding | null };

/** @returns the curve of a job, or of another way of making it, at a flat price or as it is asked. */
export function curveAnswer(input: JobInput, grid: Grid, question: CostCurveQuestion): CurveAnswer {
  const offered = costOffered(input, grid);
  if (offered === null) return { kind: 'stopped', why: checkJob(input).findings.find(isStanding) ?? null };
  const isSuggested = input.job.lines.every(({ askedPrice }) => askedPrice === null);
  return curveOf(offered.costed, grid, question, isSuggested);
}

function curveOf(
  costed: CostedJob,
  grid: Grid,
  { flatPrice }: CostCurveQuestion,
  isSuggested: boolean,
): CostCurve {
  const { job } = costed.laidOut;
  const asked = job.lines.reduce((sum, line) => sum + piecesOf(line), 0);
  const to = lastBatch(asked);
  const priced = flatPrice !== null ? 'flat' : isSuggested ? 'suggested' : 'asked';
  const priceEach: BatchPrice = flatPrice ?? 'asked';
  const [own = null, ...others] = new Set(job.lines.map(({ line }) => line.askedPrice));
  const wanted = Array.from({ length: to }, (_, index) => ({ n: index + 1, priceEach }));
  const points = batchEvaluator(costed.laidOut, grid)(wanted).filter((point) => point !== null);
  return {
    kind: 'curve',
    asked,
    to,
    priced,
    askedEach: others.length === 0 ? own : null,
    taxInside: taxTerms(costed.sheet).inside,
    points,
    spread: spoilageSpread(costed, grid, wanted, scrapRanges(costed)),
    breakEven: breakEven(points),
    knee: knee(points),
    spots: quantitySpots(costed, grid),
    steps: [...usedUpAt(costed.laidOut, 1, to).keys()],
  };
}

const scrapRanges = ({ laidOut }: CostedJob) =>
  Object.fromEntries(
    laidOut.job.lines.flatMap(({ placements }) =>
      placements.map(({ placement, scrap }) => [placement.id, scrapRange(scrap)] as const),
    ),
  );
