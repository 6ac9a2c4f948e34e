import { namedInput } from '@/app/_documents/namedInput';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { QuoteAsked } from '@/lib/quotes/quoteAsked';
import type { Bench } from './useBench';
import type { OrderBook } from './useOrderBook';

/**
 * Everything the quote of an order is made of.
 *
 * @returns null where there is no such order
 */
export function quoteAsked(
  workspace: ReadyWorkspace,
  { of, jobOf, today }: OrderBook,
  { sure }: Pick<Bench, 'sure'>,
  orderId: string,
): QuoteAsked | null {
  const found = of(orderId);
  if (found === null) return null;
  const { workshop, blanks, artworks, onHand, approvedVersions, customers, papers } = workspace;
  const { order } = found.facts;
  const named = new Set(order.lines.flatMap(({ price }) => (price.from === 'list' ? [price.paperId] : [])));
  return {
    orderId,
    order,
    orderNumber: found.standing.number,
    jobs: order.jobIds.flatMap((jobId) => {
      const job = jobOf(jobId)?.job;
      if (job === undefined) return [];
      const input = { asOf: today, workshop, blanks, artworks, job, onHand, approvedVersions };
      return [{ jobId, input: namedInput(input) }];
    }),
    customer: order.customerId === null ? null : (customers[order.customerId] ?? null),
    versions: papers.priceListVersion
      .filter(({ id }) => named.has(id))
      .map(({ id, body, withdrawn }) => ({ paperId: id, version: body, isWithdrawn: withdrawn })),
    day: today,
    load: sure.map(({ load }) => load),
  };
}
