import { costOffered } from '@/lib/costing/offeredJob';
import type { CostedJob } from '@/lib/grid/costJob';
import { wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import type { KnownChannel } from '@/lib/job/checkedJob';
import { type Till, tillOf } from '@/lib/price/tax/tillOf';
import type { JobInput } from '@/shared/schemas/request';
import type { Channel } from '@/shared/schemas/workshop';
import { channelTypicals, sellingTypicals } from '@/shared/tables/typicalRates';
import { type ChannelOffer, customaryTerms } from './channelOffer';
import { type ChannelProblem, type ChannelResult, compareChannels } from './compareChannels';
import { type WholesaleRule, wholesaleRule } from './wholesaleRule';

/** The job sold one way, and whose terms those are. */
export interface SoldWay extends ChannelResult {
  /** The workshop's own; null where it has none of this kind and customary terms stand in. */
  readonly channelId: string | null;
  readonly isJobs: boolean;
  /** Whether any of its terms of selling is customary and not the maker's. */
  readonly isCustomary: boolean;
  /** Whether its figures bear the time of selling: as the maker says, as is customary, or not, as nobody has said. */
  readonly selling: 'own' | 'customary' | 'notSaid';
}

export interface ChannelsAnswer {
  readonly currency: string;
  readonly pieces: number;
  /** What the last buyer pays for a piece on average, without tax, unrounded. */
  readonly retailEach: number;
  readonly ways: readonly SoldWay[];
  readonly problem: ChannelProblem | null;
  /** Null where wholesale gives no number. */
  readonly rule: WholesaleRule | null;
  /** What the buyer pays for the job as it would go out; null while nobody has said how tax stands to it. */
  readonly till: Till | null;
}

const kinds = ['stall', 'order', 'wholesale', 'consignment'] as const satisfies readonly Channel['kind'][];

/** @returns the job's pieces sold in four ways, side by side; null while it cannot be costed. */
export function channelsAnswer(input: JobInput, grid: Grid): ChannelsAnswer | null {
  const offered = costOffered(input, grid);
  if (offered === null) return null;
  const { costed } = offered;
  const pieces = wholeJob(costed.sheet, 'goodPieces');
  const invoiced = wholeJob(costed.sheet, 'price') / pieces;
  // What is asked of a shop is what the shop pays; its buyers pay more.
  const retailEach = invoiced / shareOfRetail(costed.laidOut.job.channel);
  const sold = kinds.map((kind) => wayOf(costed, kind, retailEach, pieces));
  const compared = compareChannels(
    costed,
    grid,
    sold.map(({ offer }) => offer),
  );
  const ways = compared.ok
    ? compared.value.flatMap((result, index): readonly SoldWay[] => {
        const way = sold[index];
        if (way === undefined) return [];
        const { channelId, isJobs, isCustomary, selling } = way;
        return [{ ...result, channelId, isJobs, isCustomary, selling }];
      })
    : [];
  const wholesale = ways.find(({ kind }) => kind === 'wholesale');
  const margin = costed.sheet.jobValues.targetMargin ?? 0;
  const rule =
    wholesale === undefined
      ? null
      : wholesaleRule((wholesale.fullCost + wholesale.fees) / pieces, margin, retailEach);
  return {
    currency: input.workshop.currency,
    pieces,
    retailEach,
    ways,
    problem: compared.ok ? null : compared.problem,
    rule: rule?.ok === true ? rule.value : null,
    till: tillOf(costed.laidOut.job),
  };
}

function wayOf(costed: CostedJob, kind: Channel['kind'], retailEach: number, pieces: number) {
  const { job } = costed.laidOut;
  const isJobs = job.channel.kind === kind;
  const own = isJobs ? job.channel : job.workshop.channels.find((channel) => channel.kind === kind);
  const typical = channelTypicals[kind];
  const usual = customaryTerms[kind];
  const of = (rate: { readonly value: number } | null | undefined, otherwise: number | null) =>
    rate?.value ?? otherwise ?? 0;
  const taxMode = own?.taxMode ?? 'none';
  const tax = taxMode === 'none' ? 0 : of(own?.tax, typical.tax.typical);
  const offer: ChannelOffer = {
    kind,
    name: own?.name ?? kind,
    retail: retailEach * (taxMode === 'inside' ? 1 + tax : 1),
    shareOfRetail: of(own?.shareOfRetail, usual.shareOfRetail),
    taxMode,
    tax,
    commission: of(own?.commission, kind === 'consignment' ? typical.commission.typical : 0),
    commissionBase: own?.commissionBase ?? 'withoutTax',
    cardFee: of(own?.cardFee, typical.cardFee.typical),
    cardFixedFee: of(own?.cardFixedFee, typical.cardFixedFee.typical),
    // Shops pay by transfer unless the maker says otherwise.
    cardShare: of(own?.cardShare, kind === 'stall' || kind === 'order' ? typical.cardShare.typical : 0),
    cardPayments: isJobs ? job.job.cardPayments : kind === 'order' ? 1 : 0,
    piecesPerTicket: of(own?.piecesPerTicket, typical.piecesPerTicket.typical ?? 1),
    // The job's own way counts what the job counts: minutes nobody has said are in no figure of it.
    sellingMinutes: of(own?.sellingMinutesPerPiece, isJobs ? 0 : usual.sellingMinutesPerPiece) * pieces,
    sellingCost: dayCostEach(own) * pieces,
    cashInDays: own?.cashInDays ?? usual.cashInDays,
  };
  const isSaid = own !== undefined && (own.sellingMinutesPerPiece !== null || own.dayCost !== null);
  const selling = isSaid || usual.sellingMinutesPerPiece === 0 ? 'own' : isJobs ? 'notSaid' : 'customary';
  const isCustomary =
    own === undefined ||
    selling === 'customary' ||
    own.cashInDays === null ||
    (kind === 'wholesale' && own.shareOfRetail === null);
  return { offer, channelId: own?.id ?? null, isJobs, isCustomary, selling } as const;
}

/** A share of nothing is told of as a problem of that way, not by a price without end. */
const shareOfRetail = ({ kind, shareOfRetail: own }: KnownChannel): number =>
  (own?.value ?? customaryTerms[kind].shareOfRetail) || 1;

/** What a piece bears of a selling day; nothing is customary, so nothing stands in where there are none. */
function dayCostEach(channel: Channel | KnownChannel | undefined): number {
  const cost = channel?.dayCost?.value ?? 0;
  return cost / (channel?.dayPieces?.value ?? sellingTypicals.dayPieces.typical ?? 1);
}
