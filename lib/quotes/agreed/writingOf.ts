import { taxAdded } from '@/lib/price/tax/taxOf';
import type { MinorUnits } from '@/shared/money';
import type { Job } from '@/shared/schemas/job';
import type { Order } from '@/shared/schemas/order';
import type { Quote } from '@/shared/schemas/orderPapers';
import type { Workshop } from '@/shared/schemas/workshop';

/** How an amount of a paper stands in its jobs: as the way of selling writes it. */
export interface Writing {
  readonly written: (amount: MinorUnits) => MinorUnits;
  readonly currency: string;
}

/** What was accepted of an order, and its jobs as they are. */
export interface OfAgreed {
  readonly quote: Quote;
  /** The alternative that was chosen; null for what was asked. */
  readonly alternativeId: string | null;
  readonly order: Pick<Order, 'channelId' | 'lines'>;
  /** Those of the order that are here. */
  readonly jobs: readonly { readonly jobId: string; readonly job: Job }[];
  readonly workshop: Pick<Workshop, 'channels' | 'currency'>;
}

/** @returns null where prices stand otherwise to tax by now, or are of another currency. */
export function writingOf({ quote, order, jobs, workshop }: OfAgreed): Writing | null {
  const { currency } = quote;
  const channelId = order.channelId ?? jobs[0]?.job.channelId;
  const channel = workshop.channels.find(({ id }) => id === channelId);
  const written = channel === undefined ? null : writtenBy(quote, channel);
  return written === null || workshop.currency !== currency ? null : { written, currency };
}

// Helpers

function writtenBy(
  { tax }: Quote,
  channel: Workshop['channels'][number],
): ((amount: MinorUnits) => MinorUnits) | null {
  if (channel.taxMode === null) return null;
  // Whoever pays no tax was told prices without it.
  if (tax.exemption !== null && channel.taxMode === 'inside') {
    const share = channel.tax?.value ?? 0;
    return (amount) => taxAdded(amount, share).with;
  }
  const isAlike = tax.exemption !== null || (tax.mode === 'inside') === (channel.taxMode === 'inside');
  return isAlike ? (amount) => amount : null;
}
