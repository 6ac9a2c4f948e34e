import type { GridColumn } from './gridInput';
import type { GridRow } from './rowTypes';

/** One column of the cost sheet: one good piece of a size, in the batch the job asks for. */
export interface CostCase {
  readonly lineId: string;
  readonly size: string;
  /** Good pieces of this size. */
  readonly quantity: number;
  /** Good pieces of the line, all sizes. */
  readonly batch: number;
  /** Cost of one more piece, currency units, unrounded. */
  readonly incrementalCost: number;
}

/** Every row and every value of a costed job, unrounded, with what is needed to open any of them. */
export interface CostSheet {
  readonly currency: string;
  readonly rows: readonly GridRow[];
  readonly cases: readonly CostCase[];
  /** By row id: one value for each case, then the whole job's, null where a row has no whole-job value. */
  readonly values: Readonly<Record<string, readonly (number | null)[]>>;
  /** By row id: one value for each line. */
  readonly lineValues: Readonly<Record<string, readonly number[]>>;
  /** By row id: values that stand once for the job. */
  readonly jobValues: Readonly<Record<string, number>>;
  readonly lineIds: readonly string[];
  readonly inputs: {
    readonly job: GridColumn;
    readonly lines: readonly GridColumn[];
    readonly cases: readonly GridColumn[];
  };
  /** Whole job, currency units, unrounded. */
  readonly fullCost: number;
}

export class UnknownFigure extends ReferenceError {
  override readonly name = 'UnknownFigure';
}

/** @returns a whole-job value that must be there. */
export function wholeJob(sheet: CostSheet, rowId: string): number {
  const value = sheet.values[rowId]?.[sheet.cases.length];
  if (value == null) throw new UnknownFigure(`the cost sheet has no whole-job value for ${rowId}`);
  return value;
}

/** @returns the value of a case that must be there. */
export function caseValue(sheet: CostSheet, rowId: string, index: number): number {
  const value = sheet.values[rowId]?.[index];
  if (value == null) throw new UnknownFigure(`the cost sheet has no value for ${rowId} in case ${index}`);
  return value;
}
