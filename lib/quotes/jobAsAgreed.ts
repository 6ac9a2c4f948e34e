import { taxAdded } from '@/lib/price/tax/taxOf';
import type { MinorUnits } from '@/shared/money';
import type { Job, Line } from '@/shared/schemas/job';
import type { Order } from '@/shared/schemas/order';
import type { Quote } from '@/shared/schemas/orderPapers';
import type { Workshop } from '@/shared/schemas/workshop';
import { jobAsSold } from './jobAsSold';
import { type SoldFor, soldAt } from './soldAt';

/** What of a line is not as it was accepted. */
export interface AgreedChange {
  readonly lineId: string;
  readonly line: string;
  /** Null where as many are made as were accepted, size by size. */
  readonly pieces: { readonly before: number; readonly after: number } | null;
  /** Names of prints that were accepted to be left out. */
  readonly without: readonly string[];
  readonly isPriceOther: boolean;
}

/** A job that is not as it was accepted. */
export interface AgreedJob {
  readonly jobId: string;
  /** As it was accepted. */
  readonly job: Job;
  readonly changes: readonly AgreedChange[];
}

interface OfAgreed {
  readonly quote: Quote;
  /** The alternative that was chosen; null for what was asked. */
  readonly alternativeId: string | null;
  readonly order: Pick<Order, 'channelId' | 'lines'>;
  /** Those of the order that are here. */
  readonly jobs: readonly { readonly jobId: string; readonly job: Job }[];
  readonly workshop: Pick<Workshop, 'channels' | 'currency'>;
}

/**
 * Jobs brought to what was accepted: its quantities, without the prints that it goes without, at a price by which it
 * comes to the same sum again. Names of single pieces stay, for only the maker knows whose piece is gone.
 *
 * @returns those that differ from it
 */
export function jobsAsAgreed({
  quote,
  alternativeId,
  order,
  jobs,
  workshop,
}: OfAgreed): readonly AgreedJob[] {
  const sold = soldIn(quote, alternativeId);
  const channelId = order.channelId ?? jobs[0]?.job.channelId;
  const written = writtenBy(
    quote,
    workshop.channels.find(({ id }) => id === channelId),
  );
  return jobs.flatMap(({ jobId, job }) => {
    const changes: AgreedChange[] = [];
    const asSold = jobAsSold(jobId, job, sold);
    const lines = job.lines.map((before, index) => {
      const of = sold.find((one) => one.jobId === jobId && one.lineId === before.id);
      const as = asSold.lines[index];
      if (of === undefined || as === undefined) return before;
      const isListed = order.lines.some(
        (one) => one.jobId === jobId && one.lineId === before.id && one.price.from === 'list',
      );
      const priced =
        isListed || written === null || workshop.currency !== quote.currency
          ? null
          : soldAt(before, of, { written, currency: quote.currency });
      const change = changeOf(before, as, priced !== null);
      if (change === null) return before;
      changes.push(change);
      const count = piecesOf(as);
      const isAsMany = count === piecesOf(before);
      return {
        ...before,
        placements: as.placements,
        quantities: change.pieces === null ? before.quantities : as.quantities,
        orderedQuantity: before.orderedQuantity === null || isAsMany ? before.orderedQuantity : count,
        ...priced,
      };
    });
    return changes.length === 0 ? [] : [{ jobId, job: { ...job, lines }, changes }];
  });
}

// Helpers

type Sold = SoldFor & {
  readonly jobId: string;
  readonly lineId: string;
  readonly without: readonly string[];
};

/** What was accepted, line by line, with what a line of its own takes off or adds beside its pieces. */
function soldIn(quote: Quote, alternativeId: string | null): readonly Sold[] {
  const chosen = quote.alternatives.find(({ id }) => id === alternativeId);
  const asked = quote.goods.map(
    ({ jobId, lineId, sizes, start }): Sold => ({
      ...{ jobId, lineId, sizes, start },
      beside: 0,
      without: [],
    }),
  );
  if (alternativeId === null) return asked;
  if (chosen === undefined) return [];
  const beside = sumOf(chosen.priced.charges) - sumOf(quote.charges);
  return chosen.priced.lines.map((line): Sold => {
    const before = asked.find(({ jobId, lineId }) => jobId === line.jobId && lineId === line.lineId);
    // Only one line is another; what is taken off so that fewer pieces are not dearer is of that line.
    const isIt = before === undefined || textOf(before) !== textOf(line);
    return { ...line, beside: isIt ? beside : 0 };
  });
}

/** @returns an amount of the paper as the way of selling writes it; null where prices stand otherwise to tax by now. */
function writtenBy(
  { tax }: Quote,
  channel: Workshop['channels'][number] | undefined,
): ((amount: MinorUnits) => MinorUnits) | null {
  if (channel === undefined || channel.taxMode === null) return null;
  // Whoever pays no tax was told prices without it.
  if (tax.exemption !== null && channel.taxMode === 'inside') {
    const share = channel.tax?.value ?? 0;
    return (amount) => taxAdded(amount, share).with;
  }
  const isAlike = tax.exemption !== null || (tax.mode === 'inside') === (channel.taxMode === 'inside');
  return isAlike ? (amount) => amount : null;
}

function changeOf(before: Line, after: Line, isPriceOther: boolean): AgreedChange | null {
  const isAsMany = sameQuantities(before, after);
  const kept = new Set(after.placements.map(({ id }) => id));
  const without = before.placements.filter(({ id }) => !kept.has(id)).map(({ name }) => name);
  if (isAsMany && without.length === 0 && !isPriceOther) return null;
  return {
    ...{ lineId: before.id, line: before.name, without, isPriceOther },
    pieces: isAsMany ? null : { before: piecesOf(before), after: piecesOf(after) },
  };
}

function sameQuantities(one: Line, other: Line): boolean {
  const textOfAll = (line: Line) =>
    [...new Set(line.quantities.map(({ size }) => size))]
      .map((size) => [size, piecesOf(line, size)] as const)
      .filter(([, quantity]) => quantity > 0)
      .map((entry) => JSON.stringify(entry))
      .toSorted()
      .join();
  return textOfAll(one) === textOfAll(other);
}

const piecesOf = ({ quantities }: Pick<Line, 'quantities'>, size?: string): number =>
  quantities.reduce((sum, one) => sum + (size === undefined || one.size === size ? one.quantity : 0), 0);

const sumOf = (charges: readonly { readonly amount: number }[]): number =>
  charges.reduce((sum, { amount }) => sum + amount, 0);

const textOf = ({ sizes, start, without }: Pick<Sold, 'sizes' | 'start' | 'without'>): string =>
  JSON.stringify([sizes.map(({ size, quantity, each }) => [size, quantity, each]), start, without]);
