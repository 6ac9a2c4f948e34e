import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { quoteAsked } from '@/app/_orderBook/quoteAsked';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import { changedSince } from '@/lib/orders/repeat/changedSince';
import type { repeatOrder } from '@/lib/orders/repeat/repeatOrder';
import { orderTax } from '@/lib/quotes/orderTax';
import { quotedRates } from '@/lib/quotes/quotedRates';

/** @returns what is otherwise than when the order was quoted; null where no quote of it is here. */
export function changedSinceQuote(
  { facts, standing }: BoardOrder,
  { jobs }: ReturnType<typeof repeatOrder>,
  { workspace, book }: { readonly workspace: ReadyWorkspace; readonly book: OrderBook },
): ReturnType<typeof changedSince> | null {
  const quote = standing.agreed?.quote ?? standing.lastQuote;
  const asked = quoteAsked(workspace, book, { sure: [] }, facts.orderId);
  if (quote === null || asked === null) return null;
  const tax = orderTax(asked);
  return changedSince({
    quote,
    ratesNow: quotedRates(asked.jobs),
    artworksNow: facts.artworks,
    jobs: jobs.map(({ job }) => job),
    blanks: workspace.blanks,
    // How it cannot be taxed today, the quote of the new order will say.
    taxNow: tax.ok ? tax.value.paper : quote.body.tax,
  });
}
