import { type EngineTable, Workbook } from './engine';
import type { GridRows } from './expandRows';
import { joinTokens, tokenizeFormula } from './tokenizeFormula';

/** Sheets of the workbook, one a table. */
export const JOB = 'Job';
export const LINE = 'Line';
export const CASE = 'Case';

interface GridSize {
  readonly lines: number;
  /** Case columns kept for each line. */
  readonly casesPerLine: number;
}

/**
 * Lays the rows out as a workbook: one column for the job, one for each line, `casesPerLine` for the cases of
 * each line and a last one for the whole job. Every formula of a case reads its own column, the column of its
 * line, and the job's values by name.
 */
export function buildGridWorkbook(rows: GridRows, size: GridSize): Workbook {
  const rowOf = (table: 'job' | 'line' | 'case') =>
    new Map(rows[table].map((row, index) => [row.id, index + 1]));
  const at = { job: rowOf('job'), line: rowOf('line'), case: rowOf('case') };
  const caseCount = size.lines * size.casesPerLine;

  const address = (lineColumn: string | null, caseColumn: string | null) => (name: string) => {
    if (at.job.has(name)) return name;
    const line = at.line.get(name);
    if (line !== undefined && lineColumn !== null)
      return caseColumn === null ? `${lineColumn}${line}` : `${LINE}!${lineColumn}${line}`;
    const row = at.case.get(name);
    if (row !== undefined && caseColumn !== null) return `${caseColumn}${row}`;
    throw new ReferenceError(`a formula names ${name}, which this column cannot see`);
  };

  const job: EngineTable = rows.job.map((row) => [cell(row.formula, address(null, null))]);
  const line: EngineTable = rows.line.map((row) =>
    times(size.lines, (index) => cell(row.formula, address(letters(index), null))),
  );
  const totalColumn = letters(caseCount);
  const everyCase = (row: number) => `A${row}:${letters(caseCount - 1)}${row}`;
  const quantityRow = at.case.get('quantity') ?? 0;
  const cases: EngineTable = rows.case.map((row) => {
    const own = at.case.get(row.id) ?? 0;
    const columns = times(caseCount, (index) =>
      cell(row.formula, address(letters(Math.floor(index / size.casesPerLine)), letters(index))),
    );
    const total = (): number | string => {
      switch (row.total) {
        case 'adds':
          return `=SUMPRODUCT(${everyCase(quantityRow)};${everyCase(own)})`;
        case 'first':
          return `=A${own}`;
        case 'formula':
          return cell(row.formula, address(null, totalColumn));
        case undefined:
          return 0;
        default:
          return row.total satisfies never;
      }
    };
    return [...columns, total()];
  });
  const names = Object.fromEntries(rows.job.map((row, index) => [row.id, `=${JOB}!$A$${index + 1}`]));
  return new Workbook({ [JOB]: job, [LINE]: line, [CASE]: cases }, names);
}

/** A formula with each name replaced by where its value stands; 1 where a value will be filled in. */
function cell(formula: string | null, addressOf: (name: string) => string): number | string {
  if (formula === null) return 1;
  const text = joinTokens(tokenizeFormula(formula), (token) =>
    token.kind === 'name' ? addressOf(token.text) : token.text,
  );
  return `=${text}`;
}

function times<T>(count: number, make: (index: number) => T): readonly T[] {
  return Array.from({ length: count }, (_, index) => make(index));
}

/** Column letters: 0 is A, 26 is AA. */
function letters(index: number): string {
  const rest = Math.floor(index / 26) - 1;
  return (rest >= 0 ? letters(rest) : '') + String.fromCharCode(65 + (index % 26));
}
