import type { SupplierOffer } from '@/shared/schemas/making/supply';

type Tier = SupplierOffer['tiers'][number];

/** Noise of a division. */
const NOISE = 1e-9;

/** @returns prices by the quantity from which they are asked, rising; of two from one quantity the higher is last and counts */
export const risingTiers = (tiers: readonly Tier[]): readonly Tier[] =>
  tiers.toSorted((one, other) => one.from - other.from || one.each - other.each);

/**
 * The price a quantity falls under, in whatever order an offer lists them: [50 and more: 4.40, 1 and more: 4.80] asks 4.40
 * for each of 60.
 *
 * @returns one of the tiers itself; below all of them the one that begins first, null of none
 */
export function tierAt(tiers: readonly Tier[], quantity: number): Tier | null {
  const rising = risingTiers(tiers);
  return rising.findLast(({ from }) => from <= quantity + NOISE) ?? rising[0] ?? null;
}
