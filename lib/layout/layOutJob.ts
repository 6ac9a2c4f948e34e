import type { CheckedJob } from '@/lib/job/checkedJob';
import type { PackedSheets } from '@/lib/packing/sheet/packSheets';
import type { LaidOutPrint } from './laidOutPrint';
import { layOutPrint, printsOf } from './layOutPrint';
import { layOutTogether } from './layOutTogether';

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
 * it. A print that only goes without borders lies by itself.
 *
 * @throws PrintDoesNotFit for a print the check should have stopped
 */
export function layOutJob(job: CheckedJob): LaidOutJob {
  const prints = layOutApart(job);
  const together = job.job.gang === 'together' ? layOutTogether(job, prints) : { prints, shared: null };
  return { job, ...together } as unknown as LaidOutJob;
}

/** @returns the prints as they lie where each placement is laid out by itself. */
export const layOutApart = (job: CheckedJob): readonly LaidOutPrint[] =>
  job.lines.flatMap((line) =>
    line.placements.flatMap(({ placement }) =>
      printsOf(line, placement).map((print) => layOutPrint(job, print) ?? doesNotFit(job, print)),
    ),
  );

function doesNotFit(
  { sheet }: CheckedJob,
  { widthMm, heightMm }: Pick<LaidOutPrint, 'widthMm' | 'heightMm'>,
): never {
  const paper =
    sheet.form === 'roll' ? `a roll ${sheet.widthMm} mm wide` : `${sheet.widthMm} × ${sheet.heightMm} mm`;
  throw new PrintDoesNotFit(`a print of ${widthMm} × ${heightMm} mm does not fit ${paper}`);
}
