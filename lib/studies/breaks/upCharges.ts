import type { CostedJob } from '@/lib/grid/costJob';
import { caseValue } from '@/lib/grid/costSheet';
import { checkEnding, type EndingProblem } from '@/lib/job/checkEnding';
import { taxTerms } from '@/lib/price/taxTerms';
import { writtenPrice } from '@/lib/price/writtenPrice';
import { type MinorUnits, toPriceEnding } from '@/shared/money';
import { failed, ok, type Result } from '@/shared/result';

interface SizeUpCharge {
  readonly size: string;
  /** What its target price adds to that of the base size, written as the channel writes prices, unrounded. */
  readonly exact: number;
  /** Rounded up to the step for sizes, whole minor units. */
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

type UpChargeProblem = EndingProblem | { readonly kind: 'noSuchLine' };

/**
 * What larger sizes should add, in the batch as asked: separate, or averaged into one price over the actual mix.
 *
 * @param step the maker's step for sizes, currency units, above 0
 */
export function upCharges(
  { laidOut, sheet }: CostedJob,
  lineId: string,
  step: number,
): Result<UpCharges, UpChargeProblem> {
  const { job } = laidOut;
  const problem = checkEnding(step, sheet.currency);
  if (problem !== null) return failed(problem);
  const targets = sheet.cases.flatMap((one, index) =>
    one.lineId === lineId
      ? [{ size: one.size, quantity: one.quantity, target: caseValue(sheet, 'target', index) }]
      : [],
  );
  const [first] = targets;
  if (first === undefined) return failed({ kind: 'noSuchLine' });
  const base = targets.reduce((least, next) => (next.target < least.target - 1e-9 ? next : least), first);
  const tax = taxTerms(sheet);
  const pieces = targets.reduce((sum, { quantity }) => sum + quantity, 0);
  const mean = targets.reduce((sum, { quantity, target }) => sum + target * quantity, 0) / pieces;
  return ok({
    base: base.size,
    basePrice: writtenPrice(job, base.target),
    sizes: targets.map(({ size, target }) => {
      const exact = tax.written(target - base.target);
      return { size, exact, written: toPriceEnding(exact, step, sheet.currency) };
    }),
    averaged: writtenPrice(job, mean),
  });
}
