export interface Spent {
  /** Milliseconds of each run. */
  readonly figure: readonly number[];
  /** Milliseconds of each run of the yardstick. */
  readonly yardstick: readonly number[];
}

/**
 * Times something and its yardstick in turn, so that what slows the machine slows both. Each goes first in half of
 * the turns: neither always pays for what the other left behind. `prepare` is not counted.
 */
export function timesBeside<Prepared>(
  count: number,
  prepare: () => Prepared,
  run: (prepared: Prepared) => unknown,
  yardstick: (prepared: Prepared) => unknown,
): Spent {
  const spent: { figure: number[]; yardstick: number[] } = { figure: [], yardstick: [] };
  for (let turn = 0; turn < count; turn += 1) {
    const prepared = prepare();
    const figure = () => spent.figure.push(timeOf(() => run(prepared)));
    const beside = () => spent.yardstick.push(timeOf(() => yardstick(prepared)));
    for (const next of turn % 2 === 0 ? [figure, beside] : [beside, figure]) next();
  }
  return spent;
}

export const median = (values: readonly number[]): number => percentile(values, 0.5);

/** @returns the value below which a share of the values lies, by nearest rank. */
export function percentile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

/** @returns milliseconds of the processor that each run took, after one that is not counted. */
export async function cpuTimes(count: number, run: () => unknown): Promise<readonly number[]> {
  await run();
  const times: number[] = [];
  for (let turn = 0; turn < count; turn += 1) {
    const start = process.cpuUsage();
    await run();
    const { user, system } = process.cpuUsage(start);
    times.push((user + system) / 1000);
  }
  return times;
}

/** @returns milliseconds of one run. */
export function timeOf(run: () => unknown): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}
