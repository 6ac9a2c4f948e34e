import { grouped } from '@/shared/grouped';
import type { Pressing, RunStep } from '@/shared/schemas/making/runEvents';

/** A job of which a print came out reversed, and nobody said since that its mirror was looked at. */
export interface MirrorDoubt {
  readonly jobId: string;
  /** Entries of prints that came out reversed and that no check names: what the next one answers. */
  readonly pressingIds: readonly string[];
}

interface NotedRun {
  readonly pressings: readonly {
    readonly id: string;
    readonly body: Pick<Pressing, 'jobId' | 'fault'>;
  }[];
  readonly steps: readonly { readonly body: Pick<RunStep, 'step'> }[];
}

/**
 * Jobs whose mirror is to be looked at before their next print, in whichever run that is. A check answers the prints it
 * names and no other, whatever the clocks of several devices say and whatever became of those prints since.
 *
 * @param runs all of them, with what is in force: a job that is made again is reversed again
 */
export function mirrorDoubts(runs: readonly NotedRun[]): readonly MirrorDoubt[] {
  const checked = new Set(
    runs.flatMap(({ steps }) =>
      steps.flatMap(({ body: { step } }) => (step.what === 'mirrorChecked' ? step.pressingIds : [])),
    ),
  );
  const open = runs.flatMap(({ pressings }) =>
    pressings.filter(({ id, body }) => body.fault === 'reversed' && !checked.has(id)),
  );
  return [...grouped(open, ({ body }) => body.jobId)].map(([jobId, own]) => ({
    jobId,
    pressingIds: [...new Set(own.map(({ id }) => id))],
  }));
}
