import { atOnce } from '@/lib/packing/atOnce';
import type { FitProblem } from '@/lib/packing/fitProblem';
import { ok, type Result } from '@/shared/result';
import { betterSheets, FURTHER_EFFORT } from './betterSheets';
import { type PackedSheets, packSheets, type SheetsRequest } from './packSheets';

/** The best layout that is looked for at all, for whoever wants no first answer before: it takes two seconds at most. */
export function bestSheets(request: SheetsRequest): Result<PackedSheets, FitProblem> {
  const first = packSheets(request);
  if (!first.ok) return first;
  return ok(atOnce(betterSheets(request, first.value, FURTHER_EFFORT)));
}
