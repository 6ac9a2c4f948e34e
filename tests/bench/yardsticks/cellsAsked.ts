import { Grid, type GridValues } from '@/lib/grid/evaluateGrid';
import type { GridShape } from '@/lib/grid/expandRows';
import type { GridFilling } from '@/lib/grid/gridInput';

/** How large a table of the grid is: columns of so many inputs and so many formulas. */
export interface TableSize {
  readonly inputs: number;
  readonly formulas: number;
  readonly columns: number;
}

/** @returns the tables of every question that `run` puts to the grid, question by question. */
export function cellsAsked(run: (grid: Grid) => unknown): readonly (readonly TableSize[])[] {
  const grid = new CountedGrid();
  run(grid);
  return grid.asked;
}

class CountedGrid extends Grid {
  readonly asked: (readonly TableSize[])[] = [];

  override evaluate(shape: GridShape, filling: GridFilling, atLeastCases?: number): GridValues {
    const values = super.evaluate(shape, filling, atLeastCases);
    const { job, line, case: cases } = values.rows;
    const ofOneCase = filling.lines.reduce((sum, each) => sum + each.cases.length, 0);
    this.asked.push([
      sizeOf(job, 1),
      sizeOf(line, filling.lines.length),
      // One more is the whole job. Spare columns that the product keeps are no part of the question.
      sizeOf(cases, ofOneCase + 1),
    ]);
    return values;
  }
}

function sizeOf(rows: readonly { readonly formula: string | null }[], columns: number): TableSize {
  const inputs = rows.filter(({ formula }) => formula === null).length;
  return { inputs, formulas: rows.length - inputs, columns };
}
