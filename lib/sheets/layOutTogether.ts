import type { CheckedJob } from '../check/checkedJob';
import type { LaidOutPrint } from './laidOutPrint';
import { type PackedSheets, packSheets } from './packSheets';
import type { Effort } from './pieceRequest';
import { piecesPerSheet } from './piecesPerSheet';
import { sheetQuestion } from './sheetQuestion';

export interface Together {
  readonly prints: readonly LaidOutPrint[];
  readonly shared: PackedSheets | null;
}

/** A job is laid out again for every variant of it that is costed: some 25 ms at most. */
const EFFORT: Effort = { steps: 200_000, seed: 1 };

/**
 * Lays the good pieces of all placements and lines on sheets together. Each print bears the share of the sheets
 * that it has of the printed area, so that the shares add up to whole sheets.
 *
 * @param prints laid out each by itself; their place in the list is the id of the packed pieces
 * @returns the prints as they were where sharing saves no sheet
 */
export function layOutTogether(job: CheckedJob, prints: readonly LaidOutPrint[]): Together {
  const shares = prints.map((print) => piecesPerSheet(sheetQuestion(job, print)).count > 0);
  const sharing = prints.filter((_, index) => shares[index]);
  if (sharing.length < 2) return { prints, shared: null };
  const apart = sharing.reduce((sum, { sheets }) => sum + sheets, 0);
  const { sheetWidthMm, sheetHeightMm, marginMm, gutterMm } = sheetQuestion(job, job.sheet);
  const packed = packSheets(
    {
      sheetWidthMm,
      sheetHeightMm,
      marginMm,
      gutterMm,
      rotate: true,
      pieces: prints.flatMap(({ widthMm, heightMm, pieces }, index) =>
        shares[index] ? [{ id: String(index), widthMm, heightMm, count: pieces }] : [],
      ),
    },
    EFFORT,
  );
  if (!packed.ok || packed.value.count >= apart) return { prints, shared: null };
  const { count } = packed.value;
  const printed = areaOf(sharing);
  const wasteShare = 1 - printed / (count * job.sheet.widthMm * job.sheet.heightMm);
  return {
    shared: packed.value,
    prints: prints.map((print, index) => {
      if (!shares[index]) return print;
      const area = print.widthMm * print.heightMm;
      const own = areaOf(sharing.filter(({ lineId }) => lineId === print.lineId)) / area;
      const others = printed / area - own;
      return {
        ...print,
        perSheet: (own + others) / count,
        turned: false,
        placed: [],
        sheets: (print.pieces * count) / (own + others),
        spare: 0,
        wasteShare,
        ganged: { own, others },
      };
    }),
  };
}

const areaOf = (prints: readonly LaidOutPrint[]): number =>
  prints.reduce((sum, { widthMm, heightMm, pieces }) => sum + widthMm * heightMm * pieces, 0);
