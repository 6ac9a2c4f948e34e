/** The largest batch a curve goes to: more than this is not made at a kitchen table. */
export const LARGEST_BATCH = 2000;

export type CurveRangeProblem =
  | { readonly kind: 'notWhole'; readonly value: number }
  | { readonly kind: 'underOne'; readonly from: number }
  | { readonly kind: 'fallsBack'; readonly from: number; readonly to: number }
  | { readonly kind: 'tooLarge'; readonly to: number; readonly largest: number };

/** @returns what keeps a range of batches from being drawn, or null. */
export function checkCurveRange(from: number, to: number): CurveRangeProblem | null {
  for (const value of [from, to]) if (!Number.isInteger(value)) return { kind: 'notWhole', value };
  if (from < 1) return { kind: 'underOne', from };
  if (to < from) return { kind: 'fallsBack', from, to };
  if (to > LARGEST_BATCH) return { kind: 'tooLarge', to, largest: LARGEST_BATCH };
  return null;
}
