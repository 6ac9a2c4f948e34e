import type { DayCount } from '@/lib/stall/count/dayCount';
import { fromMinor, LARGEST_AMOUNT, type MinorUnits } from '@/shared/money';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { coinsMinor } from './dayMoney';
import type { EveningAnswers } from './eveningAnswers';
import { stockRows } from './stockRows';

/**
 * Whether what is said of a day, beside what was tapped, comes to more than can be kept exact to the cent: nothing can
 * be reckoned with it before it is mended.
 */
export function isBeyondReach(plan: StallPlan, count: DayCount, answers: EveningAnswers): boolean {
  const { cash, card } = answers;
  const goods = stockRows(plan, count, answers).reduce(
    (sum, { untapped, untappedEachMinor }) => sum + Math.abs(untapped * untappedEachMinor),
    0,
  );
  const tin = cash.coins === null ? (cash.counted ?? 0) : coinsMinor(cash.coins, plan.currency);
  const minor = goods + tin + (card.total ?? 0) + (card.payout?.minor ?? 0);
  const fees = (card.tickets ?? 0) * plan.cardFixedFee;
  return fromMinor(minor as MinorUnits, plan.currency) + fees > LARGEST_AMOUNT / 4;
}
