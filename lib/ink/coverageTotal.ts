import type { Coverage } from '@/shared/schemas/artwork';
import type { Picture } from '@/shared/schemas/picture';

/** @returns the channels of a coverage added, 0–4. */
export function coverageTotal(coverage: Coverage | Picture['coverage']): number {
  if ('total' in coverage) return coverage.total;
  return coverage.cyan + coverage.magenta + coverage.yellow + coverage.black;
}
