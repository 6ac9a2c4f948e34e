import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import { asName } from '@/lib/quotes/asName';
import { confirmationOf, type Issued } from '@/lib/quotes/following/followingPapers';
import { sumsWithChanges } from '@/lib/quotes/saleSums';
import type { Confirmation } from '@/shared/schemas/orderPapers';

/**
 * What was agreed, as the accepted quote says it: nothing is priced again.
 *
 * @returns null where nothing was accepted, or its quote is not on this device
 */
export function agreedPaper(
  { standing }: Pick<OrderOnPaper, 'standing'>,
  issued: Issued,
): Confirmation | null {
  const { agreed, acceptance } = standing;
  if (agreed === null || acceptance === null) return null;
  const { quote, alternativeId } = agreed;
  const made = confirmationOf(
    { paperId: quote.id, quote: quote.body },
    { alternativeId, by: acceptance.by, on: acceptance.day },
    issued,
  );
  return made.ok ? made.value : null;
}

/** @returns what was agreed, with all that it came to since: changes, and less what was credited. */
export function owedPaper(of: Pick<OrderOnPaper, 'standing'>, issued: Issued): Confirmation | null {
  const agreed = agreedPaper(of, issued);
  if (agreed === null) return null;
  const sums = sumsWithChanges(agreed, changesOf(of));
  return { ...agreed, sums: { ...sums, total: of.standing.money.totalMinor ?? sums.total } };
}

// Helpers

/** @returns changes in the money of the order, as a paper names them. */
const changesOf = ({ standing }: Pick<OrderOnPaper, 'standing'>) =>
  standing.changes
    .filter(({ currency, amountMinor }) => currency === standing.money.currency && amountMinor > 0)
    .map(({ wish, amountMinor }) => ({ what: asName(wish), amount: amountMinor }));
