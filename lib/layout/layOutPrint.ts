import type { ResolvedJob, ResolvedLine } from '@/lib/job/checkedJob';
import { printOfSize } from '@/lib/job/printOfSize';
import { piecesPerSheet } from '@/lib/packing/equal/piecesPerSheet';
import { rollLengthMm, rollStrips, stripLengthMm } from '@/lib/packing/roll/rollStrips';
import type { Placement } from '@/shared/schemas/job';
import { fitsWithin } from '@/shared/units';
import { centred } from './centred';
import type { LaidOutPrint } from './laidOutPrint';
import { rollQuestion } from './rollQuestion';
import { rollWorthMm } from './rollWorth';
import { sheetQuestion } from './sheetQuestion';
import { tapeMarginMm } from './tapeMarginMm';

/** A print size and how many pieces carry it. */
type CountedPrint = Pick<
  LaidOutPrint,
  'lineId' | 'placementId' | 'print' | 'sizes' | 'widthMm' | 'heightMm' | 'pieces'
>;

type OnPaper = Pick<ResolvedJob, 'sheet' | 'printer' | 'workshop'>;

/** @returns the print sizes of a placement that any piece of the job carries. */
export const printsOf = (line: ResolvedLine, placement: Placement): readonly CountedPrint[] =>
  placement.prints.flatMap((print, index) => {
    const sizes = line.sizes.filter(({ size }) => printOfSize(placement, size) === index);
    const pieces = sizes.reduce((sum, { quantity }) => sum + quantity, 0);
    if (pieces === 0) return [];
    return [
      {
        lineId: line.line.id,
        placementId: placement.id,
        print: index,
        sizes: sizes.map(({ size }) => size),
        widthMm: print.widthMm,
        heightMm: print.heightMm,
        pieces,
      },
    ];
  });

/**
 * Lays a print out by itself, in the middle of its paper. One that only goes without borders is laid out without
 * them where the printer can.
 *
 * @returns null where not one fits
 */
export const layOutPrint = (job: OnPaper, print: CountedPrint): LaidOutPrint | null =>
  job.sheet.form === 'roll' ? onRoll(job, print) : onSheets(job, print);

function onSheets(job: OnPaper, print: CountedPrint): LaidOutPrint | null {
  const question = sheetQuestion(job, print);
  const bordered = piecesPerSheet(question);
  const asked = bordered.count > 0 || !job.printer.borderless ? question : { ...question, marginMm: 0 };
  const found = asked === question ? bordered : piecesPerSheet(asked);
  if (found.count === 0) return null;
  const { pieces: placed, turned, ...answer } = found.count === 1 ? roomier(job, found, asked) : found;
  const sheets = Math.ceil(print.pieces / answer.count);
  return {
    ...print,
    perSheet: answer.count,
    sheetWorth: 1,
    turned,
    placed: centred(placed, { xMm: job.sheet.widthMm / 2, yMm: job.sheet.heightMm / 2 }),
    sheets,
    spare: sheets * answer.count - print.pieces,
    wasteShare: answer.wasteShare,
  };
}

/** A print that has its sheet alone lies the way round that leaves room for tape; upright where both do. */
function roomier(
  { sheet, workshop }: OnPaper,
  upright: ReturnType<typeof piecesPerSheet>,
  asked: Parameters<typeof piecesPerSheet>[0],
): ReturnType<typeof piecesPerSheet> {
  const edgeMm = ({ pieces: [one] }: typeof upright) =>
    one === undefined
      ? Number.NEGATIVE_INFINITY
      : Math.min(sheet.widthMm - one.widthMm, sheet.heightMm - one.heightMm) / 2;
  if (fitsWithin(tapeMarginMm(workshop), edgeMm(upright))) return upright;
  const { pieceWidthMm, pieceHeightMm } = asked;
  const other = piecesPerSheet({
    ...asked,
    pieceWidthMm: pieceHeightMm,
    pieceHeightMm: pieceWidthMm,
    rotate: false,
  });
  if (edgeMm(other) <= edgeMm(upright)) return upright;
  return { ...other, turned: true, pieces: other.pieces.map((piece) => ({ ...piece, turned: true })) };
}

/** Strips across the roll, each in the place of a sheet; a batch of any size is costed by the same strip. */
function onRoll(job: OnPaper, print: CountedPrint): LaidOutPrint | null {
  const question = rollQuestion(job, print);
  const bordered = rollStrips(question);
  const isBorderless = bordered === null && job.printer.borderless;
  const asked = isBorderless ? { ...question, marginMm: 0 } : question;
  const strips = bordered ?? (isBorderless ? rollStrips(asked) : null);
  if (strips === null) return null;
  const lengthMm = rollLengthMm(strips, print.pieces, asked);
  const count = Math.ceil(print.pieces / strips.across);
  const { marginMm, gutterMm } = asked;
  return {
    ...print,
    perSheet: strips.across,
    sheetWorth: stripLengthMm(strips, asked) / rollWorthMm(job.sheet.widthMm),
    turned: strips.turned,
    placed: centred(strips.places, { xMm: job.sheet.widthMm / 2, yMm: null }),
    sheets: count,
    spare: count * strips.across - print.pieces,
    wasteShare: 1 - (print.pieces * print.widthMm * print.heightMm) / (lengthMm * job.sheet.widthMm),
    roll: { lengthMm, pitchMm: strips.pitchMm, marginMm, gutterMm },
  };
}
