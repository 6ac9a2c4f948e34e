import { blanksTaken } from '@/lib/grid/blanksTaken';
import type { CostedJob } from '@/lib/grid/costJob';
import type { JobBlanks } from '@/shared/jobBlanks';

/** @returns the blanks that the sheet for the bench lays out. */
export function blanksOfJob({ sheet, laidOut: { job } }: CostedJob): JobBlanks {
  const lineOf = (lineId: string) => job.lines.find(({ line }) => line.id === lineId);
  const { take } = blanksTaken(sheet, (lineId) => {
    const line = lineOf(lineId);
    return line?.blank.suppliedBy === 'customer' ? null : (line?.line.blankId ?? lineId);
  });
  return {
    freight: job.freightIn?.value ?? null,
    sizes: sheet.cases.flatMap(({ lineId, size, quantity }, index) => {
      const blankId = lineOf(lineId)?.line.blankId;
      return blankId === undefined
        ? []
        : [
            {
              ...{ blankId, size, pieces: quantity, take: take[index] ?? quantity },
              each: sheet.inputs.cases[index]?.blankPrice?.value ?? 0,
            },
          ];
    }),
  };
}
