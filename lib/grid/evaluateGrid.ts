import type { OwnRow } from '@/shared/schemas/ownRow';
import type { EngineValue, Workbook } from './engine';
import { expandRows, type GridRows, type GridShape } from './expandRows';
import type { GridColumn, GridFilling } from './gridInput';
import { buildGridWorkbook, CASE, JOB, LINE } from './gridWorkbook';
import type { GridRow } from './rowTypes';

export type ColumnValues = Readonly<Record<string, number>>;

export interface GridFault {
  readonly rowId: string;
  readonly table: GridRow['table'];
  /** Line and case in the filling; absent for the job's own table and the whole-job column. */
  readonly line?: number;
  readonly case?: number;
  /** OpenFormula's name of the error. */
  readonly error: string;
}

export interface GridValues {
  readonly rows: GridRows;
  readonly job: ColumnValues;
  readonly lines: readonly ColumnValues[];
  /** By line, then case. */
  readonly cases: readonly (readonly ColumnValues[])[];
  readonly whole: ColumnValues;
  /** Cells that came out as an error; their values are left out. */
  readonly faults: readonly GridFault[];
}

/** Most workbooks kept; a maker moves between a few shapes of job. */
const KEPT = 12;

/**
 * Keeps built workbooks and refills them. One instance a thread; it holds no result between two calls.
 */
export class Grid {
  readonly #kept = new Map<string, { readonly rows: GridRows; readonly workbook: Workbook }>();

  /**
   * Evaluates all rows for a filling.
   *
   * @param shape placements, presses and own rows the filling was made for
   * @param filling finite numbers for every input row
   * @param atLeastCases columns a line is given at the least, so that fillings of other lengths share a workbook
   * @returns values unrounded, of the wanted rows of the cases only where the shape names some; cells in error are
   *   named in `faults`
   * @throws RangeError when an input is missing or not finite: that is a fault of the caller
   */
  evaluate(shape: GridShape, filling: GridFilling, atLeastCases = 0): GridValues {
    const lines = filling.lines.length;
    const width = roundUpToStep(Math.max(atLeastCases, ...filling.lines.map((line) => line.cases.length)));
    const { rows, workbook } = this.#workbook(shape, lines, width);
    const first = filling.lines[0];
    if (first === undefined) throw new RangeError('a grid needs at least one line');
    const caseColumns = filling.lines.flatMap((line) => {
      const spare = line.cases[0];
      if (spare === undefined) throw new RangeError(`line ${line.lineId} has no case`);
      const filler = { ...spare.inputs, quantity: { value: 0, origin: 'counted' } as const };
      return Array.from({ length: width }, (_, index) => line.cases[index]?.inputs ?? filler);
    });
    workbook.fill([
      { sheet: JOB, column: 0, values: block(rows.job, [filling.job]) },
      {
        sheet: LINE,
        column: 0,
        values: block(
          rows.line,
          filling.lines.map((line) => line.inputs),
        ),
      },
      { sheet: CASE, column: 0, values: block(rows.case, caseColumns) },
    ]);
    return readBack(rows, workbook, filling, width, shape.wanted);
  }

  #workbook(shape: GridShape, lines: number, casesPerLine: number) {
    const key = JSON.stringify([
      shape.placements,
      shape.presses,
      shape.wanted ?? 'all',
      shape.ownRows.map(formulaPart),
      lines,
      casesPerLine,
    ]);
    const kept = this.#kept.get(key);
    if (kept !== undefined) {
      this.#kept.delete(key);
      this.#kept.set(key, kept);
      return kept;
    }
    const rows = expandRows(shape);
    const made = { rows, workbook: buildGridWorkbook(rows, { lines, casesPerLine }) };
    this.#kept.set(key, made);
    const oldest = this.#kept.keys().next();
    if (this.#kept.size > KEPT && oldest.done !== true) this.#kept.delete(oldest.value);
    return made;
  }
}

/** An own row but for its amount, which is filled in. */
function formulaPart(row: OwnRow): unknown {
  return [
    row.id,
    row.label,
    row.outOfPocket,
    row.cost.kind === 'formula' ? row.cost.formula : row.cost.driver,
  ];
}

/** Widths come in a few steps, so that one more size does not build a new workbook. */
function roundUpToStep(cases: number): number {
  const steps = [8, 16, 32, 64, 128, 256, 512];
  return steps.find((step) => step >= cases) ?? cases;
}

function block(rows: readonly GridRow[], columns: readonly GridColumn[]): readonly (readonly number[])[] {
  return rows
    .filter((row) => row.formula === null)
    .map((row) =>
      columns.map((column) => {
        const value = column[row.id]?.value;
        if (value === undefined || !Number.isFinite(value)) {
          throw new RangeError(`the grid needs a finite number for ${row.id} and was given ${value}`);
        }
        return value;
      }),
    );
}

/** @param wanted rows of the cases that are read and nothing else; absent: every row of every table */
function readBack(
  rows: GridRows,
  workbook: Workbook,
  filling: GridFilling,
  width: number,
  wanted: readonly string[] | undefined,
): GridValues {
  const faults: GridFault[] = [];
  const collect = (
    table: GridRow['table'],
    place: { line?: number; case?: number },
    column: number,
    cells: readonly (readonly EngineValue[])[],
    whole = false,
  ) => {
    const values: Record<string, number> = {};
    rows[table].forEach((row, index) => {
      if (whole && row.total === undefined) return;
      const value = cells[index]?.[column];
      if (typeof value === 'number') values[row.id] = value;
      else if (value !== undefined) faults.push({ rowId: row.id, table, ...place, error: value.error });
    });
    return values;
  };
  const jobCells = wanted === undefined ? workbook.read(JOB) : [];
  const lineCells = wanted === undefined ? workbook.read(LINE) : [];
  const caseCells =
    wanted === undefined
      ? workbook.read(CASE)
      : rows.case.map(({ id }, index) => (wanted.includes(id) ? workbook.readRow(CASE, index) : []));
  return {
    rows,
    job: collect('job', {}, 0, jobCells),
    lines: filling.lines.map((_, line) => collect('line', { line }, line, lineCells)),
    cases: filling.lines.map((input, line) =>
      input.cases.map((_, index) => collect('case', { line, case: index }, line * width + index, caseCells)),
    ),
    whole: collect('case', {}, filling.lines.length * width, caseCells, true),
    faults,
  };
}
