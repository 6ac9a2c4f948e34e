import { costInput } from '@/lib/costing/costInput';
import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { plannedSheets, type SheetsPlan } from '@/lib/layout/plannedSheets';
import { type QuantitySpot, quantitySpots } from '@/lib/studies/curve/quantitySpots';
import type { JobInput } from '@/shared/schemas/request';
import { compareSheets, type SheetChoice } from './compareSheets';
import { type SmallerSize, smallerSizes } from './smallerSizes';

/** All that the sheets of a job have to say beyond its costs. */
export interface SheetsAnswer {
  readonly plan: SheetsPlan;
  readonly choices: readonly SheetChoice[];
  /** What sharing sheets would spare the whole job; null where it spares nothing or is so already. */
  readonly together: {
    readonly sheetsLess: number;
    /** Of a roll, how much shorter a piece of it does; null for cut sheets. */
    readonly rollLessMm: number | null;
    readonly saved: number;
  } | null;
  readonly smaller: readonly SmallerSize[];
  /** Only those at which a sheet is just full. */
  readonly quantities: readonly QuantitySpot[];
}

/**
 * Lays a job out, compares the maker's sheets, and looks for sizes and quantities that use the paper better.
 *
 * @param input documents that their schemas have read, with formulas of the maker that can be read
 * @returns null where a stop stands
 */
export function sheetsAnswer(input: JobInput, grid: Grid): SheetsAnswer | null {
  const costed = costInput(input, grid);
  if (costed === null) return null;
  const plan = plannedSheets(costed.laidOut);
  return {
    plan,
    together: togetherInstead(input, costed, plan, grid),
    choices: compareSheets(input, grid),
    smaller: smallerSizes(input, costed, grid),
    // A strip of roll is little paper: its free places are told, and no more is asked for them.
    quantities:
      plan.roll === null
        ? quantitySpots(costed, grid).filter(({ reasons }) => reasons.some(({ kind }) => kind === 'sheet'))
        : [],
  };
}

function togetherInstead(
  input: JobInput,
  costed: CostedJob,
  plan: SheetsPlan,
  grid: Grid,
): SheetsAnswer['together'] {
  if (input.job.gang === 'together' || costed.laidOut.prints.length < 2) return null;
  const after = costInput({ ...input, job: { ...input.job, gang: 'together' } }, grid);
  if (after === null) return null;
  const shared = plannedSheets(after.laidOut);
  const sheetsLess = plan.count - shared.count;
  const rollLessMm =
    plan.roll === null || shared.roll === null ? null : plan.roll.lengthMm - shared.roll.lengthMm;
  const saved = costed.sheet.fullCost - after.sheet.fullCost;
  return (rollLessMm ?? sheetsLess) > 0 && saved > 0 ? { sheetsLess, rollLessMm, saved } : null;
}
