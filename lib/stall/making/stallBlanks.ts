import { expectedBlanks } from '@/lib/job/expectedBlanks';
import type { JobBlanks } from '@/shared/jobBlanks';
import { splitWhole } from '@/shared/splitWhole';

/**
 * Blanks to lay out for stock of a stall: as many as are expected to be drawn and no more, for nobody misses the last
 * shirt of ninety-six. The whole ones of a blank are shared out over its sizes by largest remainder.
 *
 * @param drawn expected blanks by row of `blanks.sizes`, spoiled ones among them, unrounded
 */
export function stallBlanks(blanks: JobBlanks, drawn: readonly number[]): JobBlanks {
  const rows = blanks.sizes.map((row, at) => ({ ...row, at, drawn: drawn[at] ?? row.pieces }));
  const take = new Map<number, number>();
  for (const blankId of new Set(rows.map((row) => row.blankId))) {
    const ofBlank = rows.filter((row) => row.blankId === blankId);
    const sizes = [...new Set(ofBlank.map(({ size }) => size))].map((size) =>
      ofBlank.filter((row) => row.size === size),
    );
    const ofSizes = expectedBlanks(sizes.map(sumOf));
    sizes.forEach((rowsOfSize, index) => {
      const parts = splitWhole(
        ofSizes[index] ?? 0,
        rowsOfSize.map((row) => row.drawn),
      );
      rowsOfSize.forEach((row, place) => {
        take.set(row.at, parts[place] ?? 0);
      });
    });
  }
  return { ...blanks, sizes: blanks.sizes.map((row, at) => ({ ...row, take: take.get(at) ?? row.take })) };
}

const sumOf = (rows: readonly { readonly drawn: number }[]): number =>
  rows.reduce((sum, row) => sum + row.drawn, 0);
