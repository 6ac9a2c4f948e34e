import { checkJob } from '@/lib/check/checkJob';
import { type CostedJob, costJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { layOutJob } from '@/lib/layout/layOutJob';
import type { JobInput } from '@/shared/schemas/request';

/**
 * The sums of documents without their prices, for what is asked beside them.
 *
 * @param input documents that their schemas have read, with formulas of the maker that can be read
 * @returns null where a stop stands or a sum gives no number
 */
export function costInput(input: JobInput, grid: Grid): CostedJob | null {
  const { checked } = checkJob(input);
  if (checked === null) return null;
  const result = costJob(layOutJob(checked), grid);
  return result.kind === 'costed' ? result.job : null;
}
