import { median, percentile, type Spent } from './measure';

export interface BenchRow {
  readonly what: string;
  readonly unit: 'ms' | 'requests/s' | 'pieces' | 'bins' | '%';
  readonly median: number;
  /** Null where only one kind of run was made. */
  readonly p99: number | null;
  /** What was measured beside it in the same run; null where nothing of the kind exists. */
  readonly yardstick: { readonly what: string; readonly median: number } | null;
  /** Median by the yardstick's median: machines differ, this differs less. */
  readonly ratio: number | null;
}

/** @returns the row of something that was timed beside a yardstick. */
export const timeRow = (what: string, spent: Spent, yardstick: string): BenchRow =>
  withRatio({
    what,
    unit: 'ms',
    median: median(spent.figure),
    p99: percentile(spent.figure, 0.99),
    yardstick: { what: yardstick, median: median(spent.yardstick) },
  });

/** @returns the row of something of which the time of the processor was taken, beside nothing. */
export const cpuRow = (what: string, times: readonly number[]): BenchRow =>
  withRatio({
    what: `${what}, processor`,
    unit: 'ms',
    median: median(times),
    p99: percentile(times, 0.99),
    yardstick: null,
  });

/** @returns the row with its ratio, null where there is nothing to divide by. */
export function withRatio(row: Omit<BenchRow, 'ratio'>): BenchRow {
  const ratio = row.yardstick === null ? Number.NaN : row.median / row.yardstick.median;
  return { ...row, ratio: Number.isFinite(ratio) ? ratio : null };
}

/** @returns a row as people read it. */
export function lineOf({ what, unit, median: middle, p99, yardstick, ratio }: BenchRow): string {
  const tail = p99 === null ? '' : `   p99 ${p99.toFixed(1)} ${unit}`;
  const beside =
    yardstick === null || ratio === null
      ? ''
      : `   ${short(ratio)} × ${yardstick.what} (${short(yardstick.median)} ${unit})`;
  return `${what.padEnd(60)} ${middle.toFixed(1).padStart(8)} ${unit}${tail}${beside}`;
}

/** Three figures: more of them would be noise. */
const short = (value: number): string => String(Number(value.toPrecision(3)));
