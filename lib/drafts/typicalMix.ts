import { splitWhole } from '@/shared/splitWhole';

/** Pieces a new job begins with: enough for a price that means something, few enough for an evening. */
export const FIRST_PIECES = 12;

/** Share of each adult size in an order of shirts, percent, in the middle of what is common; from memory. */
const adultCurve: ReadonlyMap<string, number> = new Map([
  ['XS', 1],
  ['S', 11],
  ['M', 24.5],
  ['L', 30],
  ['XL', 21.5],
  ['2XL', 9],
  ['3XL', 4],
]);

/**
 * Pieces in the mix that is typical of their sizes; sizes outside the adult curve share alike. While there are
 * pieces enough each size has one, so that each has a price of its own.
 *
 * @param sizes names of the sizes, in the order of the blank
 * @param pieces whole pieces in all
 * @example typicalMix(['S', 'M', 'L', 'XL', '2XL', '3XL'], 12).map(({ quantity }) => quantity) // => [1, 3, 4, 2, 1, 1]
 */
export function typicalMix(
  sizes: readonly string[],
  pieces: number,
): { readonly size: string; readonly quantity: number }[] {
  const weights = sizes.every((size) => adultCurve.has(size))
    ? sizes.map((size) => adultCurve.get(size) ?? 0)
    : sizes.map(() => 1);
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  const exact = weights.map((weight) => (all > 0 ? (pieces * weight) / all : 0));
  const parts = splitWhole(pieces, exact);
  if (pieces >= sizes.length) fillEmpty(parts, exact);
  return sizes.map((size, at) => ({ size, quantity: parts[at] ?? 0 }));
}

/** Each empty size takes one from the size that was rounded up most. */
function fillEmpty(parts: number[], exact: readonly number[]): void {
  for (const [at, part] of parts.entries()) {
    if (part > 0) continue;
    const [from] = parts
      .map((other, index) => ({ index, other, over: other - (exact[index] ?? 0) }))
      .filter(({ other }) => other > 1)
      .sort((one, other) => other.over - one.over || one.index - other.index);
    if (from === undefined) return;
    parts[from.index] = from.other - 1;
    parts[at] = 1;
  }
}
