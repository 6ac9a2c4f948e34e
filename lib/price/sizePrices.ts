import type { ResolvedJob, ResolvedLine, ResolvedSize } from '@/lib/job/checkedJob';
import { fromMinor, type MinorUnits, toMinor, toPriceEnding } from '@/shared/money';
import type { BreakSpan } from './dearestQuantity';
import { taxInside } from './taxInside';
import { writtenPrice } from './writtenPrice';

/** What a piece of one size costs in one break, whole minor units as the channel writes prices. */
interface SizePrice {
  /** What the sums ask for. */
  readonly suggested: MinorUnits;
  /** The price that stands: the maker's own where one is typed for the break, else the suggestion. */
  readonly price: MinorUnits;
  readonly isOwn: boolean;
}

/**
 * Prices of the sizes of a line in each break. The first size carries the price of the break and the others add to
 * it, or one price over the mix covers all. No suggestion lies below the target it is made of.
 *
 * @param targets unrounded and without tax, one list for each break, one amount for each size of the line
 * @param charges what each size adds to an own price, whole minor units
 */
export function sizePrices(
  job: ResolvedJob,
  line: ResolvedLine,
  spans: readonly BreakSpan[],
  targets: readonly (readonly number[])[],
  charges: readonly MinorUnits[],
): readonly (readonly SizePrice[])[] {
  const { currency } = job.workshop;
  const isAveraged = line.line.upCharging === 'averaged';
  const suggestions = targets.map((ofBreak) =>
    isAveraged
      ? ofBreak.map(() => writtenPrice(job, mixMean(line.sizes, ofBreak)))
      : separatePrices(job, ofBreak),
  );
  return spans.map(({ from }, index) => {
    const own = line.line.ownPrices.find((price) => price.from === from);
    return (suggestions[index] ?? []).map((suggested, size): SizePrice => {
      if (own === undefined) return { suggested, price: suggested, isOwn: false };
      const price = (toMinor(own.each, currency) + (charges[size] ?? 0)) as MinorUnits;
      return { suggested, price, isOwn: true };
    });
  });
}

/** Sizes share the ending of all prices, or add whole steps of their own to the price of the first. */
function separatePrices(job: ResolvedJob, targets: readonly number[]): readonly MinorUnits[] {
  const { currency, policy } = job.workshop;
  const step = policy.upChargeStep;
  const [first = 0, ...others] = targets;
  const base = writtenPrice(job, first);
  if (step === null) return targets.map((target) => writtenPrice(job, target));
  const missing = (target: number) => target * (1 + taxInside(job)) - fromMinor(base, currency);
  return [
    base,
    ...others.map((target) => (base + toPriceEnding(missing(target), step, currency)) as MinorUnits),
  ];
}

/** Mean over the pieces really ordered. */
function mixMean(sizes: readonly ResolvedSize[], amounts: readonly number[]): number {
  const pieces = sizes.reduce((sum, { quantity }) => sum + quantity, 0);
  return sizes.reduce((sum, { quantity }, index) => sum + quantity * (amounts[index] ?? 0), 0) / pieces;
}
