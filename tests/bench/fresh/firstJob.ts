import { priceJob } from '@/lib/costing/priceJob';
import { clubOrder } from '@/lib/examples/clubOrder';
import { Grid } from '@/lib/grid/evaluateGrid';
import { timeOf } from '@/tests/bench/measure';

const club = clubOrder('2026-11-25', '2026-12-11');
process.stdout.write(String(timeOf(() => priceJob(club, new Grid()))));
