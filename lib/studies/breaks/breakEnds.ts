import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { present } from '@/lib/grid/present';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import { caseEvaluator } from '@/lib/price/caseEvaluator';
import { judgedJob } from '@/lib/price/list/judgedJob';
import type { LineList } from '@/lib/price/list/lineList';

import type { TablePrice } from '@/lib/price/priceTable';
import { fromMinor } from '@/shared/money';

/** What the written price of a break leaves at its two ends; the worst inside it is the table's own margin. */
export interface BreakEnds {
  readonly lineId: string;
  readonly size: string;
  readonly from: number;
  /** Profit as a share of the price at the first quantity. */
  readonly marginAtFirst: number;
  /** The same at the last quantity; null for the open break, which has none. */
  readonly marginAtLast: number | null;
}

/** @returns the ends of every cell of the price table of a line, in its order. */
export function breakEnds(
  costed: CostedJob,
  line: ResolvedLine,
  grid: Grid,
  { start }: Pick<LineList, 'start'>,
  table: readonly TablePrice[],
): readonly BreakEnds[] {
  const { currency } = costed.sheet;
  const cells = table.flatMap((cell) => {
    const size = line.sizes.find((one) => one.size === cell.size);
    return size === undefined ? [] : [{ cell, size }];
  });
  const columns = caseEvaluator(
    judgedJob(costed, line),
    line,
    grid,
  )(
    cells.flatMap(({ cell, size }) =>
      [cell.from, cell.to ?? cell.from].map((batch) => ({
        size,
        batch,
        askedPrice: fromMinor(cell.price, currency) + fromMinor(start, currency) / batch,
      })),
    ),
  );
  return cells.map(
    ({ cell }, index): BreakEnds => ({
      lineId: cell.lineId,
      size: cell.size,
      from: cell.from,
      marginAtFirst: present(columns[2 * index], 'margin'),
      marginAtLast: cell.to === null ? null : present(columns[2 * index + 1], 'margin'),
    }),
  );
}
