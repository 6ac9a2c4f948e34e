/** Which table of the grid a row stands in: once a job, once a line, or once a case (line × size × batch). */
export type RowTable = 'job' | 'line' | 'case';

export type RowUnit =
  | 'money'
  | 'money/h'
  | 'money/press'
  | 'money/sheet'
  | 'money/km'
  | 'min'
  | 'h'
  | 'mL'
  | 'mL/m2'
  | 'm2'
  | 'kW'
  | 'kWh'
  | 'km'
  | 'pieces'
  | 'sheets'
  | 'presses'
  | 'sessions'
  | 'designs'
  | 'share'
  | 'years'
  | 'yes or no'
  | (string & {});

/** Families of cost, by which the sheet is coloured and summed up in words. */
type RowFamily = 'materials' | 'time' | 'running' | 'loss' | 'house' | 'own' | 'price' | 'quantity';

/** How the whole-job column gets its value. */
type RowTotal =
  /** Sum over the cases of pieces × value. */
  | 'adds'
  /** The row's own formula, over the whole-job column. */
  | 'formula'
  /** The same in every case. */
  | 'first';

/** Rows that are written once and stand once for each placement, or once for each press the job heats. */
type RowRepeat = 'placement' | 'press';

/**
 * One row of the grid. In a formula `#` is the number of the placement or press, `SUM#(…)` adds its inside
 * over all of them, and `NEXT#(name)` is the row of the following placement, 1 after the last.
 */
export interface RowDefinition {
  readonly id: string;
  readonly table: RowTable;
  readonly label: string;
  readonly unit: RowUnit;
  readonly family: RowFamily;
  /** OpenFormula over row ids and named rates; null for a value that is filled in. */
  readonly formula: string | null;
  readonly repeat?: RowRepeat;
  /** Cases only; absent where a whole-job value has no meaning. */
  readonly total?: RowTotal;
  /**
   * How an opened sum of the whole job reads, for rows that add: a formula over the whole job's own values, in which
   * `SIZES(…)` is the sum over the sizes of pieces × value; `itself` where the row's formula holds there too. Read only
   * to open a figure, never to work one out. Absent: the sum over the sizes.
   */
  readonly whole?: 'itself' | (string & {});
  readonly says: string;
  /** A factor that is left out of an opened sum while it is 1. */
  readonly silentAtOne?: boolean;
  /** A summand that is left out of an opened sum while it is 0. */
  readonly silentAtZero?: boolean;
}

/** A row as it stands in a grid of given size. */
export interface GridRow extends RowDefinition {
  /** Number of the placement or press a repeated row stands for, from 1. */
  readonly slot?: number;
}
