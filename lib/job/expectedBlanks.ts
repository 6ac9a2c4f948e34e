import { splitWhole } from '@/shared/splitWhole';

/** Noise of a sum of shares. */
const NOISE = 1e-9;

/**
 * As many blanks as are expected to be drawn and no more: whole ones of one blank, over its sizes by largest remainder.
 *
 * @param drawn expected by size, spoiled ones among them, unrounded
 */
export const expectedBlanks = (drawn: readonly number[]): readonly number[] =>
  splitWhole(Math.ceil(drawn.reduce((sum, one) => sum + one, 0) - NOISE), drawn);
