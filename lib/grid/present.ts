import { UnknownFigure } from './costSheet';
import type { ColumnValues } from './evaluateGrid';

/** @returns a value of a column that must be there: an evaluation without faults has one for every row. */
export function present(column: ColumnValues | undefined, rowId: string): number {
  const value = column?.[rowId];
  if (value === undefined) throw new UnknownFigure(`the grid gave no value for ${rowId}`);
  return value;
}
