import { type LaidOut, stackFinder } from '@/lib/job/spareStacks';
import type { RunJob } from '@/lib/making/runPlan';
import { blanksOfRun } from '@/lib/making/standard/blanksOfRun';
import type { Run } from '@/shared/schemas/making/run';
import { sizeOrder } from './sizeOrder';
import type { SizeTurn } from './turns';

/** @returns the sizes of a run in the order in which they are pressed */
export const sizesOf = (
  jobs: readonly RunJob[],
  turns: Parameters<typeof sizeOrder>[1],
  run: Pick<Run, 'sizesFirst' | 'cover'>,
): readonly SizeTurn[] => sizeOrder(sizesToPress(blanksOfRun(jobs, run.cover)), turns, run.sizesFirst);

// Helpers

/** A spare is of all that take the blank in its size: a size is scarce where none of them has one. */
function sizesToPress(laid: readonly LaidOut[]) {
  const stackOf = stackFinder(laid);
  return laid.map((one) => ({
    ...{ jobId: one.jobId, lineId: one.lineId, size: one.size, wanted: one.wanted },
    spare: stackOf(one)?.spares ?? 0,
  }));
}
