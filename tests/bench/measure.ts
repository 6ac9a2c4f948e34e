export interface BenchRow {
  readonly what: string;
  readonly unit: 'ms' | 'requests/s' | 'pieces' | 'bins' | '%';
  readonly median: number;
  /** Null where only one kind of run was made. */
  readonly p99: number | null;
}

/** @returns milliseconds of each run of `run`; `prepare` is not counted. */
export function times<Prepared>(
  count: number,
  prepare: () => Prepared,
  run: (prepared: Prepared) => unknown,
): readonly number[] {
  return Array.from({ length: count }, () => {
    const prepared = prepare();
    const start = performance.now();
    run(prepared);
    return performance.now() - start;
  });
}

export const median = (values: readonly number[]): number => percentile(values, 0.5);

/** @returns the value below which a share of the values lies, by nearest rank. */
export function percentile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}
