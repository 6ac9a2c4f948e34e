import type { Grid } from '@/lib/grid/evaluateGrid';
import { fillJob } from '@/lib/grid/fillJob';
import { fillCase, fillLine } from '@/lib/grid/fillLine';
import type { CaseInput, GridColumn } from '@/lib/grid/gridInput';
import { present } from '@/lib/grid/present';
import type { ResolvedLine, ResolvedSize } from '@/lib/job/checkedJob';
import type { CaseEvaluator } from '@/lib/price/caseEvaluator';
import { pricedRows } from '@/lib/price/pricedRows';
import type { JudgedJob } from './judgedJob';
import { type Figures, movedInputs, orderFigures } from './orderFigures';

/** @returns the target price of a piece in an order of n of its line, without tax, unrounded. */
export type TargetOfOrder = (n: number) => number;

/** Columns filled at once: the widths that tables fill too. */
const FEW = 16;
const MANY = 32;
/** Quantities at which the sum is held against the grid. */
const PROOFS = [1, 7, 150] as const;
const AGREEMENT = 1e-10;

/**
 * Target prices at every quantity, from a handful of columns of the grid instead of one a quantity.
 *
 * Without formulas of the maker a piece's target is linear in a few figures that a quantity moves, and in the price of
 * its blank. One column moves one of them, which tells its weight exactly; whole columns at real quantities are held
 * against the sum. With a formula, or where one of them disagrees, every quantity is worked out by itself.
 *
 * @param sizes of one print group: only their blanks differ; at least one
 * @param evaluate the cases of the line one by one
 * @returns one for each size
 */
export function orderTargets(
  judged: JudgedJob,
  line: ResolvedLine,
  sizes: readonly [ResolvedSize, ...ResolvedSize[]],
  grid: Grid,
  evaluate: CaseEvaluator,
): readonly TargetOfOrder[] {
  const hasFormula = judged.laidOut.job.ownRows.some(({ cost }) => cost.kind === 'formula');
  return (
    (hasFormula ? null : bySum(judged, line, sizes, grid)) ?? sizes.map((size) => byGrid(size, evaluate))
  );
}

// Helpers

function bySum(
  judged: JudgedJob,
  line: ResolvedLine,
  [size, ...others]: readonly [ResolvedSize, ...ResolvedSize[]],
  grid: Grid,
): readonly TargetOfOrder[] | null {
  const { job, prints } = judged.laidOut;
  const shape = { ...judged.shape, wanted: pricedRows };
  const slots = shape.placements;
  const inputsAt = (batch: number) => fillCase(job, prints, line, size, batch, 0, slots);
  const [one, two] = [inputsAt(1), inputsAt(2)];
  const figures = orderFigures(slots, job.job.piecesPerSession);
  const ids = movedInputs(slots);
  const valuesOf = (column: GridColumn): Record<string, number> =>
    Object.fromEntries(Object.entries(column).map(([id, { value }]) => [id, value]));
  const at = (column: GridColumn, id: string, value: number): GridColumn => ({
    ...column,
    [id]: { value, origin: 'counted' },
  });
  const still = ids.reduce((column, id) => at(column, id, 1), one);
  const probes = figures.map(({ id, probe }) => at(still, id, probe));
  const columns = [
    still,
    ...probes,
    ...others.map(({ blankPrice }) => at(still, 'blankPrice', blankPrice.value)),
    ...PROOFS.map(inputsAt),
  ];
  const cases = columns.map((inputs): CaseInput => ({ size: size.size, inputs }));
  const values = grid.evaluate(
    shape,
    {
      job: fillJob(job, shape.presses),
      lines: [{ lineId: line.line.id, inputs: fillLine(line, slots), cases }],
    },
    cases.length > FEW ? MANY : FEW,
  );
  const targets = (values.cases[0] ?? []).map((column) => present(column, 'target'));
  const [base = Number.NaN, ...rest] = targets;
  const stillAt = figures.map(({ of }) => of(valuesOf(still)));
  const moves = probes.map((column) => {
    const moved = valuesOf(column);
    return figures.map(({ of }, index) => of(moved) - (stillAt[index] ?? 0));
  });
  const weights: number[] = [];
  figures.forEach(({ after }, index) => {
    // What another figure of the same input has told already is taken off first.
    const known = after === undefined ? 0 : (weights[after] ?? 0) * (moves[index]?.[after] ?? 0);
    const step = moves[index]?.[index] ?? 0;
    weights.push(step === 0 ? 0 : ((rest[index] ?? Number.NaN) - base - known) / step);
  });
  const [first, second] = [valuesOf(one), valuesOf(two)];
  const starts = ids.map((id) => first[id] ?? 1);
  const steps = ids.map((id, index) => (second[id] ?? 1) - (starts[index] ?? 1));
  // One record serves every order: hundreds of them are asked for at each key.
  const figuresAt: Record<string, number> = { ...upsOf(first, slots) };
  const sum = (n: number): number => {
    ids.forEach((id, index) => {
      figuresAt[id] = (starts[index] ?? 1) + (steps[index] ?? 0) * (n - 1);
    });
    let total = base;
    figures.forEach(({ of }, index) => {
      total += (weights[index] ?? 0) * (of(figuresAt) - (stillAt[index] ?? 0));
    });
    return total;
  };
  const agrees = PROOFS.every((n, index) => {
    const worked = rest[figures.length + others.length + index] ?? Number.NaN;
    return Math.abs(sum(n) - worked) <= AGREEMENT * Math.abs(worked);
  });
  if (!agrees) return null;
  const remembered = remember(sum);
  return [0, ...others.map((_, index) => (rest[figures.length + index] ?? Number.NaN) - base)].map(
    (more) => (n) => remembered(n) + more,
  );
}

const upsOf = (figures: Figures, slots: number): Figures =>
  Object.fromEntries(
    Array.from({ length: slots }, (_, slot) => [`ups_${slot + 1}`, figures[`ups_${slot + 1}`] ?? 1]),
  );

function remember(target: TargetOfOrder): TargetOfOrder {
  const known: number[] = [];
  return (n) => {
    const found = known[n] ?? target(n);
    known[n] = found;
    return found;
  };
}

function byGrid(size: ResolvedSize, evaluate: CaseEvaluator): TargetOfOrder {
  const known: number[] = [];
  return (n) => {
    // Whole orders are worked out with their neighbours; parts of a piece stand alone.
    const from = Number.isInteger(n) ? n - ((n - 1) % MANY) : n;
    if (known[n] === undefined)
      evaluate(
        Array.from({ length: MANY }, (_, step) => ({ size, batch: from + step, askedPrice: null })),
      ).forEach((column, step) => {
        known[from + step] = present(column, 'target');
      });
    return known[n] ?? Number.NaN;
  };
}
