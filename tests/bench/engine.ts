import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { priceJob } from '@/lib/costing/priceJob';
import { Grid } from '@/lib/grid/evaluateGrid';
import type { JobInput } from '@/shared/schemas/request';
import { BARE_ENGINE, BareEngine } from '@/tests/bench/yardsticks/bareEngine';
import { cellsAsked } from '@/tests/bench/yardsticks/cellsAsked';
import { type BenchRow, timeRow } from './benchRow';
import { timesBeside } from './measure';

const FRESH = 3;
const WARM = 10;
const nothing = () => undefined;

/** @returns what it costs to build the workbooks of the club order, in a fresh process and in a warm one. */
export function benchEngine(club: JobInput): readonly BenchRow[] {
  const asked = cellsAsked((grid) => priceJob(club, grid));
  const turns = Array.from({ length: FRESH }, () => ({
    figure: fresh('firstJob.ts'),
    yardstick: fresh('firstBare.ts', JSON.stringify(asked)),
  }));
  const first = {
    figure: turns.map(({ figure }) => figure),
    yardstick: turns.map(({ yardstick }) => yardstick),
  };
  const again = timesBeside(
    WARM,
    nothing,
    () => priceJob(club, new Grid()),
    () => new BareEngine(asked).refill(),
  );
  return [
    { ...timeRow('engine: first job in a fresh process, workbooks built', first, BARE_ENGINE), p99: null },
    { ...timeRow('engine: workbooks built again in a warm process', again, BARE_ENGINE), p99: null },
  ];
}

/** @returns the milliseconds that a script reports from a process of its own, what it loads not counted. */
function fresh(script: string, ...args: readonly string[]): number {
  const file = fileURLToPath(new URL(`fresh/${script}`, import.meta.url));
  return Number(execFileSync(process.execPath, ['--import', 'tsx', file, ...args], { encoding: 'utf8' }));
}
