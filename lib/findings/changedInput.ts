import type { Change } from '@/shared/finding';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';
import { applyChanges } from './applyChanges';

/**
 * The documents as they would be with some changes, read by their schemas; layouts that are known stay known.
 *
 * @returns null where the changed documents cannot be read
 */
export function changedInput(
  { layouts, ...documents }: JobInput,
  changes: readonly Change[],
): JobInput | null {
  const read = jobInputSchema.safeParse(applyChanges(documents, changes));
  return read.success ? { ...read.data, layouts } : null;
}
