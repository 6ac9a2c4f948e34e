import type { ResolvedJob } from '@/lib/job/checkedJob';
import { piecesPerSheet } from '@/lib/packing/equal/piecesPerSheet';
import { rollStrips } from '@/lib/packing/roll/rollStrips';
import type { SheetsRequest } from '@/lib/packing/sheet/packSheets';
import type { PackedSheets } from '@/shared/packedSheets';
import { centred } from './centred';
import type { LaidOutPrint } from './laidOutPrint';
import { rollQuestion } from './rollQuestion';
import { sheetQuestion } from './sheetQuestion';

type OnSheet = Pick<ResolvedJob, 'sheet' | 'printer' | 'workshop'>;

/**
 * What is asked of the sheets that prints share. It says nothing of the job but sizes and numbers, in one order, so that
 * whatever asks for the same sheets asks the same and is given one answer.
 */
export interface SharedQuestion {
  readonly key: string;
  /** The ids of its pieces are their places in it. */
  readonly request: SheetsRequest;
  /** Prints of a roll end behind their last piece. */
  readonly isRoll: boolean;
  /** Where each kind of piece stands in the list of prints. */
  readonly prints: readonly number[];
  /** What the same prints need each by itself: a layout that shares is taken only where it needs less. */
  readonly apart: { readonly sheets: number; readonly rollMm: number };
}

/**
 * @param prints laid out each by itself
 * @returns null where fewer than two share sheets
 */
export function sharedQuestion(job: OnSheet, prints: readonly LaidOutPrint[]): SharedQuestion | null {
  const places = prints.flatMap((print, place) => (goesBordered(job, print) ? [place] : []));
  const bordered = new Set(places);
  const question = questionOf(
    job,
    prints.filter((_, place) => bordered.has(place)),
  );
  return question && { ...question, prints: question.prints.map((place) => places[place] ?? place) };
}

/** @param bordered prints that go with borders */
export function questionOf(job: OnSheet, bordered: readonly LaidOutPrint[]): SharedQuestion | null {
  const sharing = bordered
    .map(({ widthMm, heightMm, pieces }, print) => ({ print, widthMm, heightMm, count: pieces }))
    .sort((a, b) => b.widthMm - a.widthMm || b.heightMm - a.heightMm || b.count - a.count);
  if (sharing.length < 2) return null;
  const { sheetWidthMm, sheetHeightMm, marginMm, gutterMm } = sheetQuestion(job, job.sheet);
  const isRoll = job.sheet.form === 'roll';
  const paper = [isRoll ? 'roll' : 'sheet', sheetWidthMm, sheetHeightMm, marginMm, gutterMm];
  return {
    key: JSON.stringify([
      ...paper,
      ...sharing.map(({ widthMm, heightMm, count }) => [widthMm, heightMm, count]),
    ]),
    isRoll,
    prints: sharing.map(({ print }) => print),
    apart: {
      sheets: bordered.reduce((sum, { sheets }) => sum + sheets, 0),
      rollMm: bordered.reduce((sum, { roll }) => sum + (roll?.lengthMm ?? 0), 0),
    },
    request: {
      sheetWidthMm,
      sheetHeightMm,
      marginMm,
      gutterMm,
      rotate: true,
      pieces: sharing.map(({ widthMm, heightMm, count }, place) => ({
        id: String(place),
        widthMm,
        heightMm,
        count,
      })),
    },
  };
}

/**
 * @returns a layout of the question with the places of the prints for the ids of its pieces, each kind of sheet in the
 *   middle of the paper; of a roll across it, as a print begins at its border
 */
export function asPrints({ sheets, ...packed }: PackedSheets, question: SharedQuestion): PackedSheets {
  const { prints, isRoll, request } = question;
  const middle = { xMm: request.sheetWidthMm / 2, yMm: isRoll ? null : request.sheetHeightMm / 2 };
  return {
    ...packed,
    sheets: sheets.map(({ pieces }) => ({
      pieces: centred(pieces, middle).map((piece) => ({ ...piece, id: String(prints[Number(piece.id)]) })),
    })),
  };
}

// Helpers

/** A print that only goes without borders lies by itself. */
const goesBordered = (
  job: OnSheet,
  print: { readonly widthMm: number; readonly heightMm: number },
): boolean =>
  job.sheet.form === 'roll'
    ? rollStrips(rollQuestion(job, print)) !== null
    : piecesPerSheet(sheetQuestion(job, print)).count > 0;
