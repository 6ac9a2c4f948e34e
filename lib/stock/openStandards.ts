import { inOrder } from '@/lib/stored/entriesInForce';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { RunStep } from '@/shared/schemas/runEvents';
import type { RunStandard } from '@/shared/schemas/runPapers';

type KeptStandard = Paper<'runStandard', RunStandard> & { readonly withdrawn: boolean };

/**
 * Standards of runs that have begun and are not closed: what they name is still going to be used, or was used and is
 * not booked yet.
 *
 * @param isKept whether a run is there and in use
 */
export function openStandards(
  papers: readonly KeptStandard[],
  steps: readonly Entry<'runStep', RunStep>[],
  isKept: (runId: string) => boolean,
): readonly RunStandard[] {
  const closed = new Map<string, boolean>();
  for (const { body } of inOrder(steps)) {
    if (body.step.what === 'closed') closed.set(body.runId, true);
    if (body.step.what === 'reopened') closed.set(body.runId, false);
  }
  const newest = new Map<string, RunStandard>();
  for (const { withdrawn, body } of inOrder(papers)) {
    if (!withdrawn && isKept(body.runId) && closed.get(body.runId) !== true) newest.set(body.runId, body);
  }
  return [...newest.values()];
}
