import type { ArrivalPlan } from '@/lib/copies/arrival';

/** @returns what a file is of where this stall day is not in it; null where it is */
export function otherDay(
  { copy, meetings }: Pick<ArrivalPlan, 'copy' | 'meetings'>,
  id: string,
): string | null {
  if (meetings.some((one) => one.kind === 'stallDay' && one.id === id)) return null;
  return copy.of === 'everything' ? 'other things' : (copy.of.name ?? 'another thing');
}
