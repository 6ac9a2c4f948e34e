import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { closeInForce } from '@/lib/stall/closeInForce';
import { type ClosedLesson, lessonsOfClose } from '@/lib/stall/evening/lessonsOfClose';
import type { DayClose, StallPlan } from '@/shared/schemas/stallPapers';

/** What was noted for next time when a stall day was closed; it stays in its close. */
export interface Noted {
  readonly close: DayClose;
  /** Null where it is not on this device. */
  readonly plan: StallPlan | null;
  readonly lessons: readonly ClosedLesson[];
}

/**
 * @param id of the stall day that was closed
 * @returns null where it is not closed, or not here
 */
export function notedBefore(
  { stallPlan, dayClose }: Pick<ReadyWorkspace['papers'], 'stallPlan' | 'dayClose'>,
  id: string,
): Noted | null {
  const close = closeInForce(dayClose, id)?.body ?? null;
  if (close === null) return null;
  const plan = stallPlan.find((one) => one.id === close.planId)?.body ?? null;
  return { close, plan, lessons: lessonsOfClose(close, plan) };
}
