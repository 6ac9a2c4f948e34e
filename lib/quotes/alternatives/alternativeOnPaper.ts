import type { Figures } from '@/lib/papers/words/figures';
import { filled } from '@/lib/papers/words/labelsFor';
import { asName, shortened } from '@/lib/quotes/asName';
import type { Sale } from '@/lib/quotes/orderSale';
import { shareOf } from '@/lib/quotes/saleSums';
import { type SoldLine, soldPieces } from '@/lib/quotes/soldLine';
import type { Alternative } from '@/shared/schemas/order';
import type { QuoteAlternative } from '@/shared/schemas/paperParts';
import type { AskedSale } from './alternativeSale';

interface OnPaper {
  readonly alternative: Alternative;
  readonly asked: AskedSale;
  readonly other: Sale;
  readonly depositShare: number;
  readonly figures: Pick<Figures, 'money'>;
}

/** @returns an alternative as the customer reads it, with all that it needs to be confirmed. */
export function alternativeOnPaper({
  alternative,
  asked,
  other,
  depositShare,
  figures,
}: OnPaper): QuoteAlternative {
  return {
    id: alternative.id,
    ...said(alternative, asked, other, figures),
    sizes: other.lines.flatMap(({ jobId, lineId, sizes }) =>
      [...new Set(sizes.map(({ size }) => size))].map((size) => ({
        jobId,
        lineId,
        size,
        quantity: sizes.reduce((sum, one) => sum + (one.size === size ? one.quantity : 0), 0),
      })),
    ),
    sums: other.sums,
    deposit: shareOf(other.sums.total, depositShare),
    priced: {
      lines: other.lines.map(({ jobId, lineId, sizes, start, without }) => ({
        ...{ jobId, lineId, start },
        sizes: [...sizes],
        without: [...without],
      })),
      charges: [...other.charges],
      discount: other.discount,
    },
  };
}

// Helpers

function said(
  alternative: Alternative,
  { sale, jobs, terms }: AskedSale,
  { lines }: Sale,
  { money }: OnPaper['figures'],
): { readonly label: string; readonly says: string } {
  const { labels } = terms;
  const isIt = (line: SoldLine) => line.jobId === alternative.jobId && line.lineId === alternative.lineId;
  const [before, after] = [sale.lines.find(isIt), lines.find(isIt)];
  if (before === undefined || after === undefined) return { label: alternative.id, says: '' };
  const pieces = soldPieces(after);
  const label = filled(labels.heading, { count: pieces, name: after.name });
  if (alternative.kind === 'without') {
    const print = jobs
      .filter(({ jobId }) => jobId === alternative.jobId)
      .flatMap(({ input }) => input.job.lines.flatMap(({ placements }) => placements))
      .find(({ id }) => id === alternative.placementId)?.name;
    return {
      label: asName(filled(labels.withoutPrint, { print: print ?? '' })),
      says: shortened(label, 300),
    };
  }
  const count = Math.abs(pieces - soldPieces(before));
  if (pieces < soldPieces(before))
    return { label: asName(label), says: shortened(filled(labels.fewerPieces, { count }), 300) };
  const { size } = alternative;
  const more = size === null ? labels.morePiecesMixed : labels.morePieces;
  const text = filled(more, { count, size: size ?? '' });
  const each = eachOfFurther(before, after);
  const says = each === null ? text : filled(labels.moreEach, { text, amount: money(each) });
  return { label: asName(label), says: shortened(says, 300) };
}

/** @returns what each piece beyond the asked ones costs; null where they differ, or where the asked ones cost otherwise then. */
function eachOfFurther(before: SoldLine, after: SoldLine): number | null {
  const isAsked = (row: SoldLine['sizes'][number]) =>
    before.sizes.some(
      ({ size, quantity, each }) => row.size === size && row.quantity === quantity && row.each === each,
    );
  const further = after.sizes.filter((row) => !isAsked(row));
  const [first] = further;
  const isBeside = after.sizes.length === before.sizes.length + further.length;
  return first !== undefined && isBeside && further.every(({ each }) => each === first.each)
    ? first.each
    : null;
}
