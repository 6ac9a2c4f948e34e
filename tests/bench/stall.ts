import { foldTaps } from '@/lib/stall/count/foldTaps';
import { openTicket } from '@/lib/stall/count/openTicket';
import type { WallClock } from '@/lib/stall/count/sellingTime';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { aTapLog, saleOf, tapOn } from '@/tests/fixtures/stallTaps';
import { type BenchRow, cpuRow } from './benchRow';
import { cpuTimes } from './measure';

const SALES = 2000;

/** What one tap costs at the end of a long day: both folds that the screen of the count rests on. */
export async function benchStall(): Promise<readonly BenchRow[]> {
  const log = aTapLog();
  for (let at = 0; at < SALES; at += 1) {
    const goods = fairPlan.goods[at % fairPlan.goods.length];
    if (goods !== undefined) tapOn(log, saleOf(goods, at % 4 === 0 ? 'cash' : 'card'));
    if (at % 2 === 1) tapOn(log, { what: 'next' });
  }
  const wallAt: WallClock = (at) => ({ day: '2026-11-25', minute: 600 + Math.floor(at / 60_000) });
  return [
    cpuRow(
      `one tap with ${SALES.toLocaleString('en')} sales in the day, folded`,
      await cpuTimes(40, () => {
        foldTaps(fairPlan, log.taps, wallAt);
        openTicket(fairPlan, log.taps, log.device);
      }),
    ),
  ];
}
