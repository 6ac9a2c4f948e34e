import { expect, test } from 'vitest';
import { BareEngine } from './bareEngine';

test('the bare engine fills and reads every cell of every question, also of tables of the same size', () => {
  const table = { inputs: 2, formulas: 3, columns: 28 };
  const small = { inputs: 1, formulas: 0, columns: 1 };
  // 5 rows × 28 columns and one cell; then the 5 × 28 alone, twice.
  expect(new BareEngine([[table, small], [table], [table]]).refill()).toBe(140 + 1 + 140 + 140);
});

test('a table without inputs has nothing to refill', () => {
  expect(new BareEngine([[{ inputs: 0, formulas: 0, columns: 4 }]]).refill()).toBe(0);
});
