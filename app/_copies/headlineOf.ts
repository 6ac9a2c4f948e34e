import type { Formatter } from '@/app/_words/formatter';
import {
  type ArrivalHeadline,
  arrivalHeadline,
  carriedHeadline,
  draftName,
  withWords,
} from '@/app/_words/store/arrivalWords';
import type { ArrivalPlan } from '@/lib/copies/arrival';
import type { ArrivalGroup } from '@/lib/copies/arrivalGroups';

/** @returns the sentence above a preview: of a whole copy what would come of it, of a carried draft that one first. */
export function headlineOf(
  { copy, meetings, counts }: ArrivalPlan,
  groups: readonly ArrivalGroup[],
  formatter: Formatter,
): ArrivalHeadline {
  const { of } = copy;
  const main = of === 'everything' ? undefined : meetings.find(({ id }) => id === of.id);
  const fate = groups.find(({ drafts }) => drafts.some(({ id }) => id === main?.id))?.fate;
  if (of === 'everything' || main === undefined || fate === undefined) {
    return arrivalHeadline({ groups, ...counts });
  }
  const others: Record<string, number> = {};
  for (const meeting of meetings) {
    // What only stands for a picture is told by the picture.
    if (meeting.id !== main.id) others[meeting.kind] = (others[meeting.kind] ?? 0) + 1;
  }
  return carriedHeadline(draftName(main), withWords(others, formatter), fate);
}
