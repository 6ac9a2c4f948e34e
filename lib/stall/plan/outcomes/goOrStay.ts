import { lossUnsold } from '@/lib/stall/lossUnsold';
import { poissonDemand } from '@/lib/stall/plan/demand/demand';
import type { StallPlanned } from '@/lib/stall/plan/stallPlanned';
import type { PlanSeen } from './planOutcomes';

/** To a billionth of the best weather's factor, which nobody types so finely. */
const FINEST = 2 ** -30;

/**
 * Whether to go, by what only staying at home saves: what is made is made, the stall is paid, and overhead is no money
 * of the day. A piece that is sold earns what it leaves over its leftover value, wherever it comes from.
 */
export function goOrStay(seen: PlanSeen): StallPlanned['goOrStay'] {
  const { day, scenarios } = seen;
  const pay = day.hours * day.wage;
  const avoidable = day.avoidable + pay;
  const byFactor = [...scenarios].filter(({ chance }) => chance > 0).sort((a, b) => a.factor - b.factor);
  const [worst] = byFactor;
  const earnsWorst = earned(seen, worst?.factor ?? 0).earns;
  const stayHomeBelow = factorThatPays(seen, avoidable, byFactor.at(-1)?.factor ?? 0);
  return {
    avoidable,
    sunk: day.sunk,
    worst: {
      weather: worst?.name ?? '',
      weatherIds: worst?.weatherIds ?? [],
      earns: earnsWorst,
      payPerHour: day.hours > 0 ? (earnsWorst - avoidable + pay) / day.hours : null,
    },
    stayHomeBelow,
    verdict: stayHomeBelow === null ? 'stay' : earnsWorst >= avoidable ? 'go' : 'goUnless',
  };
}

// Helpers

/** Mean earned over the leftover value in a weather of a factor, and how fast that rises with the factor. */
function earned(
  { goods, bring }: PlanSeen,
  factor: number,
): { readonly earns: number; readonly rise: number } {
  let [earns, rise] = [0, 0];
  for (const [at, one] of goods.entries()) {
    const { expected, contribution } = one;
    const brought = bring[at] ?? 0;
    if (brought === 0) continue;
    const { sold, chanceUpTo } = poissonDemand(expected * factor);
    const each = contribution + lossUnsold(one);
    earns += sold(brought) * each;
    // One more asked for is one more sold while some are left.
    rise += expected * chanceUpTo(brought - 1) * each;
  }
  return { earns, rise };
}

/**
 * @returns the least factor at which going earns what it costs; null where even the best weather does not. Found along
 * the slope, and by halves where that leads away.
 */
function factorThatPays(seen: PlanSeen, avoidable: number, best: number): number | null {
  if (avoidable <= 0) return 0;
  if (earned(seen, best).earns < avoidable) return null;
  const finest = best * FINEST;
  let [low, high] = [0, best];
  let next = 0;
  while (high - low > finest) {
    const { earns, rise } = earned(seen, next);
    if (earns < avoidable) low = next;
    else high = next;
    // A little beyond, so that both ends close in.
    const along = next + (avoidable - earns) / rise + (finest / 2) * (earns < avoidable ? 1 : -1);
    next = along > low && along < high ? along : (low + high) / 2;
  }
  return high;
}
