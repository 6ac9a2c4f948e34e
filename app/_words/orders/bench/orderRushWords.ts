import type { Formatter } from '@/app/_words/formatter';
import type { RushOfDay } from '@/lib/studies/charges/rushFor';

/**
 * @param isCharged whether a charge for haste stands in the order already
 * @returns what is usual to charge for a day sooner than an order takes; null where it is not sooner
 */
export function orderRushWords(
  { outcome, wantedDays, normalDays }: RushOfDay,
  isCharged: boolean,
  formatter: Formatter,
): string | null {
  const sooner = `${formatter.count(wantedDays, 'working day')} instead of the usual ${formatter.number(normalDays)}`;
  switch (outcome.kind) {
    case 'none':
      return null;
    case 'rush': {
      const next = isCharged ? 'The quote has a charge for it.' : 'Add it to the quote.';
      return `Wanted in ${sooner}: your charge for haste is ${formatter.share(outcome.share)} of the price. ${next}`;
    }
    case 'noCapacity':
      return `Wanted in ${sooner}, and the hours for it are not free: no charge buys them. Agree on a later day.`;
    default:
      return outcome satisfies never;
  }
}
