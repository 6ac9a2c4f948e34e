import type { Sheet } from '@/shared/schemas/workshop';
import { apartSheets, type PlannedPiece, type PlannedSheet } from './apartSheets';
import type { LaidOutPrint } from './laidOutPrint';

/** How a print lies on its sheets. */
export interface LyingPrint extends Pick<LaidOutPrint, 'lineId' | 'placementId' | 'print'> {
  /** Least clear paper from any piece of it to the edge of the paper, mm; of a roll across, as it is cut anywhere. */
  readonly edgeMm: number;
  /** Whether each piece has a sheet for itself; others are cut apart. */
  readonly isAlone: boolean;
  /** Longest sheet, or print of a roll, that it lies on, mm. */
  readonly lengthMm: number;
}

type Paper = Pick<Sheet, 'form' | 'widthMm' | 'heightMm'>;

/** @returns how each print lies on the very sheets that are drawn and written for the printer. */
export const lyingPrints = (
  prints: readonly LaidOutPrint[],
  sheets: readonly PlannedSheet[],
  paper: Paper,
): readonly LyingPrint[] =>
  prints.flatMap((print) => {
    const isOfIt = (piece: PlannedPiece) =>
      piece.lineId === print.lineId && piece.placementId === print.placementId && piece.print === print.print;
    const own = sheets.filter(({ pieces }) => pieces.some(isOfIt));
    if (own.length === 0) return [];
    const { lineId, placementId, print: index } = print;
    return [
      {
        lineId,
        placementId,
        print: index,
        edgeMm: Math.min(
          ...own.map(({ pieces }) =>
            pieces.reduce(
              (least, piece) => (isOfIt(piece) ? Math.min(least, edgeOf(piece, paper)) : least),
              Number.POSITIVE_INFINITY,
            ),
          ),
        ),
        // One that is left over from full sheets, or the only one wanted, is cut as the others would be.
        isAlone: print.placed.length <= 1 && own.every(({ pieces }) => pieces.length === 1),
        lengthMm: Math.max(...own.map(({ lengthMm }) => lengthMm ?? paper.heightMm)),
      },
    ];
  });

/** @returns how a print lies that shares its sheets with no other. */
export const lyingAlone = (print: LaidOutPrint, paper: Paper): LyingPrint | undefined =>
  lyingPrints([print], apartSheets([print]), paper)[0];

function edgeOf({ xMm, yMm, widthMm, heightMm }: PlannedPiece, paper: Paper): number {
  const across = Math.min(xMm, paper.widthMm - xMm - widthMm);
  return paper.form === 'roll' ? across : Math.min(across, yMm, paper.heightMm - yMm - heightMm);
}
