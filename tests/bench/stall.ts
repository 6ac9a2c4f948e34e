import { Grid } from '@/lib/grid/evaluateGrid';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import { openTicket } from '@/lib/stall/count/openTicket';
import type { WallClock } from '@/lib/stall/count/sellingTime';
import { MakingKept } from '@/lib/stall/plan/costs/makingKept';
import { planStall } from '@/lib/stall/plan/planStall';
import type { StallAsked } from '@/lib/stall/plan/stallAsked';
import { fairAsked, fairWith } from '@/tests/fixtures/fairAsked';
import { largeFair } from '@/tests/fixtures/largeFair';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { aTapLog, saleOf, tapOn } from '@/tests/fixtures/stallTaps';
import { type BenchRow, cpuRow } from './benchRow';
import { cpuTimes } from './measure';

const SALES = 2000;

/** What one tap costs at the end of a long day, and a plan: at first, and for a number that is typed into it. */
export const benchStall = async (): Promise<readonly BenchRow[]> => [
  ...(await benchTaps()),
  ...(await benchPlan('27 goods', fairAsked, 20)),
  ...(await benchPlan('288 goods within limits', largeFair(), 5)),
  ...(await benchPlan('27 goods, six times as many, within places and money', crowded(6, 200, 1500), 10)),
  ...(await benchPlan('27 goods, four million pieces', crowded(20_000, null, null), 5)),
];

// Helpers

/** The worked fair with so many times as many customers. */
const crowded = (times: number, tablePieces: number | null, cash: number | null): StallAsked =>
  fairWith({
    ranges: fairAsked.stallDay.ranges.map((range) => ({ ...range, pieces: (range.pieces ?? 0) * times })),
    limits: { tablePieces, cash, benchHours: null },
  });

/** Both folds that the screen of the count rests on. */
async function benchTaps(): Promise<readonly BenchRow[]> {
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

async function benchPlan(what: string, asked: StallAsked, count: number): Promise<readonly BenchRow[]> {
  const grid = new Grid();
  const kept = new MakingKept();
  const { stallDay } = asked;
  let typed = 0;
  const retyped = () => {
    typed += 1;
    const held = stallDay.held.map((one, at) => (at === 0 ? { ...one, bring: typed } : one));
    planStall({ ...asked, stallDay: { ...stallDay, held } }, grid, kept);
  };
  return [
    cpuRow(`a plan of ${what}, nothing kept`, await cpuTimes(count, () => planStall(asked, grid))),
    cpuRow(`one held number in a plan of ${what}`, await cpuTimes(count, retyped)),
  ];
}
