import type { Setting } from './setting';

interface FittedStyle {
  /** What it has where all find room, points. */
  readonly size: number;
  readonly weight: 400 | 700;
  readonly widthPt: number;
}

/**
 * @returns the size in points, no more than asked, at which each of some texts stands in one line of a width: a price
 * that goes on in its next line would read as another.
 */
export function fittedSize(
  { lettering }: Setting,
  texts: readonly string[],
  { size, weight, widthPt }: FittedStyle,
): number {
  const widest = Math.max(0, ...texts.map((text) => lettering.measure(text, { size, weight })));
  // A little less than fits, or rounding breaks it all the same.
  return widest <= widthPt ? size : Math.floor(((size * widthPt) / widest) * 50) / 50;
}
