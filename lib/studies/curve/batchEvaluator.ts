import { shapeOf } from '@/lib/grid/costJob';
import type { ColumnValues, Grid } from '@/lib/grid/evaluateGrid';
import { fillJob } from '@/lib/grid/fillJob';
import { fillCase, fillLine, piecesOf, printFor } from '@/lib/grid/fillLine';
import type { CaseInput, GridColumn } from '@/lib/grid/gridInput';
import type { ResolvedJob, ResolvedLine, ResolvedSize } from '@/lib/job/checkedJob';
import { sheetsOfBatch } from '@/lib/layout/batchSheets';
import type { LaidOutPrint } from '@/lib/layout/layOutJob';
import { pricedRows } from '@/lib/price/pricedRows';
import { printGroups } from '@/lib/price/printGroups';
import { type BatchPoint, batchPoint, type Share } from './batchPoint';

/** The job as it is costed, or a variant of it with the same prints on the same sheet. */
export interface BatchJob {
  readonly job: ResolvedJob;
  readonly prints: readonly LaidOutPrint[];
}

/** The price of every piece, as typed; `asked` takes the prices of the job with their up-charges, null the target. */
export type BatchPrice = number | 'asked' | null;

export interface WantedBatch {
  /** Good pieces of the whole job, above 0; every size and line keeps its share, in fractions. */
  readonly n: number;
  readonly priceEach: BatchPrice;
}

/** @returns one point for each batch asked; null where a formula of the maker gives no number for it. */
export type BatchEvaluator = (wanted: readonly WantedBatch[]) => readonly (BatchPoint | null)[];

/** Columns of a line filled at once: one narrow workbook serves curves of any length. */
const COLUMNS = 32;

/**
 * Puts whole batches through the same grid as the cost sheet: one column a line and print group at each quantity.
 * Inside a print group only the blank differs, and every row of the product is linear in its price: the mean price
 * of the mix stands for all sizes. Formulas of the maker need not be linear, so with any of them each size has its
 * own column.
 *
 * @param given values of job rows that take the place of the job's own, by row id
 */
export function batchEvaluator(
  { job, prints }: BatchJob,
  grid: Grid,
  given: Readonly<Record<string, number>> = {},
): BatchEvaluator {
  const shape = { ...shapeOf(job), wanted: pricedRows };
  const jobColumn: GridColumn = {
    ...fillJob(job),
    ...Object.fromEntries(
      Object.entries(given).map(([id, value]) => [id, { value, origin: 'counted' } as const]),
    ),
  };
  const jobPieces = job.lines.reduce((sum, line) => sum + piecesOf(line), 0);
  const lines = job.lines.map((line) => {
    const columns = columnsOf(job, line).map((size) => ({
      share: size.quantity / jobPieces,
      asked: size.askedPrice,
      size: size.size,
      inputs: fillCase(job, prints, line, size, piecesOf(line), size.quantity, shape.placements),
      slots: line.placements.map((placed) => printFor(prints, line, placed, size.size)),
    }));
    return { lineId: line.line.id, inputs: fillLine(line, shape.placements), columns };
  });
  const shares: readonly (readonly Share[])[] = lines.map(({ columns }) =>
    columns.map(({ share }) => ({ share })),
  );
  const atOnce = Math.max(1, Math.floor(COLUMNS / Math.max(...lines.map(({ columns }) => columns.length))));

  const evaluatePart = (wanted: readonly WantedBatch[]): readonly (BatchPoint | null)[] => {
    const values = grid.evaluate(
      shape,
      {
        job: jobColumn,
        lines: lines.map(({ lineId, inputs, columns }) => ({
          lineId,
          inputs,
          cases: wanted.flatMap(({ n, priceEach }) =>
            columns.map(
              (column): CaseInput => ({
                size: column.size,
                inputs: scaled(
                  column.inputs,
                  n,
                  jobPieces,
                  column.slots,
                  priceEach === 'asked' ? column.asked : priceEach,
                  // A price of every piece is all that is paid.
                  priceEach === 'asked',
                ),
              }),
            ),
          ),
        })),
      },
      COLUMNS,
    );
    return wanted.map(({ n }, index) =>
      batchPoint(
        n,
        shares.flatMap((ofLine, at): readonly (Share & { readonly values: ColumnValues })[] =>
          ofLine.map(({ share }, column) => ({
            share,
            values: values.cases[at]?.[index * ofLine.length + column] ?? {},
          })),
        ),
      ),
    );
  };
  return (wanted) =>
    Array.from({ length: Math.ceil(wanted.length / atOnce) }, (_, part) => {
      const asked = wanted.slice(part * atOnce, (part + 1) * atOnce);
      // A short last part leaves the columns behind it as they were, which costs nothing to work out again.
      const left = part === 0 ? [] : wanted.slice((part - 1) * atOnce + asked.length, part * atOnce);
      return evaluatePart([...asked, ...left]).slice(0, asked.length);
    }).flat();
}

function columnsOf(job: ResolvedJob, line: ResolvedLine): readonly ResolvedSize[] {
  if (job.ownRows.some(({ cost }) => cost.kind === 'formula')) return line.sizes;
  return printGroups(line).flatMap(({ sizes }) => {
    const priced = sizes.filter((size) => (size.askedPrice ?? 0) > 0);
    const unpriced = sizes.filter((size) => !((size.askedPrice ?? 0) > 0));
    return [meanOf(priced), meanOf(unpriced)].filter((size) => size !== null);
  });
}

/** One size that stands for several, which differ by blank and asked price only. */
function meanOf(sizes: readonly ResolvedSize[]): ResolvedSize | null {
  const [first] = sizes;
  if (first === undefined) return null;
  const quantity = sizes.reduce((sum, size) => sum + size.quantity, 0);
  const mean = (of: (size: ResolvedSize) => number) =>
    sizes.every((size) => of(size) === of(first))
      ? of(first)
      : sizes.reduce((sum, size) => sum + of(size) * size.quantity, 0) / quantity;
  return {
    ...first,
    quantity,
    blankPrice: { ...first.blankPrice, value: mean((size) => size.blankPrice.value) },
    askedPrice: first.askedPrice === null ? null : mean((size) => size.askedPrice ?? 0),
  };
}

/** A case of the job as asked, moved to a batch of n: what is shared by so many pieces is shared by n in the mix. */
function scaled(
  inputs: GridColumn,
  n: number,
  jobPieces: number,
  slots: readonly LaidOutPrint[],
  askedPrice: number | null,
  hasStart: boolean,
): GridColumn {
  const column: Record<string, GridColumn[string]> = { ...inputs };
  const scale = (id: string) => {
    const input = inputs[id];
    if (input !== undefined) column[id] = { value: (input.value * n) / jobPieces, origin: 'counted' };
  };
  scale('quantity');
  scale('pieces');
  scale('jobPieces');
  for (const [index, { ganged }] of slots.entries()) {
    const [group, ups] = [`group_${index + 1}`, `ups_${index + 1}`];
    scale(group);
    scale(`designPieces_${index + 1}`);
    const [shared, onSheet] = [column[group]?.value, column[ups]?.value];
    if (ganged?.batches === undefined || shared === undefined || onSheet === undefined) continue;
    // So many on each of the sheets that the batch takes, so that all of them are just used up.
    column[ups] = { value: shared / sheetsOfBatch(ganged, n, shared / onSheet), origin: 'counted' };
  }
  column.askedPrice = { value: askedPrice ?? 0, origin: 'typed' };
  if (!hasStart) column.askedStart = { value: 0, origin: 'typed' };
  return column;
}
