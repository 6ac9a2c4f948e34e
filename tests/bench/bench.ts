import { costInput } from '@/lib/costing/costInput';
import { priceJob } from '@/lib/costing/priceJob';
import { clubOrder } from '@/lib/examples/clubOrder';
import { fairShirts } from '@/lib/examples/fairJobs';
import { Grid } from '@/lib/grid/evaluateGrid';
import { batchCurve } from '@/lib/studies/curve/batchCurve';
import type { JobInput } from '@/shared/schemas/request';
import { benchArtwork } from './artwork';
import { benchApi } from './benchApi';
import { benchCurve } from './curve';
import { type BenchRow, median, percentile, times } from './measure';
import { benchPacking } from './packing';

/* npm run bench [-- --json]: what an edit costs, what building the engine costs, how the API stands a crowd. */

type EditedRate = 'inkPrice' | 'wage';

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

rows.push(
  editWithCurve('one edit → every figure, 12 sizes, 60 prices and a curve of 100 (budget 50)', twelveSizes()),
);

rows.push(...benchCurve());
if (!process.argv.includes('--no-long')) rows.push(...(await benchPacking()), ...(await benchArtwork()));
if (!process.argv.includes('--no-api')) rows.push(...(await benchApi(club)));

if (process.argv.includes('--json')) process.stdout.write(`${JSON.stringify(rows, null, 2)}\n`);
else for (const row of rows) process.stdout.write(`${line(row)}\n`);

function edit(what: string, input: JobInput, name: EditedRate): BenchRow {
  const spent = times(200, editsOf(input, name), (edited) => priceJob(edited, grid));
  return { what, unit: 'ms', median: median(spent), p99: percentile(spent, 0.99) };
}

function editWithCurve(what: string, input: JobInput): BenchRow {
  const spent = times(100, editsOf(input, 'wage'), (edited) => {
    priceJob(edited, grid);
    const costed = costInput(edited, grid);
    if (costed === null) throw new Error('the job of the bench cannot be costed');
    batchCurve(costed, grid, { from: 1, to: 100, priceEach: 20 });
  });
  return { what, unit: 'ms', median: median(spent), p99: percentile(spent, 0.99) };
}

/** The club order on a shirt that is also cut tall: twelve sizes at five breaks. */
function twelveSizes(): JobInput {
  const [line] = club.job.lines;
  const blank = club.blanks[line?.blankId ?? ''];
  if (line === undefined || blank === undefined) throw new Error('the example has no line on a blank');
  const tall = (name: string) => `${name} tall`;
  const sizes = [...blank.sizes, ...blank.sizes.map((size) => ({ ...size, name: tall(size.name) }))];
  const quantities = [
    ...line.quantities,
    ...line.quantities.map((one) => ({ ...one, size: tall(one.size) })),
  ];
  const input = {
    ...club,
    blanks: { ...club.blanks, [line.blankId]: { ...blank, sizes } },
    job: { ...club.job, wantedOn: '2027-02-26', lines: [{ ...line, quantities }] },
  };
  const prices = priceJob(input, grid).prices?.table.length;
  if (prices !== 60) throw new Error(`the bench means 60 prices and has ${prices}`);
  return input;
}

/** @returns the documents with one rate typed anew, a little other at every call. */
function editsOf(input: JobInput, name: EditedRate): () => JobInput {
  let step = 0;
  return () => {
    step += 1;
    const rate = input.workshop.rates[name];
    if (rate === null) throw new Error(`the bench needs ${name}`);
    const rates = { ...input.workshop.rates, [name]: { ...rate, value: rate.value * (1 + step / 1e4) } };
    return { ...input, workshop: { ...input.workshop, rates } };
  };
}

function line({ what, unit, median: middle, p99 }: BenchRow): string {
  const tail = p99 === null ? '' : `   p99 ${p99.toFixed(1)} ${unit}`;
  return `${what.padEnd(60)} ${middle.toFixed(1).padStart(8)} ${unit}${tail}`;
}
