import { demandOf } from '@/lib/stall/plan/demand/demand';
import type { StallPlanned } from '@/lib/stall/plan/stallPlanned';
import type { PlanSeen } from './planOutcomes';

/** To a billionth of the best weather's factor, which nobody types so finely. */
const HALVINGS = 30;

/**
 * Whether to go, by what only staying at home saves: what is made is made, the stall is paid, and overhead is no money
 * of the day. A piece that is sold earns what it leaves over its leftover value.
 */
export function goOrStay(seen: PlanSeen): StallPlanned['goOrStay'] {
  const { day, scenarios } = seen;
  const pay = day.hours * day.wage;
  const avoidable = day.avoidable + pay;
  const byFactor = [...scenarios].filter(({ chance }) => chance > 0).sort((a, b) => a.factor - b.factor);
  const [worst] = byFactor;
  const earnsWorst = earns(seen, worst?.factor ?? 0);
  const stayHomeBelow = factorThatPays(seen, avoidable, byFactor.at(-1)?.factor ?? 0);
  return {
    avoidable,
    sunk: day.sunk,
    worst: {
      weather: worst?.name ?? '',
      earns: earnsWorst,
      payPerHour: day.hours > 0 ? (earnsWorst - avoidable + pay) / day.hours : null,
    },
    stayHomeBelow,
    verdict: stayHomeBelow === null ? 'stay' : earnsWorst >= avoidable ? 'go' : 'goUnless',
  };
}

// Helpers

/** Mean earned over the leftover value in a weather of a factor. */
const earns = ({ goods, bring }: PlanSeen, factor: number): number =>
  goods.reduce((sum, each, at) => {
    const brought = bring[at] ?? 0;
    if (brought === 0) return sum;
    const sold = demandOf([{ chance: 1, mean: each.expected * factor }]).sold(brought);
    return sum + sold * (each.contribution + (1 - each.leftoverShare) * each.cost);
  }, 0);

/** @returns the least factor at which going earns what it costs; null where even the best weather does not. */
function factorThatPays(seen: PlanSeen, avoidable: number, best: number): number | null {
  if (avoidable <= 0) return 0;
  if (earns(seen, best) < avoidable) return null;
  let [low, high] = [0, best];
  for (let turn = 0; turn < HALVINGS; turn += 1) {
    const middle = (low + high) / 2;
    if (earns(seen, middle) < avoidable) low = middle;
    else high = middle;
  }
  return high;
}
