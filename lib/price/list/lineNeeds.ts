import type { Grid } from '@/lib/grid/evaluateGrid';
import type { ResolvedLine, ResolvedSize } from '@/lib/job/checkedJob';
import type { CaseEvaluator } from '@/lib/price/caseEvaluator';
import { printGroups } from '@/lib/price/printGroups';
import { taxInside } from '@/lib/price/taxInside';
import { isLargerSize } from '@/shared/isLargerSize';
import type { JudgedJob } from './judgedJob';
import { orderTargets, type TargetOfOrder } from './orderTargets';

/** What a piece of a size must bring, by the order it is part of. Currency units, unrounded. */
interface SizeNeed {
  readonly size: ResolvedSize;
  /** Price for the target margin, without tax. */
  readonly target: TargetOfOrder;
  /** As the channel writes prices; never less than a smaller size of the line, nor than a smaller order needs. */
  readonly written: TargetOfOrder;
}

export interface LineNeeds {
  /** In the order of the line. */
  readonly sizes: readonly SizeNeed[];
  /** The size that needs least; of several the first. */
  readonly base: SizeNeed;
  /** What a list is judged by: the base size, or the mix where one price covers all sizes. */
  readonly judged: Omit<SizeNeed, 'size'>;
  /** What of a price the fees leave, and what they and the margin aimed for leave. */
  readonly afterFees: number;
  readonly keepShare: number;
  /** Written price for one without tax. */
  readonly taxFactor: number;
}

/** @returns what every size of a line needs at every quantity, in the job that it is judged in. */
export function lineNeeds(
  judged: JudgedJob,
  line: ResolvedLine,
  grid: Grid,
  evaluate: CaseEvaluator,
): LineNeeds | null {
  const { job } = judged.laidOut;
  const taxFactor = 1 + taxInside(job);
  const targets = new Map<string, TargetOfOrder>();
  for (const { sizes } of printGroups(line)) {
    const [first] = sizes;
    // Sizes of one blank price are worked out once.
    const makes = [first, ...sizes.slice(1).filter((size, at) => isNewMake(sizes, size, at + 1))] as const;
    const found = orderTargets(judged, line, makes, grid, evaluate);
    for (const size of sizes) {
      const at = makes.findIndex((make) => make.blankPrice.value === size.blankPrice.value);
      const target = found[at];
      if (target !== undefined) targets.set(size.size, target);
    }
  }
  const targetOf = (size: ResolvedSize): TargetOfOrder => targets.get(size.size) ?? (() => Number.NaN);
  const sizes = line.sizes.map((size): SizeNeed => {
    const alike = line.sizes.filter((other) => other === size || isLargerSize(size.size, other.size));
    const needed = [...new Set(alike.map(targetOf))];
    return {
      size,
      target: targetOf(size),
      written: rising((n) => Math.max(...needed.map((target) => target(n))) * taxFactor),
    };
  });
  const [first, ...others] = sizes;
  if (first === undefined) return null;
  const base = others.reduce((least, next) => (isLess(next, least) ? next : least), first);
  const { feeShare = 0, keepShare = 1 } = judged.sheet.jobValues;
  const mix = mixTarget(line, targetOf);
  return {
    sizes,
    base,
    judged:
      line.line.upCharging === 'averaged'
        ? { target: mix, written: rising((n) => mix(n) * taxFactor) }
        : base,
    afterFees: 1 - feeShare,
    keepShare,
    taxFactor,
  };
}

// Helpers

const isNewMake = (sizes: readonly ResolvedSize[], size: ResolvedSize, at: number): boolean =>
  sizes.slice(0, at).every((before) => before.blankPrice.value !== size.blankPrice.value);

/** Sizes are told apart by a single piece and by a few dozen: where prints differ, either may be the dearer. */
const isLess = (one: SizeNeed, other: SizeNeed): boolean =>
  [1, 48].reduce((sum, n) => sum + one.written(n) / other.written(n) - 1, 0) < -1e-9;

/** An order never needs less than a smaller one: a formula of the maker may say so, and a buyer would find it. */
function rising(each: TargetOfOrder): TargetOfOrder {
  // A list is judged at hundreds of orders, each of them again and again.
  const known: number[] = [0];
  let most = 0;
  return (n) => {
    if (!Number.isInteger(n)) return each(n);
    for (let at = known.length; at <= n; at += 1) {
      const own = each(at);
      most = Math.max(most, own * at);
      known.push(most > own * at * (1 + 1e-12) ? most / at : own);
    }
    return known[n] ?? each(n);
  };
}

/** Mean over the pieces really ordered. */
function mixTarget({ sizes }: ResolvedLine, targetOf: (size: ResolvedSize) => TargetOfOrder): TargetOfOrder {
  const pieces = sizes.reduce((sum, { quantity }) => sum + quantity, 0);
  return (n) => sizes.reduce((sum, size) => sum + targetOf(size)(n) * size.quantity, 0) / pieces;
}
