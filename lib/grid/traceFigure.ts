import type { CostSheet } from './costSheet';
import type { GridInput } from './gridInput';
import type { GridRow } from './rowTypes';
import { namesIn, tokenizeFormula } from './tokenizeFormula';

/** Names one figure of a cost sheet. */
export interface FigureRef {
  readonly rowId: string;
  /** Index into the cases; absent for the whole job and for values of a line or the job. */
  readonly case?: number;
  /** Index of the line, for values that stand once a line. */
  readonly line?: number;
}

export type TracePart =
  | {
      readonly kind: 'operand';
      readonly ref: FigureRef;
      readonly label: string;
      readonly value: number;
      readonly unit: string;
    }
  | { readonly kind: 'number'; readonly text: string }
  | { readonly kind: 'sign'; readonly text: string }
  | { readonly kind: 'function'; readonly text: string };

/** Adds its row up over the sizes; stands only in the formulas by which a whole job is opened. */
const OVER_SIZES = 'SIZES';

export interface Trace {
  readonly ref: FigureRef;
  readonly label: string;
  readonly unit: string;
  /** Unrounded. */
  readonly value: number;
  /** What the row is, in one sentence. */
  readonly says: string;
  /** `typed` ends the way down: the value, its origin and date stand in `input`. */
  readonly kind: 'typed' | 'formula' | 'sum' | 'same';
  readonly input?: GridInput;
  readonly parts: readonly TracePart[];
  /** The formula as the engine has it; absent for typed values. */
  readonly formula?: string;
}

/**
 * Opens one figure to its sum: the formula in words, each operand with its value and the way to open it in turn,
 * down to what the maker typed.
 *
 * @returns the trace, or null for a figure the sheet does not have
 */
export function traceFigure(sheet: CostSheet, ref: FigureRef): Trace | null {
  const row = sheet.rows.find(({ id }) => id === ref.rowId);
  const value = row === undefined ? null : figureValue(sheet, row, ref);
  if (row === undefined || value === null) return null;
  const base = { ref, label: row.label, unit: row.unit, value, says: row.says };
  if (row.table === 'case' && ref.case === undefined && row.total !== 'formula') {
    return row.total === 'first' && row.formula !== null
      ? {
          ...base,
          kind: 'formula',
          formula: row.formula,
          parts: formulaParts(sheet, row.formula, { ...ref, case: 0 }),
        }
      : row.total === 'first'
        ? { ...base, kind: 'same', parts: [operand(sheet, row, { rowId: row.id, case: 0 })] }
        : wholeTrace(sheet, row, base);
  }
  if (row.formula === null) {
    const input = inputOf(sheet, row, ref);
    return { ...base, kind: 'typed', parts: [], ...(input === undefined ? {} : { input }) };
  }
  return { ...base, kind: 'formula', formula: row.formula, parts: formulaParts(sheet, row.formula, ref) };
}

function formulaParts(sheet: CostSheet, formula: string, from: FigureRef): readonly TracePart[] {
  const tokens = tokenizeFormula(formula);
  const parts = tokens.flatMap((token, index): readonly TracePart[] => {
    if (token.kind === 'name') {
      const row = sheet.rows.find(({ id }) => id === token.text);
      if (row === undefined) return [{ kind: 'sign', text: token.text }];
      return tokens[index - 2]?.text === OVER_SIZES
        ? sumParts(sheet, row)
        : [operand(sheet, row, refFrom(sheet, row, from))];
    }
    if (token.kind === 'number') return [{ kind: 'number', text: token.text }];
    // Its bracket follows, and holds what it adds.
    if (token.kind === 'function')
      return token.text === OVER_SIZES ? [] : [{ kind: 'function', text: token.text }];
    return [{ kind: 'sign', text: token.text }];
  });
  return parts.filter((_, index) => !isSilent(sheet, parts, index) && !isSilent(sheet, parts, index + 1));
}

/** The whole job by its own formula where that can be read in one, else as the sum over the sizes. */
function wholeTrace(sheet: CostSheet, row: GridRow, base: Omit<Trace, 'kind' | 'parts'>): Trace {
  const formula = row.whole === 'itself' ? row.formula : (row.whole ?? null);
  if (formula === null || !isOneInAll(sheet, formula))
    return { ...base, kind: 'sum', parts: sumParts(sheet, row) };
  return { ...base, kind: 'formula', formula, parts: formulaParts(sheet, formula, base.ref) };
}

/** Whether every name of a formula has one value for the whole job: of several lines each has its own. */
function isOneInAll(sheet: CostSheet, formula: string): boolean {
  const overSizes = new Set(sizesIn(formula));
  return namesIn(formula).every((name) => {
    const row = sheet.rows.find(({ id }) => id === name);
    if (row === undefined || row.table === 'job' || overSizes.has(name)) return true;
    if (row.table === 'line') return sheet.lineIds.length === 1;
    return row.total !== undefined || isAlike(sheet, row);
  });
}

/** Whether a value is the same in every case. */
function isAlike(sheet: CostSheet, { id }: GridRow): boolean {
  const values = sheet.values[id]?.slice(0, sheet.cases.length) ?? [];
  return values.every((value) => value !== null && value === values[0]);
}

/** Rows that a formula adds up over the sizes. */
const sizesIn = (formula: string): readonly string[] =>
  [...formula.matchAll(new RegExp(`${OVER_SIZES}\\((\\w+)\\)`, 'g'))].map(([, name = '']) => name);

/** Whether a part behind its sign is a factor that tells nothing while it is 1, or a summand while it is 0. */
function isSilent(sheet: CostSheet, parts: readonly TracePart[], index: number): boolean {
  const part = parts[index];
  const before = parts[index - 1];
  if (part?.kind !== 'operand' || before?.kind !== 'sign') return false;
  const row = sheet.rows.find(({ id }) => id === part.ref.rowId);
  return before.text === '*'
    ? part.value === 1 && row?.silentAtOne === true
    : before.text === '+' && part.value === 0 && row?.silentAtZero === true;
}

/** The whole job as the sum over the sizes: pieces × value of one. */
function sumParts(sheet: CostSheet, row: GridRow): readonly TracePart[] {
  const quantity = sheet.rows.find(({ id }) => id === 'quantity');
  if (quantity === undefined) return [];
  return sheet.cases.flatMap((_, index): readonly TracePart[] => [
    ...(index === 0 ? [] : [{ kind: 'sign', text: '+' } as const]),
    operand(sheet, quantity, { rowId: quantity.id, case: index }),
    { kind: 'sign', text: '*' },
    operand(sheet, row, { rowId: row.id, case: index }),
  ]);
}

function operand(sheet: CostSheet, row: GridRow, ref: FigureRef): TracePart {
  const size = ref.case === undefined ? undefined : sheet.cases[ref.case]?.size;
  const label = row.id === 'quantity' && size !== undefined ? `Pieces in ${size}` : row.label;
  return { kind: 'operand', ref, label, value: figureValue(sheet, row, ref) ?? 0, unit: row.unit };
}

/** Where an operand stands, seen from the figure whose formula names it. */
function refFrom(sheet: CostSheet, row: GridRow, from: FigureRef): FigureRef {
  if (row.table === 'job') return { rowId: row.id };
  if (row.table === 'case') {
    if (from.case !== undefined) return { rowId: row.id, case: from.case };
    // What has no value for the whole job, and is the same in every size, is opened in the first.
    return wholeRef(sheet, row);
  }
  return { rowId: row.id, line: from.line ?? lineOfCase(sheet, from.case ?? 0) };
}

const wholeRef = (sheet: CostSheet, row: GridRow): FigureRef =>
  figureValue(sheet, row, { rowId: row.id }) === null ? { rowId: row.id, case: 0 } : { rowId: row.id };

function lineOfCase(sheet: CostSheet, index: number): number {
  return Math.max(0, sheet.lineIds.indexOf(sheet.cases[index]?.lineId ?? ''));
}

function figureValue(sheet: CostSheet, row: GridRow, ref: FigureRef): number | null {
  switch (row.table) {
    case 'job':
      return sheet.jobValues[row.id] ?? null;
    case 'line':
      return sheet.lineValues[row.id]?.[ref.line ?? 0] ?? null;
    case 'case':
      // Behind the last case stands the whole job, which must not be taken for a case that is no longer there.
      if (ref.case !== undefined && ref.case >= sheet.cases.length) return null;
      return sheet.values[row.id]?.[ref.case ?? sheet.cases.length] ?? null;
    default:
      return row.table satisfies never;
  }
}

function inputOf(sheet: CostSheet, row: GridRow, ref: FigureRef): GridInput | undefined {
  switch (row.table) {
    case 'job':
      return sheet.inputs.job[row.id];
    case 'line':
      return sheet.inputs.lines[ref.line ?? 0]?.[row.id];
    case 'case':
      return sheet.inputs.cases[ref.case ?? 0]?.[row.id];
    default:
      return row.table satisfies never;
  }
}
