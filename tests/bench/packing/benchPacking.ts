import type { BenchRow } from '@/tests/bench/benchRow';
import { binRows } from './binRows';
import { equalRows } from './equalRows';
import { furtherRows } from './furtherRows';
import { loadLibrary } from './library';
import { mixedRows } from './mixedRows';
import { rollRows } from './rollRows';

/** @returns what layouts take and give, beside a general-purpose packing library on the same pieces. */
export async function benchPacking(): Promise<readonly BenchRow[]> {
  const library = await loadLibrary();
  return [equalRows, binRows, mixedRows, furtherRows, rollRows].flatMap((rows) => rows(library));
}
