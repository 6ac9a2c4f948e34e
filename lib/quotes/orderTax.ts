import { taxInside } from '@/lib/price/tax/taxOf';
import { daysBetween } from '@/shared/days';
import type { MinorUnits } from '@/shared/money';
import { failed, ok, type Result } from '@/shared/result';
import type { TaxOnPaper } from '@/shared/schemas/paperParts';
import type { JobInput } from '@/shared/schemas/request';
import type { QuoteAsked, QuotedJob } from './quoteAsked';
import type { QuoteObstacle } from './quoteObstacle';

/** How tax stands to the prices of an order. */
export interface OrderTax {
  readonly paper: TaxOnPaper;
  readonly channelId: string;
  /** As the way of selling writes prices, also to whoever pays no tax. */
  readonly mode: 'added' | 'inside' | 'none';
  /** An amount as the way of selling writes it, as it stands on the paper: without tax for whoever pays none. */
  readonly onPaper: (written: MinorUnits) => MinorUnits;
}

/** @returns how an order is taxed, or all that stands in the way at once. */
export function orderTax({
  order,
  customer,
  jobs,
  day,
}: QuoteAsked): Result<OrderTax, readonly QuoteObstacle[]> {
  const [first] = jobs;
  if (first === undefined) return failed([]);
  const { workshop } = first.input;
  const channelId = order.channelId ?? first.input.job.channelId;
  const channel = workshop.channels.find(({ id }) => id === channelId);
  if (channel === undefined) return failed([{ kind: 'noChannel' }]);
  const { taxMode } = channel;
  if (taxMode === null) return failed([{ kind: 'noTaxMode', channel: channel.name }]);
  const obstacles = [...mixed(jobs, channelId), ...(order.exempt ? unproven(customer, day) : [])];
  if (obstacles.length > 0) return failed(obstacles);
  const share = taxMode === 'none' ? 0 : (channel.tax?.value ?? 0);
  const { taxRounding: rounding } = workshop.policy;
  const certificate = order.exempt ? (customer?.exemption?.number ?? null) : null;
  return ok({
    channelId,
    mode: taxMode,
    paper:
      certificate === null
        ? { mode: taxMode, share, rounding, exemption: null }
        : { mode: 'none', share: 0, rounding, exemption: certificate },
    onPaper: (written) =>
      certificate !== null && taxMode === 'inside' ? taxInside(written, share).without : written,
  });
}

/** @returns a job as it is sold in an order: by its channel, for the day it is wanted. */
export function soldInput(
  { input }: QuotedJob,
  { order }: Pick<QuoteAsked, 'order'>,
  channelId: string,
): JobInput {
  const { job } = input;
  return { ...input, job: { ...job, channelId, wantedOn: order.wantedOn ?? job.wantedOn } };
}

/** @returns a job where no tax is taken: what is asked is all that is paid. */
export function untaxedJob({ jobId, input }: QuotedJob): QuotedJob {
  const { workshop, job } = input;
  const channels = workshop.channels.map((channel) =>
    channel.id === job.channelId ? { ...channel, taxMode: 'none' as const } : channel,
  );
  return { jobId, input: { ...input, workshop: { ...workshop, channels } } };
}

// Helpers

function mixed(jobs: readonly QuotedJob[], channelId: string): readonly QuoteObstacle[] {
  const used = [channelId, ...jobs.map(({ input }) => input.job.channelId)];
  const channels = (jobs[0]?.input.workshop.channels ?? []).filter(({ id }) => used.includes(id));
  const isMixed = new Set(channels.map(({ taxMode }) => taxMode === 'inside')).size > 1;
  return isMixed ? [{ kind: 'mixedChannels', channels: channels.map(({ name }) => name) }] : [];
}

function unproven(customer: QuoteAsked['customer'], day: string): readonly QuoteObstacle[] {
  const exemption = customer?.exemption ?? null;
  if (exemption === null) return [{ kind: 'noCertificate' }];
  const { validUntil } = exemption;
  return validUntil !== null && daysBetween(day, validUntil) < 0
    ? [{ kind: 'certificateExpired', on: validUntil }]
    : [];
}
