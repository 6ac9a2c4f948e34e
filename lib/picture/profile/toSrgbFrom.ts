import { knownSpaces } from './knownColours';

type Pair = readonly [number, number];
type Matrix = readonly (readonly number[])[];

/** White of D65: IEC 61966-2-1. */
const D65: Pair = [0.3127, 0.329];
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
  const srgb = knownSpaces.find(({ name }) => name === 'sRGB')?.xy ?? [];
  const from = toXyz(primaries, white);
  const to = toXyz(srgb, D65);
  const back = to === null ? null : inverse(to);
  return from === null || back === null ? null : product(back, product(adaptation(white, D65), from));
}

const xyzOf = ([x, y]: Pair): readonly number[] => [x / y, 1, (1 - x - y) / y];

/** Columns of X, Y and Z, as strong as white needs them. */
function toXyz(primaries: readonly Pair[], white: Pair): Matrix | null {
  const columns = turned(primaries.map(xyzOf));
  const back = inverse(columns);
  if (back === null) return null;
  const shares = applied(back, xyzOf(white));
  return columns.map((row) => row.map((value, column) => value * (shares[column] ?? 0)));
}

function adaptation(from: Pair, to: Pair): Matrix {
  const [seen, wanted] = [applied(BRADFORD, xyzOf(from)), applied(BRADFORD, xyzOf(to))];
  const scaled = BRADFORD.map((row, index) =>
    row.map((value) => (value * (wanted[index] ?? 0)) / (seen[index] ?? 1)),
  );
  return product(inverse(BRADFORD) ?? [], scaled);
}

const applied = (matrix: Matrix, vector: readonly number[]): readonly number[] =>
  matrix.map((row) => row.reduce((sum, value, column) => sum + value * (vector[column] ?? 0), 0));
const turned = (matrix: Matrix): Matrix => [0, 1, 2].map((column) => matrix.map((row) => row[column] ?? 0));
const product = (left: Matrix, right: Matrix): Matrix =>
  turned(turned(right).map((column) => applied(left, column)));

function inverse(matrix: Matrix): Matrix | null {
  const [[a = 0, b = 0, c = 0] = [], [d = 0, e = 0, f = 0] = [], [g = 0, h = 0, i = 0] = []] = matrix;
  const whole = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  if (Math.abs(whole) < 1e-9) return null;
  return [
    [e * i - f * h, c * h - b * i, b * f - c * e],
    [f * g - d * i, a * i - c * g, c * d - a * f],
    [d * h - e * g, b * g - a * h, a * e - b * d],
  ].map((row) => row.map((value) => value / whole));
}
