import type { Box, BoxKind, LaidBox } from './box';
import { boxSizes } from './boxSizes';
import { fillSearch } from './fillSearch';

/** Larger boxes first by one of these. */
const orders: readonly ((box: Box) => number)[] = [...boxSizes, ({ width }) => width, ({ height }) => height];

/**
 * Looks for a layout of all boxes in one room with hardly a gap, in several orders and both ways up: where one
 * search is lost among thousands of skylines, another often goes straight to the end
 * (C. Gomes, B. Selman, N. Crato, H. Kautz, Journal of Automated Reasoning 24, 67-100, 2000).
 *
 * @param steps skylines looked at by all searches together, at most
 */
export function fillBin(
  bin: { readonly width: number; readonly height: number },
  kinds: readonly BoxKind[],
  steps: number,
): readonly LaidBox[] | null {
  const turnedBin = { width: bin.height, height: bin.width };
  const turnedKinds = kinds.map((kind) => ({ ...kind, width: kind.height, height: kind.width }));
  const each = Math.floor(steps / (2 * orders.length));
  for (const order of orders) {
    const upright = fillSearch(bin, kinds, each, order);
    if (upright !== null) return upright;
    const turned = fillSearch(turnedBin, turnedKinds, each, order);
    if (turned !== null) {
      return turned.map(({ kind, x, y, width, height }) => ({
        kind,
        x: y,
        y: x,
        width: height,
        height: width,
      }));
    }
  }
  return null;
}
