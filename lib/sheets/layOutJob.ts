import type { CheckedJob, ResolvedLine, ResolvedPlacement } from '../check/checkedJob';
import { printOfSize } from '../check/printOfSize';
import { type PlacedPiece, piecesPerSheet } from './piecesPerSheet';

declare const laidOut: unique symbol;

/** One print size of one placement on the job's sheet. */
export interface LaidOutPrint {
  readonly lineId: string;
  readonly placementId: string;
  /** Place of the print size in the placement's list. */
  readonly print: number;
  readonly sizes: readonly string[];
  readonly widthMm: number;
  readonly heightMm: number;
  /** Good pieces that carry it. */
  readonly pieces: number;
  readonly perSheet: number;
  readonly turned: boolean;
  readonly placed: readonly PlacedPiece[];
  /** Whole sheets for the good pieces, nothing spoiled. */
  readonly sheets: number;
  /** Free places on the last of them. */
  readonly spare: number;
  /** Share of a full sheet that no print covers. */
  readonly wasteShare: number;
}

export interface LaidOutJob {
  readonly [laidOut]: true;
  readonly job: CheckedJob;
  readonly prints: readonly LaidOutPrint[];
}

export class PrintDoesNotFit extends RangeError {
  override readonly name = 'PrintDoesNotFit';
}

/**
 * Counts the prints of every placement on the job's sheet. A print that only goes without borders is laid out
 * without them where the printer can.
 *
 * @throws PrintDoesNotFit for a print the check should have stopped
 */
export function layOutJob(job: CheckedJob): LaidOutJob {
  const prints = job.lines.flatMap((line) =>
    line.placements.flatMap((placement) => layOutPlacement(job, line, placement)),
  );
  return { job, prints } as unknown as LaidOutJob;
}

function layOutPlacement(
  job: CheckedJob,
  line: ResolvedLine,
  { placement }: ResolvedPlacement,
): readonly LaidOutPrint[] {
  return placement.prints.flatMap((print, index) => {
    const sizes = line.sizes.filter(({ size }) => printOfSize(placement, size) === index);
    const pieces = sizes.reduce((sum, { quantity }) => sum + quantity, 0);
    if (pieces === 0) return [];
    const question = {
      sheetWidthMm: job.sheet.widthMm,
      sheetHeightMm: job.sheet.heightMm,
      marginMm: job.printer.marginMm,
      gutterMm: job.workshop.policy.gutterMm,
      pieceWidthMm: print.widthMm,
      pieceHeightMm: print.heightMm,
    };
    const bordered = piecesPerSheet(question);
    const answer =
      bordered.count > 0 || !job.printer.borderless ? bordered : piecesPerSheet({ ...question, marginMm: 0 });
    if (answer.count === 0) {
      throw new PrintDoesNotFit(
        `a print of ${print.widthMm} × ${print.heightMm} mm does not fit ${job.sheet.widthMm} × ${job.sheet.heightMm} mm`,
      );
    }
    const sheets = Math.ceil(pieces / answer.count);
    return [
      {
        lineId: line.line.id,
        placementId: placement.id,
        print: index,
        sizes: sizes.map(({ size }) => size),
        widthMm: print.widthMm,
        heightMm: print.heightMm,
        pieces,
        perSheet: answer.count,
        turned: answer.turned,
        placed: answer.pieces,
        sheets,
        spare: sheets * answer.count - pieces,
        wasteShare: answer.wasteShare,
      },
    ];
  });
}
