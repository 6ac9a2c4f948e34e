import { clubOrder } from '@/lib/examples/clubOrder';
import { fairShirts } from '@/lib/examples/fairJobs';
import { Grid } from '@/lib/grid/evaluateGrid';
import { priceJob } from '@/lib/priceJob';
import type { JobInput } from '@/shared/schemas/request';
import { benchArtwork } from './artwork';
import { benchApi } from './benchApi';
import { benchCurve } from './curve';
import { type BenchRow, median, percentile, times } from './measure';
import { benchPacking } from './packing';

/* npm run bench [-- --json]: what an edit costs, what building the engine costs, how the API stands a crowd. */

const rows: BenchRow[] = [];
const club = clubOrder('2026-11-25', '2026-12-11');

const firstBuild = times(
  1,
  () => new Grid(),
  (grid) => priceJob(club, grid),
);
rows.push({
  what: 'engine: first job in a fresh process, workbooks built',
  unit: 'ms',
  median: median(firstBuild),
  p99: null,
});
const warmBuild = times(
  10,
  () => new Grid(),
  (grid) => priceJob(club, grid),
);
rows.push({
  what: 'engine: workbooks built again in a warm process',
  unit: 'ms',
  median: median(warmBuild),
  p99: null,
});

const grid = new Grid();
rows.push(edit('one edit → every figure, 6 sizes, 30 prices', club, 'inkPrice'));
rows.push(edit('one edit → every figure, 24 sizes, 120 prices', fairShirts('2026-11-25'), 'wage'));

rows.push(...benchCurve());
if (!process.argv.includes('--no-long')) rows.push(...(await benchPacking()), ...(await benchArtwork()));
if (!process.argv.includes('--no-api')) rows.push(...(await benchApi(club)));

if (process.argv.includes('--json')) process.stdout.write(`${JSON.stringify(rows, null, 2)}\n`);
else for (const row of rows) process.stdout.write(`${line(row)}\n`);

function edit(what: string, input: JobInput, name: 'inkPrice' | 'wage'): BenchRow {
  let step = 0;
  const spent = times(
    200,
    () => {
      step += 1;
      const rate = input.workshop.rates[name];
      if (rate === null) throw new Error(`the bench needs ${name}`);
      const rates = { ...input.workshop.rates, [name]: { ...rate, value: rate.value * (1 + step / 1e4) } };
      return { ...input, workshop: { ...input.workshop, rates } };
    },
    (edited) => priceJob(edited, grid),
  );
  return { what, unit: 'ms', median: median(spent), p99: percentile(spent, 0.99) };
}

function line({ what, unit, median: middle, p99 }: BenchRow): string {
  const tail = p99 === null ? '' : `   p99 ${p99.toFixed(1)} ${unit}`;
  return `${what.padEnd(60)} ${middle.toFixed(1).padStart(8)} ${unit}${tail}`;
}
