import type { Grid } from '@/lib/grid/evaluateGrid';
import type { Labels } from '@/lib/papers/words/englishLabels';
import { filled } from '@/lib/papers/words/labelsFor';
import { priceLine } from '@/lib/price/priceTable';
import { suggestedPrice } from '@/lib/price/suggestedPrice';
import { asName } from '@/lib/quotes/asName';
import type { PricedJob } from '@/lib/quotes/pricedJob';
import { lineTotal, type SoldLine, soldSize } from '@/lib/quotes/soldLine';
import type { MinorUnits } from '@/shared/money';
import { splitWhole } from '@/shared/splitWhole';

/** @returns how many of each size are left, split by largest remainder; sizes of which none are left are gone. */
export function fewerOf(
  { sizes }: Pick<SoldLine, 'sizes'>,
  quantity: number,
): readonly { readonly size: string; readonly quantity: number }[] {
  const asked = sizes.reduce((sum, one) => sum + one.quantity, 0);
  const parts = splitWhole(
    quantity,
    sizes.map((one) => (one.quantity * quantity) / asked),
  );
  return sizes.flatMap(({ size }, index) => {
    const left = parts[index] ?? 0;
    return left === 0 ? [] : [{ size, quantity: left }];
  });
}

/**
 * Fewer pieces at the asked prices, or at what the list of the line asks of so few where that is more: a price that was
 * made for a large order does not hold for a small one.
 */
export function withFewerPieces(
  asked: SoldLine,
  quantity: number,
  { costed }: PricedJob,
  grid: Grid,
  written: (amount: MinorUnits) => MinorUnits,
): SoldLine {
  const wanted = fewerOf(asked, quantity);
  const each = new Map(asked.sizes.map((one) => [one.size, one.each]));
  const atAsked = {
    ...asked,
    sizes: wanted.map((one) => soldSize(one.size, one.quantity, each.get(one.size) ?? NOTHING)),
  };
  const { job } = costed.laidOut;
  const line = job.lines.find((one) => one.line.id === asked.lineId);
  if (line === undefined) return atAsked;
  const listed = suggestedPrice(job, priceLine(costed, line, grid), quantity);
  const more = new Map(listed.sizes.map((one) => [one.size, one.more]));
  if (wanted.some(({ size }) => !more.has(size))) return atAsked;
  const atList = {
    ...asked,
    sizes: wanted.map(({ size, quantity: count }) =>
      soldSize(size, count, written((listed.each + (more.get(size) ?? 0)) as MinorUnits)),
    ),
    start: written(listed.start),
  };
  return lineTotal(atList) > lineTotal(atAsked) ? atList : atAsked;
}

/**
 * Fewer pieces never cost more than those that were asked for: what is above is taken off in a line of its own.
 *
 * @param above whole minor units
 */
export const heldTo = (line: SoldLine, above: number, labels: Labels): SoldLine =>
  above <= 0
    ? line
    : {
        ...line,
        charges: [
          ...line.charges,
          {
            what: asName(filled(labels.heldLine, { name: line.name })),
            amount: -above as MinorUnits,
          },
        ],
      };

// Helpers

const NOTHING = 0 as MinorUnits;
