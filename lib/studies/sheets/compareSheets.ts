import { checkJob } from '@/lib/check/checkJob';
import { costInput } from '@/lib/costing/costInput';
import { wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { plannedSheets } from '@/lib/layout/plannedSheets';
import { type Finding, isStanding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import type { Sheet } from '@/shared/schemas/workshop';

/** The job on one of the maker's sheets. */
export type SheetChoice =
  | {
      readonly kind: 'costed';
      readonly sheetId: string;
      readonly isPresent: boolean;
      /** Whole sheets for the good pieces. */
      readonly sheets: number;
      /** Of a roll, what is cut off for them, mm; null for cut sheets. */
      readonly rollLengthMm: number | null;
      /** Share of all their paper that no print covers. */
      readonly wasteShare: number;
      /** Full cost of the whole job and of a good piece, in currency units, unrounded. */
      readonly fullCost: number;
      readonly costEach: number;
    }
  /** What stops the job on this sheet; null where its sums give no number. */
  | {
      readonly kind: 'stopped';
      readonly sheetId: string;
      readonly isPresent: boolean;
      readonly why: Finding | null;
    };

/** @returns the job laid out and costed anew on every sheet of the workshop, in the workshop's order. */
export const compareSheets = (input: JobInput, grid: Grid): readonly SheetChoice[] =>
  input.workshop.sheets.map((sheet) => onSheet(input, sheet, grid));

function onSheet(input: JobInput, { id }: Sheet, grid: Grid): SheetChoice {
  const isPresent = input.job.sheetId === id;
  const moved = isPresent ? input : { ...input, job: { ...input.job, sheetId: id } };
  const costed = costInput(moved, grid);
  if (costed === null) {
    const why = checkJob(moved).findings.find(isStanding) ?? null;
    return { kind: 'stopped', sheetId: id, isPresent, why };
  }
  const { count, wasteShare, roll } = plannedSheets(costed.laidOut);
  const { fullCost } = costed.sheet;
  return {
    kind: 'costed',
    sheetId: id,
    isPresent,
    sheets: count,
    rollLengthMm: roll?.lengthMm ?? null,
    wasteShare,
    fullCost,
    costEach: fullCost / wholeJob(costed.sheet, 'goodPieces'),
  };
}
