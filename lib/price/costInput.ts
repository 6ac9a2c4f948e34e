import type { JobInput } from '@/shared/schemas/request';
import { checkJob } from '../check/checkJob';
import { type CostedJob, costJob } from '../grid/costJob';
import type { Grid } from '../grid/evaluateGrid';
import { layOutJob } from '../sheets/layOutJob';

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
