import { inPressOrder, type PressedEntry } from './pressedEntry';

/** A job of which a print came out reversed, and nobody said since that its mirror was looked at. */
export interface MirrorDoubt {
  readonly jobId: string;
  /** Reversed since the mirror was last looked at. */
  readonly pieces: number;
}

interface NotedRun {
  readonly pressings: readonly PressedEntry[];
  readonly steps: readonly {
    readonly at: number;
    readonly body: { readonly step: { readonly what: string; readonly jobId?: string } };
  }[];
}

/**
 * Jobs whose mirror is to be looked at before their next print, in whichever run that is.
 *
 * @param runs all of them: a job that is made again is reversed again
 */
export function mirrorDoubts(runs: readonly NotedRun[]): readonly MirrorDoubt[] {
  const checked = new Map<string, number>();
  for (const { at, body } of runs.flatMap(({ steps }) => steps)) {
    const { what, jobId } = body.step;
    if (what === 'mirrorChecked' && jobId !== undefined)
      checked.set(jobId, Math.max(at, checked.get(jobId) ?? 0));
  }
  const doubts = new Map<string, number>();
  for (const { at, body } of inPressOrder(runs.flatMap(({ pressings }) => pressings))) {
    if (body.fault !== 'reversed' || at <= (checked.get(body.jobId) ?? Number.NEGATIVE_INFINITY)) continue;
    doubts.set(body.jobId, (doubts.get(body.jobId) ?? 0) + 1);
  }
  return [...doubts].map(([jobId, pieces]) => ({ jobId, pieces }));
}
