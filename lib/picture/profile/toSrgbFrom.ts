import { type Pair, srgbXy } from './knownColours';
import { applied, inverse, type Matrix, product } from './matrix';
import { toXyz, xyzOf } from './toXyz';

const [D65, ...SRGB] = srgbXy;
/* Lam's and Rigg's matrix: ICC.1:2022, annex E. */
const BRADFORD: Matrix = [
  [0.8951, 0.2664, -0.1614],
  [-0.7502, 1.7135, 0.0367],
  [0.0389, -0.0685, 1.0296],
];

/**
 * @param xy of white, red, green and blue
 * @returns from light of these primaries to that of sRGB; null where they span no colours
 */
export function toSrgbFrom([white = D65, ...primaries]: readonly Pair[]): Matrix | null {
  const from = toXyz(primaries, white);
  const to = toXyz(SRGB, D65);
  const back = to === null ? null : inverse(to);
  return from === null || back === null ? null : product(back, product(adaptation(white, D65), from));
}

function adaptation(from: Pair, to: Pair): Matrix {
  const [seen, wanted] = [applied(BRADFORD, xyzOf(from)), applied(BRADFORD, xyzOf(to))];
  const scaled = BRADFORD.map((row, index) =>
    row.map((value) => (value * (wanted[index] ?? 0)) / (seen[index] ?? 1)),
  );
  return product(inverse(BRADFORD) ?? [], scaled);
}
