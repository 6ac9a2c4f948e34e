import type { CostedJob } from '@/lib/grid/costJob';
import { piecesOf } from '@/lib/grid/fillLine';
import { checkEnding, type EndingProblem } from '@/lib/job/checkEnding';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import type { LineNeeds } from '@/lib/price/list/lineNeeds';
import type { OrderRange } from '@/lib/price/list/listFigures';
import { sizeMores } from '@/lib/price/list/sizeMores';
import { taxTerms } from '@/lib/price/taxTerms';
import { writtenPrice } from '@/lib/price/writtenPrice';
import type { MinorUnits } from '@/shared/money';
import { failed, ok, type Result } from '@/shared/result';

interface SizeUpCharge {
  readonly size: string;
  /** What its target price adds to that of the base size in the batch as asked, as the channel writes prices, unrounded. */
  readonly exact: number;
  /** The most that any order needs, rounded up to the step for sizes, whole minor units. */
  readonly written: MinorUnits;
}

export interface UpCharges {
  /** The size with the least target price: it carries no charge. */
  readonly base: string;
  /** Separate charges: the base price, and what each other size adds. */
  readonly basePrice: MinorUnits;
  readonly sizes: readonly SizeUpCharge[];
  /** One price for all sizes instead, averaged over the pieces really ordered. */
  readonly averaged: MinorUnits;
}

/** What larger sizes add, in every break alike; beside it what one price over the sizes really ordered would be. */
export function upCharges(
  { laidOut, sheet }: CostedJob,
  line: ResolvedLine,
  needs: LineNeeds,
  orders: OrderRange,
): Result<UpCharges, EndingProblem> {
  const { job } = laidOut;
  const { policy } = job.workshop;
  const problem = checkEnding(policy.upChargeStep ?? policy.priceStep, sheet.currency);
  if (problem !== null) return failed(problem);
  const tax = taxTerms(sheet);
  const pieces = piecesOf(line);
  const base = needs.base.target(pieces);
  const separate = { ...line, line: { ...line.line, upCharging: 'separate' } } as const;
  const { suggested } = sizeMores(job, separate, needs, orders, false);
  const mean =
    needs.sizes.reduce((sum, { size, target }) => sum + target(pieces) * size.quantity, 0) / pieces;
  return ok({
    base: needs.base.size.size,
    basePrice: writtenPrice(job, base),
    sizes: suggested.map(({ size, more }, index) => ({
      size,
      exact: tax.written((needs.sizes[index]?.target(pieces) ?? base) - base),
      written: more,
    })),
    averaged: writtenPrice(job, mean),
  });
}
