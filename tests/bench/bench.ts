import { clubOrder } from '@/lib/examples/clubOrder';
import { benchPacking } from '@/tests/bench/packing/benchPacking';
import { benchArtwork } from './artwork';
import { benchApi } from './benchApi';
import { type BenchRow, lineOf } from './benchRow';
import { benchCurve } from './curve';
import { benchEdits } from './edits';
import { benchEngine } from './engine';
import { benchMaking } from './making';
import { benchOrders } from './orders';
import { benchStall } from './stall';

/*
 * npm run bench [-- --json]: what an edit costs, what building the engine costs, how the API stands a crowd, what orders
 * and their papers take, a tap and a plan at a stall, runs, stock and a year. Beside each stands its ratio to a yardstick
 * measured in turn with it, since machines differ by a factor of two.
 */

const club = clubOrder('2026-11-25', '2026-12-11');
const rows: BenchRow[] = [
  ...benchEngine(club),
  ...benchEdits(club),
  ...benchCurve(),
  ...(await benchOrders()),
  ...(await benchStall()),
  ...benchMaking(),
];
if (!process.argv.includes('--no-long')) rows.push(...(await benchPacking()), ...benchArtwork());
if (!process.argv.includes('--no-api')) rows.push(...(await benchApi(club)));

if (process.argv.includes('--json')) process.stdout.write(`${JSON.stringify(rows, null, 2)}\n`);
else for (const row of rows) process.stdout.write(`${lineOf(row)}\n`);
