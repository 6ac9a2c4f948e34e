import { caseValue, wholeJob } from '@/lib/grid/costSheet';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import { rollWorthMm } from '@/lib/layout/rollWorth';
import type { RunJob } from '@/lib/making/runPlan';
import type { StandardWork } from '@/shared/schemas/making/runPapers';
import type { blanksOfRun } from './blanksOfRun';
import { jobDigest } from './jobDigest';
import { labourElements } from './labourElements';
import { pieceTakes } from './pieceTakes';
import { standardPlacements } from './standardPlacements';
import { testPresses } from './testPresses';

type StandardLine = StandardWork['lines'][number];
type LaidOutSheet = RunJob['costed']['laidOut']['job']['sheet'];

/**
 * @param blanks laid out for the job, as its sums have its sizes
 * @returns one job of a run as its sums have it, unrounded
 */
export function standardWork(job: RunJob, blanks: ReturnType<typeof blanksOfRun>): StandardWork {
  const { sheet, laidOut } = job.costed;
  const { work, input } = job;
  const whole = (row: string) => wholeJob(sheet, row);
  const given = (row: string) => sheet.inputs.job[row]?.value ?? 0;
  const isAsked = input.job.lines.every(({ askedPrice }) => askedPrice !== null);
  const lines = laidOut.job.lines.map((line) => standardLine(job, line, blanks));
  const named = {
    blanks: lines.reduce((sum, { sizes }) => sum + sizes.reduce(blanksCost, 0), 0),
    sheets: whole('paperExpected'),
    ink: whole('inkExpected'),
    labour: whole('labourExpected'),
    overhead: whole('overheadExpected'),
    freight: given('freightIn'),
    reprints: whole('reprints'),
  };
  const fullCost = whole('fullCost');
  return {
    jobId: work.jobId,
    orderId: work.orderId,
    stallDayId: work.stallDayId,
    name: input.job.name,
    sha256: jobDigest(input),
    lines,
    sheets: {
      sheetId: laidOut.job.sheet.id,
      name: laidOut.job.sheet.name,
      quantity: whole('sheets'),
      tests: testPresses(sheet).reduce((sum, { sheets }) => sum + sheets, 0),
      price: given('sheetPrice'),
      ...metresOf(laidOut.job.sheet),
    },
    ink: { mL: whole('inkMl'), sessionMl: whole('inkSession'), pricePerMl: given('inkPrice') },
    labour: {
      minutes: whole('attended'),
      wagePerHour: given('wage'),
      elements: labourElements(job.costed),
    },
    overheadPerHour: sheet.jobValues.overheadRate ?? 0,
    reprints: named.reprints,
    freight: named.freight,
    otherCost: Object.values(named).reduce((left, amount) => left - amount, fullCost),
    fullCost,
    fees: whole('fees'),
    revenue: isAsked ? whole('price') : null,
    feeShare: sheet.jobValues.feeShare ?? 0,
    overrides: input.job.waivers.map(({ finding, reason }) => ({ finding, reason })),
  };
}

// Helpers

const blanksCost = (sum: number, { wanted, price, blanksEach }: StandardLine['sizes'][number]): number =>
  sum + wanted * price * blanksEach;

/** A roll is counted in letter sheets of its area, and bought by the metre. */
const metresOf = ({ form, widthMm }: LaidOutSheet): Pick<StandardWork['sheets'], 'metresEach'> =>
  form === 'roll' ? { metresEach: rollWorthMm(widthMm) / 1000 } : {};

function standardLine(job: RunJob, line: ResolvedLine, taken: ReturnType<typeof blanksOfRun>): StandardLine {
  const { sheet, laidOut } = job.costed;
  const { line: typed, blank } = line;
  return {
    lineId: typed.id,
    name: typed.name,
    blankId: typed.blankId,
    blankName: blank.name,
    isBrought: blank.suppliedBy === 'customer',
    sizes: sheet.cases.flatMap(({ lineId, size }, index): StandardLine['sizes'] => {
      const blanks = taken[index];
      if (lineId !== typed.id || blanks === undefined) return [];
      const { wanted, take, chance } = blanks;
      return [
        {
          ...{ size, wanted, take, chance },
          price: sheet.inputs.cases[index]?.blankPrice?.value ?? 0,
          blanksEach: caseValue(sheet, 'blanksDrawn', index),
          revenueEach:
            typed.askedPrice === null
              ? null
              : caseValue(sheet, 'price', index) - caseValue(sheet, 'startShare', index),
          takes: pieceTakes(job.costed, line, index),
        },
      ];
    }),
    placements: standardPlacements(line, sheet, laidOut.prints),
  };
}
