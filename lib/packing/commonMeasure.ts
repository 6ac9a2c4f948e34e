import type { BoxKind } from './box';

/**
 * The largest length of which every side is a whole multiple: rows and columns of boxes have no other lengths, so
 * a room is of no use beyond the last multiple.
 *
 * @returns ticks
 */
export const commonMeasure = (kinds: readonly Pick<BoxKind, 'width' | 'height'>[]): number =>
  kinds.reduce((measure, { width, height }) => ofTwo(ofTwo(measure, width), height), 0);

/** Euclid's algorithm; 0 measures nothing and leaves the other. */
const ofTwo = (a: number, b: number): number => (b === 0 ? a : ofTwo(b, a % b));
