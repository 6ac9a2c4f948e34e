import { namedInput } from '@/app/_documents/namedInput';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { pressedFor } from '@/lib/stall/car/dayMoves';
import { finishedFor } from '@/lib/stall/car/finishedFor';
import type { StallAsked } from '@/lib/stall/plan/stallAsked';
import type { StallDay } from '@/shared/schemas/stallDay';
import { pastDaysBeside } from './pastDaysBeside';

/**
 * Everything a stall day is planned from.
 *
 * @param today YYYY-MM-DD
 */
export function stallAsked(
  workspace: ReadyWorkspace,
  id: string,
  stallDay: StallDay,
  today: string,
): StallAsked {
  const { workshop, blanks, artworks, jobs, onHand, approvedVersions, piles, papers, entries } = workspace;
  const named = new Set(stallDay.ranges.flatMap(({ designs }) => designs.map(({ jobId }) => jobId)));
  const moves = entries.stockMove;
  return {
    day: today,
    stallDay,
    workshop,
    jobs: jobs
      .filter(({ id: jobId }) => named.has(jobId))
      .map(({ id: jobId, job }) => ({
        jobId,
        input: namedInput({ asOf: today, workshop, blanks, artworks, job, onHand, approvedVersions }),
      })),
    atHome: finishedFor(id, { piles, moves }, papers).filter(({ jobId }) => named.has(jobId)),
    madeForDay: pressedFor(moves, id),
    past: pastDaysBeside(workspace, id),
  };
}
