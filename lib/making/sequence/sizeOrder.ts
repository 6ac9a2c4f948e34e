import type { PressTurn, SizeTurn } from './turns';

interface SizeToPress extends SizeTurn {
  /** Good pieces. */
  readonly wanted: number;
  /** Blanks laid out beyond them. */
  readonly spare: number;
}

/**
 * The order in which sizes are pressed; common practice, from memory. Those of the maker come first, in that order. Then
 * line by line as they are pressed first, the size with most pieces first, while the press settles; scarce ones, of
 * which no spoiled piece can be made good, once it runs steadily.
 *
 * @param sizes of all lines, those of a line in the order of the blank
 */
export function sizeOrder(
  sizes: readonly SizeToPress[],
  turns: readonly Pick<PressTurn, 'jobId' | 'lineId'>[],
  first: readonly SizeTurn[],
): readonly SizeTurn[] {
  const lines = [...new Set(turns.map(lineKey))];
  const chosen = [...new Map(first.map((one) => [sizeKey(one), one])).keys()];
  const rank = (size: SizeToPress): readonly number[] => {
    const own = chosen.indexOf(sizeKey(size));
    return [own < 0 ? chosen.length : own, lines.indexOf(lineKey(size)), -size.wanted, -size.spare];
  };
  return sizes
    .toSorted((one, other) => compared(rank(one), rank(other)))
    .map(({ jobId, lineId, size }) => ({ jobId, lineId, size }));
}

// Helpers

const lineKey = ({ jobId, lineId }: Pick<SizeTurn, 'jobId' | 'lineId'>): string => `${jobId}\n${lineId}`;
const sizeKey = (size: SizeTurn): string => `${lineKey(size)}\n${size.size}`;

function compared(one: readonly number[], other: readonly number[]): number {
  for (const [at, rank] of one.entries()) if (rank !== other[at]) return rank - (other[at] ?? 0);
  return 0;
}
