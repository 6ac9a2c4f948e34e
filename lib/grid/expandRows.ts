import { caseInputRows, jobInputRows, lineInputRows } from '@/lib/grid/rows/inputRows';
import { moneyRows } from '@/lib/grid/rows/moneyRows';
import { ownRows } from '@/lib/grid/rows/ownRows';
import { priceRows } from '@/lib/grid/rows/priceRows';
import { quantityRows } from '@/lib/grid/rows/quantityRows';
import { sharedRows } from '@/lib/grid/rows/sharedRows';
import { timeRows } from '@/lib/grid/rows/timeRows';
import type { OwnRow } from '@/shared/schemas/ownRow';
import type { GridRow, RowDefinition } from './rowTypes';
import { namesIn } from './tokenizeFormula';

export interface GridShape {
  /** Most placements on one line, 1 to 4. */
  readonly placements: number;
  /** Presses the job heats, 1 or more. */
  readonly presses: number;
  readonly ownRows: readonly OwnRow[];
  /** Rows whose values are wanted; only they and what they stand on are worked out. Absent: all rows. */
  readonly wanted?: readonly string[];
}

/** The rows of the three tables, inputs first, formulas written out for the shape. */
export interface GridRows {
  readonly shape: GridShape;
  readonly job: readonly GridRow[];
  readonly line: readonly GridRow[];
  readonly case: readonly GridRow[];
  readonly byId: ReadonlyMap<string, GridRow>;
}

const definitions: readonly RowDefinition[] = [
  ...jobInputRows,
  ...lineInputRows,
  ...caseInputRows,
  ...sharedRows,
  ...quantityRows,
  ...timeRows,
  ...moneyRows,
  ...priceRows,
];

/**
 * Writes the rows out (but the maker's own, which have no such marks) for a number of placements and presses: the only place that reads `#`, `SUM#` and
 * `NEXT#`.
 */
export function expandRows(shape: GridShape): GridRows {
  const written = [...definitions, ...ownRows(shape.ownRows)].flatMap((definition) =>
    expand(definition, shape),
  );
  const all = shape.wanted === undefined ? written : standingUnder(shape.wanted, written);
  const tableOf = (table: GridRow['table']) => {
    const rows = all.filter((row) => row.table === table);
    return [...rows.filter((row) => row.formula === null), ...rows.filter((row) => row.formula !== null)];
  };
  return {
    shape,
    job: tableOf('job'),
    line: tableOf('line'),
    case: tableOf('case'),
    byId: new Map(all.map((row) => [row.id, row])),
  };
}

/** The wanted rows and every row that they read, directly or not; `quantity` always, for the whole job. */
function standingUnder(wanted: readonly string[], rows: readonly GridRow[]): readonly GridRow[] {
  const byId = new Map(rows.map((row) => [row.id, row]));
  const needed = new Set<string>();
  const waiting = ['quantity', ...wanted];
  for (let id = waiting.pop(); id !== undefined; id = waiting.pop()) {
    if (needed.has(id)) continue;
    needed.add(id);
    const formula = byId.get(id)?.formula;
    if (formula != null) waiting.push(...namesIn(formula));
  }
  return rows.filter(({ id }) => needed.has(id));
}

function expand(definition: RowDefinition, shape: GridShape): readonly GridRow[] {
  const count =
    definition.repeat === undefined ? 1 : definition.repeat === 'press' ? shape.presses : shape.placements;
  return Array.from({ length: count }, (_, index) => {
    const slot = index + 1;
    const formula =
      definition.formula === null || definition.family === 'own'
        ? definition.formula
        : writeOut(definition.formula, definition.table, slot, shape);
    const whole =
      definition.whole === undefined || definition.family === 'own'
        ? definition.whole
        : writeOut(definition.whole, definition.table, slot, shape);
    const written = { ...definition, formula, ...(whole === undefined ? {} : { whole }) };
    if (definition.repeat === undefined) return written;
    return {
      ...written,
      slot,
      id: definition.id.replace('#', `${slot}`),
      label: definition.label.replace('#', `${slot}`),
      says: definition.says.replace('#', `${slot}`),
    };
  });
}

/** Sums in the job table run over presses, elsewhere over placements. */
function writeOut(formula: string, table: RowDefinition['table'], slot: number, shape: GridShape): string {
  const count = table === 'job' ? shape.presses : shape.placements;
  let text = formula;
  for (let start = text.indexOf('SUM#('); start >= 0; start = text.indexOf('SUM#(')) {
    const open = start + 'SUM#'.length;
    const close = closingBracket(text, open);
    const inside = text.slice(open + 1, close);
    const terms = Array.from({ length: count }, (_, index) => term(inside, index + 1, count));
    text = `${text.slice(0, start)}(${terms.join(' + ')})${text.slice(close + 1)}`;
  }
  return text
    .replace(/NEXT#\(([A-Za-z]+)_#\)/g, (_, name: string) => (slot < count ? `${name}_${slot + 1}` : '1'))
    .replaceAll('#', `${slot}`);
}

function term(inside: string, slot: number, count: number): string {
  const written = inside.replaceAll('#', `${slot}`);
  return count > 1 && / [-+] /.test(written) ? `(${written})` : written;
}

function closingBracket(text: string, open: number): number {
  let depth = 0;
  for (let at = open; at < text.length; at += 1) {
    if (text[at] === '(') depth += 1;
    if (text[at] === ')') depth -= 1;
    if (depth === 0) return at;
  }
  throw new SyntaxError(`the bracket at ${open} of “${text}” is never closed`);
}
