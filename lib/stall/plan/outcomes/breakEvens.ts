import type { GoodsReckoned } from '@/lib/stall/plan/advice/goodsReckoned';
import type { StallBreakEven } from '@/lib/stall/plan/stallPlanned';
import { fixedOf, type PlanSeen } from './planOutcomes';

/**
 * Pieces that must be sold until the day has earned its money, its pay, everything, and the loss of value of what stays;
 * in the mix that sells in the best weather.
 *
 * @returns null where nothing sells or a piece leaves nothing
 */
export function breakEvens(seen: PlanSeen): StallBreakEven | null {
  const { goods, bring, day, scenarios } = seen;
  const best = scenarios.reduce(
    (top, { factor }, at) => (factor > (scenarios[top]?.factor ?? 0) ? at : top),
    0,
  );
  const sold = goods.map(({ demands }, at) => demands[best]?.sold(bring[at] ?? 0) ?? 0);
  const total = (of: (each: GoodsReckoned) => number, pieces: readonly number[]) =>
    goods.reduce((sum, each, at) => sum + of(each) * (pieces[at] ?? 0), 0);
  const pieces = total(() => 1, sold);
  const each = pieces > 0 ? total(({ contribution }) => contribution, sold) / pieces : 0;
  if (!(each > 0)) return null;
  const money = day.sunk + day.avoidable;
  const fixed = fixedOf(seen);
  const lost = ({ cost, leftoverShare }: GoodsReckoned) => (1 - leftoverShare) * cost;
  const withWriteDown = (fixed + total(lost, bring)) / (each + total(lost, sold) / pieces);
  return {
    cash: money / each,
    withPay: (money + day.hours * day.wage) / each,
    everything: fixed / each,
    withWriteDown: withWriteDown <= total(() => 1, bring) ? withWriteDown : null,
    contributionPerPiece: each,
  };
}
