import type { BatchEvaluator, BatchPrice } from '@/lib/studies/curve/batchEvaluator';
import type { BatchPoint } from '@/lib/studies/curve/batchPoint';

/** Margins this far apart are one. */
const NOISE = 1e-12;
/** How far a batch is looked for unless told. */
export const SEARCHED_UP_TO = 500;
/** Batches asked at once; most answers lie among the first. */
const PART = 32;

/**
 * The first batch at which a price leaves a margin, asked of every batch in turn: steps of sheets and sessions keep
 * margins from rising all the way.
 *
 * @param margin share of the price, below 1
 * @returns null where no batch up to `upTo` does
 */
export function firstBatchThatPays(
  evaluate: BatchEvaluator,
  priceEach: BatchPrice,
  margin = 0,
  upTo: number = SEARCHED_UP_TO,
): number | null {
  const pays = (point: BatchPoint | null) => point !== null && point.margin >= margin - NOISE;
  for (let from = 1; from <= upTo; from += PART) {
    const wanted = Array.from({ length: Math.min(PART, upTo - from + 1) }, (_, step) => ({
      n: from + step,
      priceEach,
    }));
    const found = evaluate(wanted).findIndex(pays);
    if (found >= 0) return from + found;
  }
  return null;
}
