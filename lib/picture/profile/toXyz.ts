import type { Pair } from './knownColours';
import { applied, inverse, type Matrix, turned } from './matrix';

export const xyzOf = ([x, y]: Pair): readonly number[] => [x / y, 1, (1 - x - y) / y];

/**
 * @param primaries x and y of red, green and blue
 * @returns from light of them to X, Y and Z, each as strong as white needs it; null where they span no colours
 */
export function toXyz(primaries: readonly Pair[], white: Pair): Matrix | null {
  const columns = turned(primaries.map(xyzOf));
  const back = inverse(columns);
  if (back === null) return null;
  const shares = applied(back, xyzOf(white));
  return columns.map((row) => row.map((value, column) => value * (shares[column] ?? 0)));
}
