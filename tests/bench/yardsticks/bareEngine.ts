import { HyperFormula } from 'hyperformula';
import type { TableSize } from './cellsAsked';

export const BARE_ENGINE = 'the bare formula engine on as many cells';

/**
 * The formula engine alone: for each question a plain sheet of as many rows and columns as each table has, of sums
 * of two cells. Every input is set anew in one batch, every value is read.
 */
export class BareEngine {
  readonly #workbooks = new Map<string, HyperFormula>();
  readonly #asked: readonly { readonly workbook: HyperFormula; readonly tables: readonly TableSize[] }[];
  #step = 0;

  constructor(asked: readonly (readonly TableSize[])[]) {
    this.#asked = asked.map((all) => {
      const tables = all.filter(({ inputs }) => inputs > 0);
      const key = JSON.stringify(tables);
      const workbook = this.#workbooks.get(key) ?? build(tables);
      this.#workbooks.set(key, workbook);
      return { workbook, tables };
    });
  }

  /** @returns how many values were read */
  refill(): number {
    let read = 0;
    for (const { workbook, tables } of this.#asked) {
      this.#step += 1;
      workbook.batch(() => {
        tables.forEach((table, sheet) => {
          workbook.setCellContents({ sheet, row: 0, col: 0 }, inputsOf(table, this.#step));
        });
      });
      tables.forEach((_, sheet) => {
        for (const row of workbook.getSheetValues(sheet)) read += row.length;
      });
    }
    return read;
  }
}

function build(tables: readonly TableSize[]): HyperFormula {
  const sheets = tables.map((table, index) => [`t${index}`, [...inputsOf(table, 0), ...formulasOf(table)]]);
  // Without its undo history, which the product does not keep either.
  return HyperFormula.buildFromSheets(Object.fromEntries(sheets), { licenseKey: 'gpl-v3', undoLimit: 0 });
}

const inputsOf = ({ inputs, columns }: TableSize, step: number): number[][] =>
  Array.from({ length: inputs }, (_, row) =>
    Array.from({ length: columns }, (_, column) => 1 + row + column / 8 + step / 1e4),
  );

/** Each is the cell above it and an input of its column. */
const formulasOf = ({ inputs, formulas, columns }: TableSize): string[][] =>
  Array.from({ length: formulas }, (_, index) =>
    Array.from({ length: columns }, (_, column) => {
      const name = columnName(column);
      return `=${name}${inputs + index}+${name}${(index % inputs) + 1}*0.5`;
    }),
  );

/** A, B … Z, AA, AB … */
function columnName(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : columnName(Math.floor(index / 26) - 1) + last;
}
