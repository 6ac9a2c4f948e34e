import { type CostSheet, caseValue } from '@/lib/grid/costSheet';
import { printOfSize } from '@/lib/job/printOfSize';
import type { LaidOutPrint } from '@/lib/layout/laidOutPrint';
import type { InkPrints } from '@/shared/schemas/entries';
import type { Job } from '@/shared/schemas/job';

/**
 * What a job prints, as entries for the record of ink: one for each print size of each placement, with the prints
 * that are expected to be made, rejects and tests among them, rounded to whole ones.
 *
 * @param day YYYY-MM-DD
 * @returns entries in press order; the sessions of the job stand with the first
 */
export function inkRunsOf(
  jobId: string,
  job: Job,
  sheet: CostSheet,
  prints: readonly LaidOutPrint[],
  day: string,
): readonly InkPrints[] {
  const reject = sheet.jobValues.sheetReject ?? 0;
  const runs = prints.flatMap((print): readonly Omit<InkPrints, 'sessions'>[] => {
    const line = job.lines.find(({ id }) => id === print.lineId);
    const slot = line?.placements.findIndex(({ id }) => id === print.placementId) ?? -1;
    const placement = line?.placements[slot];
    if (line === undefined || placement === undefined) return [];
    const columns = sheet.cases.flatMap((one, index) =>
      one.lineId === line.id && printOfSize(placement, one.size) === print.print
        ? [{ index, quantity: one.quantity }]
        : [],
    );
    const [first] = columns;
    if (first === undefined) return [];
    const at = slot + 1;
    const made = columns.reduce(
      (sum, { index, quantity }) =>
        sum +
        quantity *
          (caseValue(sheet, `entering_${at}`, index) / (1 - reject) +
            caseValue(sheet, `testsShared_${at}`, index)),
      0,
    );
    return [
      {
        day,
        name: `${job.name}: ${placement.name}`.slice(0, LONGEST_NAME),
        prints: Math.round(made),
        total: sheet.inputs.cases[first.index]?.[`coverage_${at}`]?.value ?? 0,
        widthMm: print.widthMm,
        heightMm: print.heightMm,
        jobId,
      },
    ];
  });
  const sessions = sheet.cases.length === 0 ? 0 : Math.round(caseValue(sheet, 'sessions', 0));
  return runs.map((run, index) => ({ ...run, sessions: index === 0 ? sessions : 0 }));
}

const LONGEST_NAME = 120;
