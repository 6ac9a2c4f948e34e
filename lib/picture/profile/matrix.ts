/** Of three rows and three columns. */
export type Matrix = readonly (readonly number[])[];

export const applied = (matrix: Matrix, vector: readonly number[]): readonly number[] =>
  matrix.map((row) => row.reduce((sum, value, column) => sum + value * (vector[column] ?? 0), 0));

export const turned = (matrix: Matrix): Matrix =>
  [0, 1, 2].map((column) => matrix.map((row) => row[column] ?? 0));

export const product = (left: Matrix, right: Matrix): Matrix =>
  turned(turned(right).map((column) => applied(left, column)));

/** @returns null where there is none. */
export function inverse(matrix: Matrix): Matrix | null {
  const [[a = 0, b = 0, c = 0] = [], [d = 0, e = 0, f = 0] = [], [g = 0, h = 0, i = 0] = []] = matrix;
  const whole = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  if (Math.abs(whole) < 1e-9) return null;
  return [
    [e * i - f * h, c * h - b * i, b * f - c * e],
    [f * g - d * i, a * i - c * g, c * d - a * f],
    [d * h - e * g, b * g - a * h, a * e - b * d],
  ].map((row) => row.map((value) => value / whole));
}
