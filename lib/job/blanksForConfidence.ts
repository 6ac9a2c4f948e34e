import { type Cover, cheapestCover } from './cheapestCover';

/** Good pieces wanted of a size, and the chance that a blank of it ends good. */
interface Wanted {
  /** Whole, 0 or more. */
  readonly pieces: number;
  /** Above 0, up to 1. */
  readonly chance: number;
  /** What a blank costs. */
  readonly price: number;
}

/**
 * How many blanks of each size of one job make every size whole with a wanted confidence.
 *
 * @param confidence above 0, below 1
 */
export const blanksForConfidence = (wanted: readonly Wanted[], confidence: number): Cover =>
  cheapestCover(
    wanted.map(({ pieces, chance, price }) => ({ wanted: [{ pieces, chance }], price })),
    confidence,
  );
