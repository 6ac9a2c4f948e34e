import type { CheckedJob, ResolvedLine, ResolvedPlacement } from '@/lib/job/checkedJob';
import { printOfSize } from '@/lib/job/printOfSize';
import { piecesPerSheet } from '@/lib/packing/equal/piecesPerSheet';
import { rollLengthMm, rollStrips, stripLengthMm } from '@/lib/packing/roll/rollStrips';
import type { PackedSheets } from '@/lib/packing/sheet/packSheets';
import type { LaidOutPrint } from './laidOutPrint';
import { layOutTogether } from './layOutTogether';
import { rollQuestion } from './rollQuestion';
import { rollWorthMm } from './rollWorth';
import { sheetQuestion } from './sheetQuestion';

export type { GangedShare, LaidOutPrint } from './laidOutPrint';

declare const laidOut: unique symbol;

export interface LaidOutJob {
  readonly [laidOut]: true;
  readonly job: CheckedJob;
  readonly prints: readonly LaidOutPrint[];
  /** Sheets with prints of several placements; null where each placement is laid out by itself. */
  readonly shared: PackedSheets | null;
}

export class PrintDoesNotFit extends RangeError {
  override readonly name = 'PrintDoesNotFit';
}

/**
 * Counts the prints of every placement on the job's sheet, or lays them on sheets together where the job asks for
 * it. A print that only goes without borders is laid out without them where the printer can, and by itself.
 *
 * @throws PrintDoesNotFit for a print the check should have stopped
 */
export function layOutJob(job: CheckedJob): LaidOutJob {
  const prints = job.lines.flatMap((line) =>
    line.placements.flatMap((placement) => layOutPlacement(job, line, placement)),
  );
  const together = job.job.gang === 'together' ? layOutTogether(job, prints) : { prints, shared: null };
  return { job, ...together } as unknown as LaidOutJob;
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
    const named = {
      lineId: line.line.id,
      placementId: placement.id,
      print: index,
      sizes: sizes.map(({ size }) => size),
      widthMm: print.widthMm,
      heightMm: print.heightMm,
      pieces,
    };
    if (job.sheet.form === 'roll') return [onRoll(job, named)];
    const question = sheetQuestion(job, print);
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
        ...named,
        perSheet: answer.count,
        sheetWorth: 1,
        turned: answer.turned,
        placed: answer.pieces,
        sheets,
        spare: sheets * answer.count - pieces,
        wasteShare: answer.wasteShare,
      },
    ];
  });
}

/** Strips across the roll, each in the place of a sheet; a batch of any size is costed by the same strip. */
function onRoll(
  job: CheckedJob,
  named: Pick<LaidOutPrint, 'widthMm' | 'heightMm' | 'pieces'> & Omit<LaidOutPrint, keyof RollPart>,
): LaidOutPrint {
  const question = rollQuestion(job, named);
  const bordered = rollStrips(question);
  const isBorderless = bordered === null && job.printer.borderless;
  const asked = isBorderless ? { ...question, marginMm: 0 } : question;
  const strips = bordered ?? (isBorderless ? rollStrips(asked) : null);
  if (strips === null) {
    throw new PrintDoesNotFit(
      `a print of ${named.widthMm} × ${named.heightMm} mm does not fit a roll ${job.sheet.widthMm} mm wide`,
    );
  }
  const lengthMm = rollLengthMm(strips, named.pieces, asked);
  const count = Math.ceil(named.pieces / strips.across);
  const { marginMm, gutterMm } = asked;
  return {
    ...named,
    perSheet: strips.across,
    sheetWorth: stripLengthMm(strips, asked) / rollWorthMm(job.sheet.widthMm),
    turned: strips.turned,
    placed: strips.places,
    sheets: count,
    spare: count * strips.across - named.pieces,
    wasteShare: 1 - (named.pieces * named.widthMm * named.heightMm) / (lengthMm * job.sheet.widthMm),
    roll: { lengthMm, pitchMm: strips.pitchMm, marginMm, gutterMm },
  };
}

type RollPart = Pick<
  LaidOutPrint,
  'perSheet' | 'sheetWorth' | 'turned' | 'placed' | 'sheets' | 'spare' | 'wasteShare' | 'roll'
>;
