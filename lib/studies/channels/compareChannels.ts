import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { piecesOf } from '@/lib/grid/fillLine';
import type { ResolvedJob } from '@/lib/job/checkedJob';
import { batchEvaluator } from '@/lib/studies/curve/batchEvaluator';
import { failed, ok, type Result } from '@/shared/result';
import type { Rate } from '@/shared/schemas/rate';
import type { RateUnit } from '@/shared/tables/rateCatalogue';
import { type ChannelOffer, checkOffer, type OfferProblem } from './channelOffer';

/** What the whole job leaves when it is sold one way; currency units without tax, unrounded. */
export interface ChannelResult {
  readonly kind: ChannelOffer['kind'];
  readonly name: string;
  /** What the channel is invoiced. */
  readonly revenue: number;
  /** Commission and card fees. */
  readonly fees: number;
  /** Revenue less fees. */
  readonly net: number;
  /** Pay and overhead of the hours that selling takes, and what its days cost. */
  readonly costToServe: number;
  /** Full cost with that in it. */
  readonly fullCost: number;
  readonly profit: number;
  readonly margin: number;
  /** Profit and own pay over all hours, those of selling included. */
  readonly payPerHour: number;
  readonly cashInDays: number;
}

export type ChannelProblem = (OfferProblem & { readonly name: string }) | { readonly kind: 'unknownCost' };

/**
 * The same pieces sold in several ways, side by side. Each goes through the same rows of the grid as the job itself,
 * with the fees of its channel and with what selling there takes.
 *
 * @returns one result for each offer, in their order
 */
export function compareChannels(
  { laidOut }: CostedJob,
  grid: Grid,
  offers: readonly ChannelOffer[],
): Result<readonly ChannelResult[], ChannelProblem> {
  const { job, prints } = laidOut;
  const n = job.lines.reduce((sum, line) => sum + piecesOf(line), 0);
  const results: ChannelResult[] = [];
  for (const offer of offers) {
    const problem = checkOffer(offer);
    if (problem !== null) return failed({ ...problem, name: offer.name });
    const sold = { job: soldBy(job, offer, n), prints };
    const wanted = [{ n, priceEach: offer.retail * offer.shareOfRetail }];
    const made = batchEvaluator(sold, grid, { sellingMinutes: 0, dayCost: 0 })(wanted)[0] ?? null;
    const served = batchEvaluator(sold, grid)(wanted)[0] ?? null;
    if (made === null || served === null) return failed({ kind: 'unknownCost' });
    results.push({
      kind: offer.kind,
      name: offer.name,
      revenue: served.price,
      fees: served.fees,
      net: served.price - served.fees,
      costToServe: served.fullCost - made.fullCost,
      fullCost: served.fullCost,
      profit: served.profit,
      margin: served.margin,
      payPerHour: served.payPerHour,
      cashInDays: offer.cashInDays,
    });
  }
  return ok(results);
}

function soldBy(job: ResolvedJob, offer: ChannelOffer, pieces: number): ResolvedJob {
  const rate = <Unit extends RateUnit>(value: number, unit: Unit): Rate<Unit> => ({
    value,
    unit,
    date: job.asOf,
    origin: 'yours',
  });
  return {
    ...job,
    job: { ...job.job, cardPayments: offer.cardPayments },
    channel: {
      id: job.channel.id,
      name: offer.name,
      kind: offer.kind,
      taxMode: offer.taxMode,
      tax: rate(offer.tax, 'share'),
      commission: rate(offer.commission, 'share'),
      commissionBase: offer.commissionBase,
      cardFee: rate(offer.cardFee, 'share'),
      cardFixedFee: rate(offer.cardFixedFee, 'money/ticket'),
      cardShare: rate(offer.cardShare, 'share'),
      piecesPerTicket: rate(offer.piecesPerTicket, 'pieces'),
      shareOfRetail: null,
      sellingMinutesPerPiece: rate(offer.sellingMinutes / pieces, 'min'),
      dayCost: rate(offer.sellingCost / pieces, 'money'),
      dayPieces: rate(1, 'pieces'),
      cashInDays: null,
    },
  };
}
