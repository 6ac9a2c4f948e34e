import { newId } from '@/app/_documents/newId';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { copiedStallDay } from '@/lib/stall/days/newStallDay';
import type { StallDay } from '@/shared/schemas/stallDay';

/**
 * Adds a stall day like another one, without a day of its own yet.
 *
 * @returns its id; null where it is not kept
 */
export function planNext(
  { addStallDay }: Pick<ReadyWorkspace, 'addStallDay'>,
  from: { readonly id: string; readonly stallDay: StallDay },
): string | null {
  const id = newId();
  const made = copiedStallDay({ name: from.stallDay.name, day: null, dayId: newId() }, from);
  return addStallDay(id, made).state === 'shown' ? id : null;
}
