import { lastDayOf } from '@/lib/stall/sellingDays';
import type { StallDay } from '@/shared/schemas/stallDay';

/** @returns jobs that stall days still to come bring something of, one day left out. */
export const jobsOfOtherDays = (
  stallDays: Readonly<Record<string, StallDay>>,
  but: string,
  today: string,
): ReadonlySet<string> =>
  new Set(
    Object.entries(stallDays).flatMap(([id, stallDay]) =>
      id === but || !isToCome(stallDay, today)
        ? []
        : stallDay.ranges.flatMap(({ designs }) =>
            designs.flatMap(({ jobId, isLeftOut }) => (isLeftOut ? [] : [jobId])),
          ),
    ),
  );

function isToCome(stallDay: StallDay, today: string): boolean {
  const lastDay = lastDayOf(stallDay);
  return (
    stallDay.archivedOn === null &&
    stallDay.stage !== 'refused' &&
    stallDay.stage !== 'calledOff' &&
    (lastDay === null || lastDay >= today)
  );
}
