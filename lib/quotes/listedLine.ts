import type { Labels } from '@/lib/papers/words/englishLabels';
import { filled } from '@/lib/papers/words/labelsFor';
import { sellingOf } from '@/lib/price/list/lineList';
import { sellingTotal } from '@/lib/price/list/selling';
import type { MinorUnits } from '@/shared/money';
import { failed, ok, type Result } from '@/shared/result';
import type { FrozenItem } from '@/shared/schemas/priceList';
import { asName } from './asName';
import { type SoldLine, soldSize } from './soldLine';

type ListedProblem =
  | { readonly kind: 'sizeNotListed'; readonly size: string }
  | { readonly kind: 'underFirstBreak'; readonly from: number };

/**
 * What an order pays by an issued list. Every piece stands at the price of its break and size, so that it can be found
 * on the list again; what the rule makes of the sum besides stands in a line of its own.
 *
 * @param wanted how many of each size, in the order of the paper
 */
export function listedLine(
  item: FrozenItem,
  wanted: readonly { readonly size: string; readonly quantity: number }[],
  labels: Labels,
  currency: string,
): Result<Pick<SoldLine, 'sizes' | 'start' | 'charges'>, ListedProblem> {
  const more = new Map(item.sizes.map(({ size, upCharge }) => [size, upCharge]));
  const unknown = wanted.find(({ size }) => !more.has(size));
  if (unknown !== undefined) return failed({ kind: 'sizeNotListed', size: unknown.size });
  const pieces = wanted.reduce((sum, { quantity }) => sum + quantity, 0);
  const breaks = item.breaks.map(({ from, each }) => ({ from, each: each as MinorUnits }));
  const start = (item.setUp?.start ?? 0) as MinorUnits;
  const selling = sellingOf(
    {
      rule: item.setUp === null && item.selling === 'setUpApart' ? 'asListed' : item.selling,
      start,
      breaks: item.setUp === null ? breaks : [{ from: 1, each: item.setUp.each as MinorUnits }],
    },
    NOTHING,
    currency,
  );
  const first = breaks[0]?.from ?? 1;
  const isOnePrice = item.selling === 'onePrice';
  const reached = breaks.findLast(({ from }) => from <= pieces) ?? (isOnePrice ? breaks[0] : undefined);
  if (!selling.ok || reached === undefined) return failed({ kind: 'underFirstBreak', from: first });
  const each = item.setUp === null ? reached.each : (item.setUp.each as MinorUnits);
  const asRows = each * pieces + start;
  const difference = (
    isOnePrice ? 0 : (sellingTotal(selling.value, pieces) ?? asRows) - asRows
  ) as MinorUnits;
  return ok({
    sizes: wanted.map(({ size, quantity }) =>
      soldSize(size, quantity, (each + (more.get(size) ?? 0)) as MinorUnits),
    ),
    start,
    charges:
      difference === 0
        ? []
        : [
            {
              what: asName(
                difference < 0
                  ? filled(labels.cappedLine, { as: heldBy(breaks, pieces), name: item.name })
                  : filled(labels.firstPieces, { name: item.name }),
              ),
              amount: difference,
            },
          ],
  });
}

// Helpers

const NOTHING = 0 as MinorUnits;

/** The larger order whose sum holds this one down. */
function heldBy(breaks: readonly { readonly from: number; readonly each: number }[], pieces: number): number {
  const [least] = breaks
    .filter(({ from }) => from > pieces)
    .toSorted((one, other) => one.from * one.each - other.from * other.each);
  return least?.from ?? pieces;
}
