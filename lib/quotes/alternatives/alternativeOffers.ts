import type { Grid } from '@/lib/grid/evaluateGrid';
import { type AskedJudged, judgeSale } from '@/lib/quotes/judgeSale';
import type { PricedJob } from '@/lib/quotes/pricedJob';
import type { QuoteAsked } from '@/lib/quotes/quoteAsked';
import { type SoldLine, soldPieces } from '@/lib/quotes/soldLine';
import { quantitySpots } from '@/lib/studies/curve/quantitySpots';
import type { SpotReason } from '@/lib/studies/curve/usedUpAt';
import type { Alternative } from '@/shared/schemas/order';
import type { SaleSums } from '@/shared/schemas/paperParts';
import { alternativeSale } from './alternativeSale';

/** Why an alternative is worth offering. */
type OfferReason =
  /** A sheet, a session or a pack is just used up there. */
  | { readonly kind: 'usedUp'; readonly reasons: readonly SpotReason[]; readonly addedCost: number }
  | { readonly kind: 'fewer' }
  | { readonly kind: 'onePrintLess'; readonly name: string };

/** An alternative to choose from, with what it would come to. */
export interface AlternativeOffer {
  readonly alternative: WithoutId;
  readonly why: OfferReason;
  readonly sums: SaleSums;
}

type WithoutId = Alternative extends infer One ? (One extends Alternative ? Omit<One, 'id'> : never) : never;

/** Quantities that customers name, from memory. */
const customary = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 18, 20, 24, 30, 36, 40, 48, 50, 60, 72, 75, 80, 96, 100];
/** Fewer than so much of what was asked is another offer; closer, the sum hardly moves. */
const FEWER_AT_MOST = 0.8;

/**
 * What could stand beside an order: the next quantities that use up what is begun, a customary quantity below, and each
 * print left out. What cannot be made or sold so is left off.
 *
 * @returns none while the order itself cannot be quoted
 */
export function alternativeOffers(asked: QuoteAsked, grid: Grid): readonly AlternativeOffer[] {
  const judged = judgeSale(asked, grid);
  if (!('sale' in judged)) return [];
  const wanted = judged.jobs.flatMap((job) => [
    ...spotsOf(job, judged, grid),
    ...judged.sale.lines.filter(({ jobId }) => jobId === job.jobId).flatMap(fewerThan),
    ...printsOf(job),
  ]);
  return wanted.flatMap(({ alternative, why }): readonly AlternativeOffer[] => {
    const other = alternativeSale(judged, { ...alternative, id: 'offered' }, grid);
    return other.ok ? [{ alternative, why, sums: other.value.sums }] : [];
  });
}

// Helpers

type Wanted = Omit<AlternativeOffer, 'sums'>;

/** Further pieces go to the line with the most, and those of a pack to the size it fills up. */
function spotsOf({ jobId, costed }: PricedJob, { sale }: AskedJudged, grid: Grid): readonly Wanted[] {
  const lines = sale.lines.filter((line) => line.jobId === jobId);
  const asked = lines.reduce((sum, line) => sum + soldPieces(line), 0);
  const [largest] = lines.toSorted((one, other) => soldPieces(other) - soldPieces(one));
  return quantitySpots(costed, grid).flatMap(({ n, reasons, addedCost }): readonly Wanted[] => {
    const pack = reasons.find((reason) => reason.kind === 'pack');
    const line = pack === undefined ? largest : lines.find(({ lineId }) => lineId === pack.lineId);
    if (line === undefined || !Number.isInteger(n)) return [];
    const quantity = soldPieces(line) + n - asked;
    const size = pack?.size ?? null;
    return [
      {
        alternative: { kind: 'pieces', jobId, lineId: line.lineId, quantity, size },
        why: { kind: 'usedUp', reasons, addedCost },
      },
    ];
  });
}

function fewerThan(line: SoldLine): readonly Wanted[] {
  const most = soldPieces(line) * FEWER_AT_MOST;
  const hundreds = Math.floor(most / 100) * 100;
  const quantity = hundreds > 0 ? hundreds : customary.findLast((count) => count <= most);
  if (quantity === undefined) return [];
  const { jobId, lineId } = line;
  return [{ alternative: { kind: 'pieces', jobId, lineId, quantity, size: null }, why: { kind: 'fewer' } }];
}

const printsOf = ({ jobId, costed }: PricedJob): readonly Wanted[] =>
  costed.laidOut.job.lines
    .filter(({ placements }) => placements.length > 1)
    .flatMap(({ line, placements }) =>
      placements.map(
        ({ placement }): Wanted => ({
          alternative: { kind: 'without', jobId, lineId: line.id, placementId: placement.id, each: null },
          why: { kind: 'onePrintLess', name: placement.name },
        }),
      ),
    );
