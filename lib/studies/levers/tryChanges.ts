import { reviewCosts } from '@/lib/check/reviewCosts';
import { costFactsOf } from '@/lib/costing/costFactsOf';
import { costInput } from '@/lib/costing/costInput';
import { changedInput } from '@/lib/findings/changedInput';
import type { CostedJob } from '@/lib/grid/costJob';
import { wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { type Change, isStanding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import type { JobFigures } from './lever';

/**
 * What a job would be with some changes.
 *
 * @param known ids of the stops that stand as the job is: changes may leave them, not add to them
 * @returns its figures; null where the changed job cannot be read, is stopped or gives no sums
 */
export function tryChanges(
  input: JobInput,
  changes: readonly Change[],
  known: ReadonlySet<string>,
  grid: Grid,
): JobFigures | null {
  const changed = changedInput(input, changes);
  const costed = changed && costInput(changed, grid);
  if (costed === null) return null;
  return stopsOf(costed, grid).every((id) => known.has(id)) ? figuresOf(costed) : null;
}

/** @returns the ids of the stops that the sums of a job bring up. */
export const stopsOf = (costed: CostedJob, grid: Grid): readonly string[] =>
  reviewCosts(costed.laidOut.job, costFactsOf(costed, grid))
    .filter(isStanding)
    .map(({ id }) => id);

/** @returns what of a job a lever moves. */
export function figuresOf({ sheet }: CostedJob): JobFigures {
  const pieces = wholeJob(sheet, 'goodPieces');
  return {
    pieces,
    fullCostEach: wholeJob(sheet, 'fullCost') / pieces,
    targetEach: wholeJob(sheet, 'target') / pieces,
    profit: wholeJob(sheet, 'profit'),
    margin: wholeJob(sheet, 'margin'),
    payPerHour: wholeJob(sheet, 'payPerHour'),
  };
}
