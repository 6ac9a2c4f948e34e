import type { Job } from '@/shared/schemas/job';
import type { Channel } from '@/shared/schemas/workshop';
import { type RateName, rateNames } from '@/shared/tables/rateCatalogue';

/** Paid once for an order; goods made for stock have no enquiry, no proof, no carton and no delivery. */
const ordersOnly: readonly RateName[] = [
  'enquiryMinutes',
  'proofMinutes',
  'packMinutes',
  'deliverMinutes',
  'packagingPerOrder',
  'travelRate',
];

/** Nothing is counted where the distance is left open; where it is 0 nobody drives, and it is posted. */
const deliveriesOnly: readonly RateName[] = ['deliverMinutes', 'travelRate'];

/**
 * The workshop rates that a sum of this job stands on. The others may be missing without a word.
 *
 * @returns names of the catalogue
 */
export const neededRates = (job: Pick<Job, 'madeFor' | 'deliveryKm'>): ReadonlySet<RateName> =>
  new Set(
    rateNames.filter(
      (name) =>
        (job.madeFor === 'order' || !ordersOnly.includes(name)) &&
        (job.deliveryKm !== null || !deliveriesOnly.includes(name)) &&
        (job.deliveryKm !== 0 || name !== 'travelRate'),
    ),
  );

type ChannelRateName = 'tax' | 'commission' | 'cardFee' | 'cardFixedFee' | 'cardShare' | 'piecesPerTicket';

/**
 * The rates of a channel that a price of this job stands on: no tax without a tax mode, no card fees where
 * nobody pays by card, tickets at a stall only.
 */
export function neededChannelRates(
  channel: Channel,
  job: Pick<Job, 'cardPayments'>,
): ReadonlySet<ChannelRateName> {
  const byCard = channel.cardShare === null || channel.cardShare.value > 0;
  const byTicket = channel.kind === 'stall';
  const taxed = channel.taxMode === 'added' || channel.taxMode === 'inside';
  return new Set<ChannelRateName>([
    'commission',
    'cardShare',
    ...(taxed ? (['tax'] as const) : []),
    ...(byCard ? (['cardFee'] as const) : []),
    ...((byTicket ? byCard : job.cardPayments > 0) ? (['cardFixedFee'] as const) : []),
    ...(byTicket && byCard ? (['piecesPerTicket'] as const) : []),
  ]);
}
