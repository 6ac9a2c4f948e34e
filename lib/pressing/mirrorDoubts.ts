import type { Pressing, RunStep } from '@/shared/schemas/making/runEvents';

/** A job of which a print came out reversed, and nobody said since that its mirror was looked at. */
export interface MirrorDoubt {
  readonly jobId: string;
  /** Reversed since the mirror was last looked at. */
  readonly pieces: number;
  /** Reversed in all: what a check of the mirror answers. */
  readonly reversed: number;
}

interface NotedRun {
  readonly pressings: readonly { readonly body: Pick<Pressing, 'jobId' | 'fault'> }[];
  readonly steps: readonly { readonly body: Pick<RunStep, 'step'> }[];
}

/**
 * Jobs whose mirror is to be looked at before their next print, in whichever run that is. A check answers the prints
 * that were noted by then, so that clocks of several devices move nothing: of two devices that each noted one and each
 * checked, one print is asked about once more.
 *
 * @param runs all of them: a job that is made again is reversed again
 */
export function mirrorDoubts(runs: readonly NotedRun[]): readonly MirrorDoubt[] {
  const checked = new Map<string, number>();
  for (const { step } of runs.flatMap(({ steps }) => steps.map(({ body }) => body))) {
    if (step.what === 'mirrorChecked')
      checked.set(step.jobId, Math.max(step.reversed, checked.get(step.jobId) ?? 0));
  }
  const counts = new Map<string, number>();
  for (const { jobId, fault } of runs.flatMap(({ pressings }) => pressings.map(({ body }) => body))) {
    if (fault === 'reversed') counts.set(jobId, (counts.get(jobId) ?? 0) + 1);
  }
  return [...counts].flatMap(([jobId, reversed]) => {
    const pieces = reversed - (checked.get(jobId) ?? 0);
    return pieces > 0 ? [{ jobId, pieces, reversed }] : [];
  });
}
