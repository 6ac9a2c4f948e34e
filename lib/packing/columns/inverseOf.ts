import { at } from '@/lib/packing/at';

/** @returns the inverse of a square matrix, row by row, by Gauss and Jordan with the largest pivots. */
export function inverseOf(rows: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const size = rows.length;
  const left = [...rows];
  const right: (readonly number[])[] = rows.map((_, row) => rows.map((__, kind) => (row === kind ? 1 : 0)));
  for (let column = 0; column < size; column += 1) {
    let best = column;
    for (let row = column + 1; row < size; row += 1) {
      if (Math.abs(at(at(left, row), column)) > Math.abs(at(at(left, best), column))) best = row;
    }
    for (const matrix of [left, right]) {
      const moved = at(matrix, best);
      matrix[best] = at(matrix, column);
      matrix[column] = moved;
    }
    const pivot = at(at(left, column), column);
    for (const matrix of [left, right]) matrix[column] = at(matrix, column).map((value) => value / pivot);
    for (let row = 0; row < size; row += 1) {
      const factor = at(at(left, row), column);
      if (row === column || factor === 0) continue;
      for (const matrix of [left, right]) {
        const above = at(matrix, column);
        matrix[row] = at(matrix, row).map((value, index) => value - factor * at(above, index));
      }
    }
  }
  return right;
}
