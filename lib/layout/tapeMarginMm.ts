import type { Workshop } from '@/shared/schemas/workshop';
import { thresholds } from '@/shared/tables/thresholds';

/** Clear paper wanted for tape on every side, mm: the maker may ask for more than is usual, never for less. */
export const tapeMarginMm = ({ policy }: Workshop): number =>
  Math.max(thresholds.tape.clear.value, policy.tapeMarginMm);
