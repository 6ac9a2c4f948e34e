import type { CostedJob } from '@/lib/grid/costJob';
import { wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { piecesOf } from '@/lib/grid/fillLine';
import { checkEnding, type EndingProblem } from '@/lib/job/checkEnding';
import { taxTerms } from '@/lib/price/taxTerms';
import { batchEvaluator } from '@/lib/studies/curve/batchEvaluator';
import { firstBatchThatPays } from '@/lib/studies/goalSeek/firstBatchThatPays';
import { roundToStep } from '@/shared/decimal';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import { failed, ok, type Result } from '@/shared/result';

/** A price on the maker's ending, for every piece of the job alike. */
interface EndingCandidate {
  readonly price: MinorUnits;
  readonly margin: number;
  readonly profit: number;
  readonly payPerHour: number;
  /** The first batch at which this price leaves no loss; null where none up to the largest does. */
  readonly breakEvenAt: number | null;
  readonly aboveCeiling: boolean;
}

export interface PriceEndings {
  /** Mean target price of the job, as the channel writes prices, unrounded. */
  readonly target: number;
  /** The ending below the target; null where it lies under the out-of-pocket floor. */
  readonly below: EndingCandidate | null;
  readonly above: EndingCandidate;
  /** Up, unless the ceiling is in the way. */
  readonly recommended: 'below' | 'above';
}

type PriceEndingProblem =
  | EndingProblem
  | { readonly kind: 'unknownCost' }
  /** Nobody pays what the job takes out of the pocket: a discount is not the answer. Currency units a piece. */
  | { readonly kind: 'ceilingUnderFloor'; readonly ceiling: number; readonly floor: number };

/**
 * The two neighbours of the target on the maker's price ending, with what each leaves.
 *
 * @param step price ending in currency units
 * @param ceiling the most this crowd has been seen to pay for a piece, as the channel writes prices; null for unknown
 */
export function priceEndings(
  { laidOut, sheet }: CostedJob,
  grid: Grid,
  step: number,
  ceiling: number | null,
): Result<PriceEndings, PriceEndingProblem> {
  const problem = checkEnding(step, sheet.currency);
  if (problem !== null) return failed(problem);
  const pieces = laidOut.job.lines.reduce((sum, line) => sum + piecesOf(line), 0);
  const tax = taxTerms(sheet);
  const each = (row: string) => tax.written(wholeJob(sheet, row) / pieces);
  const target = each('target');
  const floor = each('outOfPocketFloor');
  if (ceiling !== null && ceiling < floor - 1e-9)
    return failed({ kind: 'ceilingUnderFloor', ceiling, floor });
  const evaluate = batchEvaluator(laidOut, grid);
  const candidate = (amount: number): EndingCandidate | null => {
    const price = toMinor(amount, sheet.currency);
    const priceEach = fromMinor(price, sheet.currency);
    const [point] = evaluate([{ n: pieces, priceEach }]);
    if (point == null) return null;
    return {
      price,
      margin: point.margin,
      profit: point.profit,
      payPerHour: point.payPerHour,
      breakEvenAt: firstBatchThatPays(evaluate, priceEach),
      aboveCeiling: ceiling !== null && priceEach > ceiling + 1e-9,
    };
  };
  const up = roundToStep(target, step, 'ceiling');
  const above = candidate(up);
  if (above === null) return failed({ kind: 'unknownCost' });
  const down = up - step;
  const below = down > 0 && down >= floor - 1e-9 ? candidate(down) : null;
  return ok({ target, below, above, recommended: above.aboveCeiling && below !== null ? 'below' : 'above' });
}
