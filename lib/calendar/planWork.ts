import type { BenchWork } from './benchWork';
import type { Calendar } from './calendar';
import { spansBack, spansFrom } from './freeSpans';
import { dayOfEnd, dayOfMinute } from './minutes';
import { type Placed, walk } from './walk';
import { planOf, type WorkPlan } from './workPlan';
import { type WorkTask, type WorkTasks, workTasks } from './workTasks';

export type Planned =
  | { readonly kind: 'planned'; readonly plan: WorkPlan }
  | Exclude<WorkTasks, { kind: 'tasks' }>
  /** It takes longer than anybody plans. */
  | { readonly kind: 'never' };

/**
 * Lays the work of an order into free blocks, each part as early as it goes.
 *
 * @param from a minute as the calendar counts them
 * @param pressFrom a minute before which nothing can be pressed
 */
export function planWork(
  calendar: Calendar,
  works: readonly BenchWork[],
  from: number,
  pressFrom?: number,
): Planned {
  const found = workTasks(calendar, works, pressFrom);
  if (found.kind !== 'tasks') return found;
  return plannedOf(walk(spansFrom(calendar, from), found.tasks), found.extra, {
    minute: from,
    day: dayOfMinute(from),
  });
}

/** Lays the work of an order into free blocks so that it ends by a minute, each part as late as it goes. */
export function planWorkBack(calendar: Calendar, works: readonly BenchWork[], to: number): Planned {
  const found = workTasks(calendar, works);
  if (found.kind !== 'tasks') return found;
  const back = walk(spansBack(calendar, to), found.tasks.toReversed());
  // Time ran the other way.
  const placed = back?.map((one) => ({ ...one, from: -one.to, to: -one.from })).toReversed() ?? null;
  return plannedOf(placed, found.extra, { minute: to, day: dayOfEnd(to) });
}

const plannedOf = (
  placed: readonly Placed<WorkTask>[] | null,
  extra: WorkPlan['extra'],
  idle: { readonly minute: number; readonly day: string },
): Planned => (placed === null ? { kind: 'never' } : { kind: 'planned', plan: planOf(placed, extra, idle) });
