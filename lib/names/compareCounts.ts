import type { Line } from '@/shared/schemas/job';
import type { NameRow } from '@/shared/schemas/order';
import { nameCounts } from './nameCounts';

type Quantities = Line['quantities'];

/** A size of which more or fewer are ordered than names say. */
interface CountDifference {
  readonly size: string;
  readonly ordered: number;
  readonly named: number;
}

/** How the names of a line and its quantities stand to each other. */
interface ComparedCounts {
  readonly ordered: number;
  readonly named: number;
  readonly differences: readonly CountDifference[];
  /** Rows that no piece can be counted for yet. */
  readonly withoutSize: number;
  readonly unknown: readonly { readonly size: string; readonly quantity: number }[];
  /** The quantities as the names have them, which is the change to make where the names are right. */
  readonly byNames: Quantities;
  /** What the names lack where the quantities are right; which of too many must go, only the customer knows. */
  readonly byQuantities: {
    readonly missing: readonly { readonly size: string; readonly rows: number }[];
    readonly tooMany: readonly { readonly size: string; readonly rows: number }[];
  };
}

/**
 * Holds the rows of names against the quantities of the line in the job.
 *
 * @param sizes the blank's own, in its order
 */
export function compareCounts(
  rows: readonly Pick<NameRow, 'size'>[],
  quantities: Quantities,
  sizes: readonly string[],
): ComparedCounts {
  const orderedOf = new Map<string, number>();
  for (const { size, quantity } of quantities) orderedOf.set(size, (orderedOf.get(size) ?? 0) + quantity);
  // A size that the blank is made in no more may still be ordered.
  const all = [...new Set([...sizes, ...orderedOf.keys()])];
  const counts = nameCounts(rows, all);
  const both = counts.sizes.map(({ size, quantity }) => ({
    size,
    ordered: orderedOf.get(size) ?? 0,
    named: quantity,
  }));
  const differences = both.filter(({ ordered, named }) => ordered !== named);
  return {
    ordered: both.reduce((sum, { ordered }) => sum + ordered, 0),
    named: rows.length,
    differences,
    withoutSize: counts.withoutSize,
    unknown: counts.unknown,
    byNames: both
      .filter(({ size, named }) => named > 0 || orderedOf.has(size))
      .map(({ size, named }) => ({ size, quantity: named })),
    byQuantities: {
      missing: differences.flatMap(({ size, ordered, named }) =>
        ordered > named ? [{ size, rows: ordered - named }] : [],
      ),
      tooMany: differences.flatMap(({ size, ordered, named }) =>
        named > ordered ? [{ size, rows: named - ordered }] : [],
      ),
    },
  };
}
