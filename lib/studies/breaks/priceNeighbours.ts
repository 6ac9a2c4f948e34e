import { offeredJob } from '@/lib/costing/offeredJob';
import { type CostedJob, costJob } from '@/lib/grid/costJob';
import { wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import type { SuggestedPrice } from '@/lib/price/suggestedPrice';
import { batchEvaluator } from '@/lib/studies/curve/batchEvaluator';
import { firstBatchThatPays } from '@/lib/studies/goalSeek/firstBatchThatPays';
import { fromMinor, type MinorUnits, toMinor, toPriceEnding, toPriceUnder } from '@/shared/money';

/** A price beside the one that stands, with what the whole job would leave by it: its sizes add what they add now. */
interface PriceNeighbour {
  /** Of the base size, as the channel writes prices. */
  readonly price: MinorUnits;
  readonly margin: number;
  readonly payPerHour: number;
  /** The first batch that leaves no loss; null where none up to the largest does. */
  readonly breakEvenAt: number | null;
}

export interface PriceNeighbours {
  /** What is asked, else what is suggested. */
  readonly each: MinorUnits;
  /** The next on the maker's ending; null where the order would pay less than it takes out of the pocket. */
  readonly below: PriceNeighbour | null;
  readonly above: PriceNeighbour | null;
}

/**
 * What stands beside the price of a line on the maker's ending.
 *
 * @param suggested of every line that nobody has decided
 * @param step price ending in currency units
 */
export function priceNeighbours(
  costed: CostedJob,
  grid: Grid,
  lineId: string,
  suggested: readonly SuggestedPrice[],
  step: number,
): PriceNeighbours | null {
  const offered = offeredJob(costed, suggested, grid);
  const { laidOut, sheet } = offered;
  const { currency } = sheet;
  const asked = laidOut.job.lines.find(({ line }) => line.id === lineId)?.line.askedPrice ?? null;
  if (asked === null) return null;
  const each = toMinor(asked, currency);
  const at = (price: MinorUnits): PriceNeighbour | null => {
    if (price <= 0) return null;
    const more = fromMinor(price, currency) - asked;
    const lines = laidOut.job.lines.map((one) =>
      one.line.id !== lineId
        ? one
        : {
            ...one,
            line: { ...one.line, askedPrice: fromMinor(price, currency) },
            sizes: one.sizes.map((size) => ({
              ...size,
              askedPrice: size.askedPrice === null ? null : size.askedPrice + more,
            })),
          },
    );
    const again = costJob({ ...laidOut, job: { ...laidOut.job, lines } }, grid);
    if (again.kind !== 'costed') return null;
    const { sheet: other } = again.job;
    return wholeJob(other, 'price') < wholeJob(other, 'outOfPocketFloor') - 1e-9
      ? null
      : {
          price,
          margin: wholeJob(other, 'margin'),
          payPerHour: wholeJob(other, 'payPerHour'),
          breakEvenAt: firstBatchThatPays(batchEvaluator(again.job.laidOut, grid), 'asked'),
        };
  };
  return {
    each,
    below: at(toPriceUnder(each - 1, step, currency)),
    above: at(toPriceEnding(fromMinor((each + 1) as MinorUnits, currency), step, currency)),
  };
}
