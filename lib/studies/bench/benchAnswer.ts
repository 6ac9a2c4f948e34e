import type { BenchWork } from '@/lib/calendar/benchWork';
import type { StageMinutes } from '@/lib/calendar/pace';
import { leadOf } from '@/lib/check/time/blanksToOrder';
import { benchWorkOf, stagesOf } from '@/lib/costing/benchWorkOf';
import { judgeJob } from '@/lib/costing/priceJob';
import type { CostedJob } from '@/lib/grid/costJob';
import { caseValue, wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { expectedSheets } from '@/lib/grid/expectedSheets';
import { rollUsed } from '@/lib/grid/rollUsed';
import type { JobBlanks } from '@/shared/jobBlanks';
import type { JobInput } from '@/shared/schemas/request';
import { blanksOfJob } from './blanksOfJob';

/** What a job asks of the bench and of the supplier. */
export interface BenchAnswer {
  readonly work: BenchWork;
  readonly stages: StageMinutes;
  /** Working days until the slowest of its blanks arrives; null where none is to be ordered, or none is known. */
  readonly lead: number | null;
  readonly blanks: JobBlanks;
  readonly materials: JobMaterials;
  /** Minutes that hands are paid for, at the bench and at the desk. */
  readonly attendedMinutes: number;
}

/** Paper and ink a job uses up, spoiled pieces, tests and cleaning among them. */
interface JobMaterials {
  readonly sheetId: string;
  /** Whole sheets, or strips of a roll counted by their area. */
  readonly sheets: number;
  /** Length of roll; null for cut sheets. */
  readonly rollMm: number | null;
  readonly inkMl: number;
  /** Blanks expected to be drawn by row of the blanks, spoiled ones among them, unrounded. */
  readonly blanksDrawn: readonly number[];
}

/** @returns null where a stop stands. */
export function benchAnswer(input: JobInput, grid: Grid): BenchAnswer | null {
  // A day that cannot be kept stops a price, but the work is still to be done.
  const { priced } = judgeJob({ ...input, job: { ...input.job, wantedOn: null } }, grid);
  if (priced === null) return null;
  const { costed } = priced;
  return {
    ...{ work: benchWorkOf(costed), stages: stagesOf(costed), lead: leadOf(costed.laidOut.job) },
    blanks: blanksOfJob(costed),
    materials: materialsOf(costed),
    attendedMinutes: wholeJob(costed.sheet, 'attended'),
  };
}

function materialsOf({ sheet, laidOut: { job } }: CostedJob): JobMaterials {
  return {
    sheetId: job.sheet.id,
    sheets: expectedSheets(sheet),
    rollMm: rollUsed(sheet, job.sheet)?.lengthMm ?? null,
    inkMl: wholeJob(sheet, 'inkMl'),
    blanksDrawn: sheet.cases.map(({ quantity }, index) => quantity * caseValue(sheet, 'blanksDrawn', index)),
  };
}
