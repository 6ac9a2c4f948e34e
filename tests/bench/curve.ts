import { costInput } from '@/lib/costing/costInput';
import { clubOrder } from '@/lib/examples/clubOrder';
import { fairShirts } from '@/lib/examples/fairJobs';
import type { CostedJob } from '@/lib/grid/costJob';
import { Grid } from '@/lib/grid/evaluateGrid';
import { breaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import { batchCurve } from '@/lib/studies/curve/batchCurve';
import { batchTariffs } from '@/lib/studies/curve/batchTariffs';
import { curveAnswer } from '@/lib/studies/curve/curveAnswer';
import { levers } from '@/lib/studies/levers/levers';
import type { JobInput } from '@/shared/schemas/request';
import { BARE_ENGINE, BareEngine } from '@/tests/bench/yardsticks/bareEngine';
import { cellsAsked } from '@/tests/bench/yardsticks/cellsAsked';
import { type BenchRow, timeRow } from './benchRow';
import { timesBeside } from './measure';

type Study = (grid: Grid) => unknown;

/** What the batch curve and what is read off it cost, once the workbooks stand. */
export function benchCurve(): readonly BenchRow[] {
  const grid = new Grid();
  const club = clubOrder('2026-11-25', '2026-12-11');
  const job = costed(club, grid);
  const fair = costed(fairShirts('2026-11-25'), grid);
  const curve = (line: CostedJob, to: number) => (asked: Grid) =>
    batchCurve(line, asked, { from: 1, to, priceEach: 20 });
  const studies: readonly (readonly [string, number, Study])[] = [
    ['batch curve, 500 points, one line (budget 150)', 60, curve(job, 500)],
    ['batch curve, 100 points, one line', 60, curve(job, 100)],
    ['batch curve, 100 points, four lines', 60, curve(fair, 100)],
    [
      'everything the curve’s section shows, 100 points',
      20,
      (asked) => curveAnswer(club, asked, { flatPrice: 20 }),
    ],
    ['two-part tariff over 100 batches', 40, (asked) => batchTariffs(job, asked)],
    ['levers of a job', 10, (asked) => levers(club, job, asked)],
    [
      'everything the prices’ section shows of a line',
      20,
      (asked) => breaksAnswer(club, asked, { lineId: 'shirts', quantities: [] }),
    ],
  ];
  return studies.map(([what, count, study]) => row(what, count, study, grid));
}

function row(what: string, count: number, study: Study, grid: Grid): BenchRow {
  const bare = new BareEngine(cellsAsked(study));
  const run = () => study(grid);
  const yardstick = () => bare.refill();
  timesBeside(5, nothing, run, yardstick);
  return timeRow(what, timesBeside(count, nothing, run, yardstick), BARE_ENGINE);
}

const nothing = () => undefined;

function costed(input: JobInput, grid: Grid): CostedJob {
  const job = costInput(input, grid);
  if (job === null) throw new Error('the example cannot be costed');
  return job;
}
