import { costInput } from '@/lib/costing/costInput';
import { clubOrder } from '@/lib/examples/clubOrder';
import { fairShirts } from '@/lib/examples/fairJobs';
import { Grid } from '@/lib/grid/evaluateGrid';
import { batchCurve } from '@/lib/studies/curve/batchCurve';
import { batchTariffs } from '@/lib/studies/curve/batchTariffs';
import { curveAnswer } from '@/lib/studies/curve/curveAnswer';
import { levers } from '@/lib/studies/levers/levers';
import type { JobInput } from '@/shared/schemas/request';
import { type BenchRow, median, percentile, times } from './measure';

/** What the batch curve and what is read off it cost, once the workbooks stand. */
export function benchCurve(): readonly BenchRow[] {
  const grid = new Grid();
  const club = clubOrder('2026-11-25', '2026-12-11');
  const fair = fairShirts('2026-11-25');
  return [
    curve('batch curve, 500 points, one line (budget 150)', club, 500, grid),
    curve('batch curve, 100 points, one line', club, 100, grid),
    curve('batch curve, 100 points, four lines', fair, 100, grid),
    row('everything the curve’s section shows, 100 points', 20, () =>
      curveAnswer(club, grid, { flatPrice: 20 }),
    ),
    row('two-part tariff over 100 batches', 40, () => batchTariffs(costed(club, grid), grid)),
    row('levers of a job', 10, () => levers(club, costed(club, grid), grid)),
  ];
}

function curve(what: string, input: JobInput, to: number, grid: Grid): BenchRow {
  const job = costed(input, grid);
  return row(what, 60, () => batchCurve(job, grid, { from: 1, to, priceEach: 20 }));
}

function row(what: string, count: number, run: () => unknown): BenchRow {
  for (let warm = 0; warm < 5; warm += 1) run();
  const spent = times(count, () => undefined, run);
  return { what, unit: 'ms', median: median(spent), p99: percentile(spent, 0.99) };
}

function costed(input: JobInput, grid: Grid) {
  const job = costInput(input, grid);
  if (job === null) throw new Error('the example cannot be costed');
  return job;
}
