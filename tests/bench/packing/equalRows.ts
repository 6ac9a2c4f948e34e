import { piecesPerSheet, type SheetQuestion } from '@/lib/packing/equal/piecesPerSheet';
import { seededRandom } from '@/lib/packing/seededRandom';
import { type BenchRow, timeRow } from '@/tests/bench/benchRow';
import { timesBeside } from '@/tests/bench/measure';
import { equalPieceInstances } from '@/tests/outside/packingInstances';
import { LIBRARY, type Library } from './library';
import { bare, countRow, drawn, type PackedPiece, type Paper } from './paper';

const RUNS = 9;

interface Question {
  readonly question: SheetQuestion;
  readonly paper: Paper;
  readonly pieces: readonly PackedPiece[];
}

/** @returns equal pieces of published instances and of ordinary sizes. */
export function equalRows(library: Library): readonly BenchRow[] {
  return [...instanceRows(library), ordinaryRow(library)];
}

function instanceRows(library: Library): readonly BenchRow[] {
  return equalPieceInstances().instances.flatMap(({ id, sheet, piece, optimum }) => {
    const asked = questionOf({
      ...bare,
      sheetWidthMm: sheet[0],
      sheetHeightMm: sheet[1],
      pieceWidthMm: piece[0],
      pieceHeightMm: piece[1],
    });
    const what = `equal pieces ${id}, optimum ${optimum}`;
    return [
      timeRow(
        what,
        timesOf(RUNS, () => asked, library),
        LIBRARY,
      ),
      countRow(what, 'pieces', asked.pieces.length, { what: 'the optimum', median: optimum }),
    ];
  });
}

/** Sizes and papers of every day, 30 to 250 mm on letter to A3+. */
function ordinaryRow(library: Library): BenchRow {
  const random = seededRandom(1);
  const drawQuestion = () =>
    questionOf({
      ...bare,
      ...(random() < 0.5
        ? { sheetWidthMm: 215.9, sheetHeightMm: 279.4 }
        : { sheetWidthMm: 329, sheetHeightMm: 483 }),
      marginMm: 3.175,
      gutterMm: 6.35,
      pieceWidthMm: drawn(random, 30, 250),
      pieceHeightMm: drawn(random, 30, 250),
    });
  return timeRow('equal pieces, 300 ordinary sizes', timesOf(300, drawQuestion, library), LIBRARY);
}

const timesOf = (count: number, prepare: () => Question, library: Library) =>
  timesBeside(
    count,
    prepare,
    ({ question }) => piecesPerSheet(question),
    ({ paper, pieces }) => library.once(paper, pieces),
  );

/** The library is given as many pieces as the product lays; a gutter is paper that belongs to the piece before it. */
function questionOf(question: SheetQuestion): Question {
  const { marginMm, gutterMm, sheetWidthMm, sheetHeightMm, pieceWidthMm, pieceHeightMm } = question;
  const spare = gutterMm - 2 * marginMm;
  return {
    question,
    paper: { widthMm: sheetWidthMm + spare, heightMm: sheetHeightMm + spare },
    pieces: Array.from({ length: piecesPerSheet(question).count }, (_, index) => ({
      id: `item ${index + 1}`,
      widthMm: pieceWidthMm + gutterMm,
      heightMm: pieceHeightMm + gutterMm,
      count: 1,
    })),
  };
}
