import { namedInput } from '@/app/_documents/namedInput';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { StallAsked } from '@/lib/stall/plan/stallAsked';
import type { StallDay } from '@/shared/schemas/stallDay';
import type { StallBefore } from './useStallBefore';

/**
 * Everything a stall day is planned from.
 *
 * @param today YYYY-MM-DD
 * @param before what of it stock and closed days say
 */
export function stallAsked(
  workspace: ReadyWorkspace,
  stallDay: StallDay,
  today: string,
  { atHome, madeForDay, past }: StallBefore,
): StallAsked {
  const { workshop, blanks, artworks, jobs, onHand, approvedVersions } = workspace;
  const named = new Set(stallDay.ranges.flatMap(({ designs }) => designs.map(({ jobId }) => jobId)));
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
    atHome: atHome.filter(({ jobId }) => named.has(jobId)),
    ...{ madeForDay, past },
  };
}
