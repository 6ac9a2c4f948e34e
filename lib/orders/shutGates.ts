import type { OrderGate } from '@/shared/schemas/orderEvents';
import { isPassedByMaking, madeBefore } from './madeBefore';
import type { OrderStanding } from './orderStanding';
import { gatesOf, type StepName } from './stepOrder';

/** @returns the gates that would keep a step from counting if it were noted now. */
export const shutGates = (
  { gates, steps }: Pick<OrderStanding, 'gates' | 'steps'>,
  what: StepName,
): readonly OrderGate[] =>
  gatesOf(what).filter(
    (gate) => gates[gate] === 'shut' && !(isPassedByMaking(gate) && madeBefore(what, steps) !== undefined),
  );
