import { broughtFromHome } from '@/lib/stall/broughtFromHome';
import { lossUnsold } from '@/lib/stall/lossUnsold';
import type { GoodsReckoned } from '@/lib/stall/plan/goodsReckoned';
import type { StallBreakEven } from '@/lib/stall/plan/stallPlanned';
import { fixedOf, outcomeOf, type PlanSeen, soldOf } from './planOutcomes';

/**
 * Pieces that must be sold until the day has earned its money, its pay, everything, and the loss of value of what stays;
 * in the mix that sells in the best weather that can be.
 *
 * @returns null where nothing sells or a piece leaves nothing
 */
export function breakEvens(seen: PlanSeen): StallBreakEven | null {
  const { goods, bring, day, scenarios } = seen;
  const best = scenarios.reduce(
    (top, { chance, factor }, at) => (chance > 0 && factor > (scenarios[top]?.factor ?? -1) ? at : top),
    -1,
  );
  const sold = soldOf(seen, ({ demands }, brought) => demands[best]?.sold(brought) ?? 0);
  const { sold: pieces, contribution } = outcomeOf(seen, sold);
  const each = pieces > 0 ? contribution / pieces : 0;
  if (!(each > 0)) return null;
  const money = day.sunk + day.avoidable;
  const total = (of: (one: GoodsReckoned, at: number) => number) =>
    goods.reduce((sum, one, at) => sum + of(one, at), 0);
  const fixed = fixedOf(seen);
  // What is made for the day loses unless it is sold; what came from home lost it before.
  const lost = total((one, at) => lossUnsold(one) * made(one, bring[at] ?? 0));
  const spared = total((one, at) => lossUnsold(one) * ((sold[at]?.all ?? 0) - (sold[at]?.fromHome ?? 0)));
  const withWriteDown = (fixed + lost) / (each + spared / pieces);
  return {
    cash: money / each,
    withPay: (money + day.hours * day.wage) / each,
    everything: fixed / each,
    withWriteDown: withWriteDown <= total((_, at) => bring[at] ?? 0) ? withWriteDown : null,
    contributionPerPiece: each,
  };
}

// Helpers

const made = ({ finishedBefore }: GoodsReckoned, brought: number): number =>
  brought - broughtFromHome(brought, finishedBefore);
