import type { ConfigParams } from 'hyperformula';
import {
  AlwaysDense,
  CellError,
  DetailedCellError,
  ErrorType,
  FunctionArgumentType,
  FunctionPlugin,
  HyperFormula,
} from 'hyperformula';
import * as rounding from './sheetRounding';

/*
 * The only file that knows the formula engine. Its options are pinned: OpenFormula's argument separator, no
 * rounding of its own, no dates or grouped numbers guessed from text, no undo history.
 */
const options: Partial<ConfigParams> = {
  licenseKey: 'gpl-v3',
  functionArgSeparator: ';',
  decimalSeparator: '.',
  thousandSeparator: '',
  smartRounding: false,
  precisionRounding: 14,
  chooseAddressMappingPolicy: new AlwaysDense(),
  useArrayArithmetic: false,
  evaluateNullToZero: false,
  caseSensitive: false,
  undoLimit: 0,
  useStats: false,
  dateFormats: [],
  timeFormats: [],
  currencySymbol: [],
};

const number = { argumentType: FunctionArgumentType.NUMBER } as const;
const optional = { argumentType: FunctionArgumentType.NUMBER, optionalArg: true } as const;
const zero = { argumentType: FunctionArgumentType.NUMBER, defaultValue: 0 } as const;

type Argument = typeof number | typeof optional | typeof zero;
type Calculation = (...values: readonly (number | undefined)[]) => number | null;

const corrected: Readonly<Record<string, readonly [readonly Argument[], Calculation]>> = {
  ROUND: [[number, zero], (value = 0, digits = 0) => rounding.round(value, digits)],
  ROUNDUP: [[number, zero], (value = 0, digits = 0) => rounding.roundUp(value, digits)],
  ROUNDDOWN: [[number, zero], (value = 0, digits = 0) => rounding.roundDown(value, digits)],
  TRUNC: [[number, zero], (value = 0, digits = 0) => rounding.roundDown(value, digits)],
  INT: [[number], (value = 0) => rounding.int(value)],
  CEILING: [[number, optional, zero], (value = 0, step, mode = 0) => rounding.ceiling(value, step, mode)],
  FLOOR: [[number, optional, zero], (value = 0, step, mode = 0) => rounding.floor(value, step, mode)],
  MROUND: [[number, number], (value = 0, step = 0) => rounding.mround(value, step)],
  MOD: [[number, number], (value = 0, divisor = 0) => rounding.mod(value, divisor)],
  QUOTIENT: [[number, number], (value = 0, divisor = 0) => rounding.quotient(value, divisor)],
};

class DecimalRounding extends FunctionPlugin {
  static override implementedFunctions = Object.fromEntries(
    Object.entries(corrected).map(([name, [parameters]]) => [
      name,
      { method: name.toLowerCase(), parameters: [...parameters] },
    ]),
  );
}

for (const [name, [, calculate]] of Object.entries(corrected)) {
  Object.defineProperty(DecimalRounding.prototype, name.toLowerCase(), {
    value: function run(this: DecimalRounding, ast: Call['ast'], state: Call['state']) {
      return this.runFunction(ast.args, state, this.metadata(name), (...values: (number | undefined)[]) => {
        if (values.some((value) => value !== undefined && !Number.isFinite(value)))
          return new CellError(ErrorType.NUM);
        const result = calculate(...values);
        return (
          result ??
          new CellError(name === 'MOD' || name === 'QUOTIENT' ? ErrorType.DIV_BY_ZERO : ErrorType.NUM)
        );
      });
    },
  });
}

interface Call {
  readonly ast: { readonly args: Parameters<FunctionPlugin['runFunction']>[0] };
  readonly state: Parameters<FunctionPlugin['runFunction']>[1];
}

HyperFormula.registerFunctionPlugin(DecimalRounding, {
  enGB: Object.fromEntries(Object.keys(corrected).map((name) => [name, name])),
});

/** An error value of the engine, by its OpenFormula name (#DIV/0!, #NUM!, #ERROR! for an unreadable formula). */
interface EngineError {
  readonly error: string;
}

export type EngineValue = number | EngineError;

/** A table of the workbook: rows of cells, each a finite number or a formula with its equals sign. */
export type EngineTable = readonly (readonly (number | string)[])[];

/** A built workbook that is refilled, never rebuilt: building is two orders of magnitude slower. */
export class Workbook {
  readonly #engine: HyperFormula;
  /** What was filled in last, by sheet. */
  readonly #filled = new Map<string, readonly (readonly number[])[]>();

  /**
   * @param tables cells by sheet name
   * @param names named expressions and the formulas they stand for
   */
  constructor(tables: Readonly<Record<string, EngineTable>>, names: Readonly<Record<string, string>>) {
    this.#engine = HyperFormula.buildFromSheets(
      Object.fromEntries(Object.entries(tables).map(([name, rows]) => [name, rows.map((row) => [...row])])),
      options,
      Object.entries(names).map(([name, expression]) => ({ name, expression })),
    );
  }

  /**
   * Writes blocks of numbers, each from its upper left cell, and recalculates once. Rows that stand there already
   * are left alone, so that only what depends on a change is worked out anew.
   */
  fill(
    blocks: readonly {
      readonly sheet: string;
      readonly column: number;
      readonly values: readonly (readonly number[])[];
    }[],
  ): void {
    this.#engine.batch(() => {
      for (const block of blocks) {
        const sheet = this.#sheet(block.sheet);
        const before = this.#filled.get(block.sheet);
        block.values.forEach((row, index) => {
          if (sameNumbers(row, before?.[index])) return;
          this.#engine.setCellContents({ sheet, row: index, col: block.column }, [[...row]]);
        });
        this.#filled.set(block.sheet, block.values);
      }
    });
  }

  /** @returns the values of a sheet, row by row. */
  read(sheet: string): readonly (readonly EngineValue[])[] {
    return this.#engine.getSheetValues(this.#sheet(sheet)).map((row) => row.map(toValue));
  }

  /** @returns the values of one row of a sheet, up to its last column. */
  readRow(sheet: string, row: number): readonly EngineValue[] {
    const id = this.#sheet(sheet);
    const { width } = this.#engine.getSheetDimensions(id);
    const start = { sheet: id, row, col: 0 };
    const [values = []] = this.#engine.getRangeValues({ start, end: { ...start, col: width - 1 } });
    return values.map(toValue);
  }

  #sheet(name: string): number {
    const id = this.#engine.getSheetId(name);
    if (id === undefined) throw new RangeError(`the workbook has no sheet called ${name}`);
    return id;
  }
}

/** @returns whether the engine can read a formula, given with its equals sign. */
export function isReadableFormula(formula: string): boolean {
  return scratchPad().validateFormula(formula);
}

let scratch: HyperFormula | undefined;

function scratchPad(): HyperFormula {
  scratch ??= HyperFormula.buildFromArray([[0]], options);
  return scratch;
}

function toValue(value: unknown): EngineValue {
  if (typeof value === 'number') return Number.isFinite(value) ? value : { error: '#NUM!' };
  if (typeof value === 'boolean') return value ? 1 : 0;
  if (value instanceof DetailedCellError) return { error: value.value };
  return { error: '#VALUE!' };
}

const sameNumbers = (row: readonly number[], other: readonly number[] | undefined): boolean =>
  other !== undefined && row.length === other.length && row.every((value, index) => value === other[index]);
