import type { RunFacts } from '@/lib/making/runFacts';
import type { OrderStanding } from '@/lib/orders/orderStanding';
import { placeOf } from '@/lib/orders/stepOrder';
import type { PressedRun } from '@/lib/pressing/foldPressings';

/** Steps of an order that a run can tell of. */
export type RunTold = 'printed' | 'pressed' | 'packed';

interface OrderOfRun {
  readonly orderId: string;
  readonly jobIds: readonly string[];
}

/**
 * The furthest step of an order that its run shows was reached and nobody has noted: printed once a sheet or a piece of
 * it is noted; pressed once all its pieces are good; packed once the run is closed after that. An order with a job beside
 * the run is only printed by it.
 *
 * @returns null where there is nothing to note
 */
export function stepToNote(
  facts: Pick<RunFacts, 'run' | 'sheetsPrinted' | 'pressings' | 'isClosed'>,
  { turns }: Pick<PressedRun, 'turns'>,
  { orderId, jobIds }: OrderOfRun,
  { steps }: Pick<OrderStanding, 'steps'>,
): RunTold | null {
  const own = facts.run.works.filter((work) => work.orderId === orderId).map(({ jobId }) => jobId);
  const noted = Math.max(-1, ...steps.map(({ step }) => placeOf(step.what)));
  const prints = turns.filter(({ jobId }) => own.includes(jobId));
  const isPressed =
    jobIds.every((jobId) => own.includes(jobId)) &&
    prints.length > 0 &&
    prints.every(({ toGo }) => toGo === 0);
  const isPrinted = [...facts.sheetsPrinted, ...facts.pressings].some(({ body }) => own.includes(body.jobId));
  const reached: RunTold | null = isPressed
    ? facts.isClosed
      ? 'packed'
      : 'pressed'
    : isPrinted
      ? 'printed'
      : null;
  return reached !== null && placeOf(reached) > noted ? reached : null;
}
