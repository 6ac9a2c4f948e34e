import type { BatchEvaluator } from '@/lib/studies/curve/batchEvaluator';
import type { BatchPoint } from '@/lib/studies/curve/batchPoint';

/**
 * The price of a whole batch that leaves a wanted profit. The grid is asked at two prices; between them profit and
 * price lie on a line, since fees are a share of the price and a fixed part.
 *
 * @param wanted the profit, from what the batch costs and the minutes it takes
 * @returns total without tax and price each as typed, unrounded; null where the grid gives no number, or where fees
 *   take the whole price
 */
export function priceForProfit(
  evaluate: BatchEvaluator,
  n: number,
  wanted: (point: BatchPoint) => number,
): { readonly price: number; readonly priceEach: number } | null {
  const [first] = evaluate([{ n, priceEach: 1 }]);
  if (first == null) return null;
  // A second price of the size of the cost, so that little is lost between the two.
  const far = 2 + (2 * first.fullCost) / n;
  const [second] = evaluate([{ n, priceEach: far }]);
  if (second == null) return null;
  const rise = second.profit - first.profit;
  if (!(rise > 1e-9 * far * n)) return null;
  const part = (wanted(first) - first.profit) / rise;
  const priceEach = 1 + (far - 1) * part;
  return { price: first.price + (second.price - first.price) * part, priceEach };
}
