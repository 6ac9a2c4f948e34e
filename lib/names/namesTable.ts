import type { CellRow } from './cells';

/** What stands in a column. */
export type ColumnPart = 'name' | 'size' | 'number' | 'pieces' | 'nothing';

/** A table of names as it was pasted or read, and what is taken from which column: the maker may change all of it. */
export interface NamesTable {
  readonly rows: readonly CellRow[];
  /** For each column, by its place; several names are joined, such as first and last. */
  readonly columns: readonly ColumnPart[];
  /** Whether the first row names the columns. */
  readonly hasHead: boolean;
  /** Lines on which a quote opens that never closes. */
  readonly openQuotes: readonly number[];
  /** Cut into cells by the signs and gaps of a message, where no sign parts all of it. */
  readonly isMessage: boolean;
}

/** The same table with another part in a column. */
export const withColumn = (table: NamesTable, column: number, part: ColumnPart): NamesTable => ({
  ...table,
  columns: table.columns.map((before, at) => (at === column ? part : before)),
});

/** The same table with another text in a cell; the row is found by the line it begins on. */
export const withCell = (table: NamesTable, line: number, column: number, text: string): NamesTable => ({
  ...table,
  rows: table.rows.map((row) =>
    row.line === line
      ? { ...row, cells: table.columns.map((_, at) => (at === column ? text : (row.cells[at] ?? ''))) }
      : row,
  ),
});

/** The rows that are of people. */
export const peopleRows = ({ rows, hasHead }: NamesTable): readonly CellRow[] =>
  hasHead ? rows.slice(1) : rows;
