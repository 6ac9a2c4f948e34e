import type { RunFacts } from '@/lib/making/runFacts';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import { placeOf } from '@/lib/orders/stepOrder';
import type { BuyingList } from '@/shared/schemas/making/supply';
import { isOpenRun, workKey } from './openWork';

type Work = BuyingList['works'][number];

/** Works, by their keys, for which nothing is to be bought any more, or perhaps nothing. */
export interface LaidOut {
  /** Laid out by a run that has begun, or pressed. */
  readonly sure: ReadonlySet<string>;
  /** Of closed runs and no order: they were made, and may be made again. */
  readonly before: ReadonlySet<string>;
}

/**
 * What was laid out when its run began, or is pressed: its blanks are here or used up. What joined a run after it began
 * is not on its standard, and still to be bought for. A job that an open run is still to make is not made.
 */
export function laidOut(runs: readonly RunFacts[], board: readonly BoardOrder[]): LaidOut {
  const open = runs.filter(isOpenRun);
  const begun = open.flatMap(worksBegun).map(workKey);
  const waiting = new Set(
    open.flatMap((facts) => {
      const laid = new Set(worksBegun(facts).map(workKey));
      return facts.run.works.map(workKey).filter((key) => !laid.has(key));
    }),
  );
  const closed = runs.filter(({ isClosed }) => isClosed).flatMap(({ run }) => run.works);
  const pressed = board
    .filter(({ standing }) =>
      standing.steps.some(
        ({ step, holdsSince }) => holdsSince !== null && placeOf(step.what) >= placeOf('pressed'),
      ),
    )
    .flatMap(({ facts: { orderId, order } }) => order.jobIds.map((jobId) => workKey({ jobId, orderId })));
  const made = closed.filter(({ orderId }) => orderId !== null).map(workKey);
  const isLeft = (key: string) => !waiting.has(key);
  return {
    sure: new Set([...begun, ...made, ...pressed].filter(isLeft)),
    before: new Set(
      closed
        .filter(({ orderId }) => orderId === null)
        .map(workKey)
        .filter(isLeft),
    ),
  };
}

// Helpers

/** Works of a run as its standard has them; of one that began without any, all. */
const worksBegun = ({ run, standard, isBegun }: RunFacts): readonly Work[] =>
  standard?.body.works ?? (isBegun ? run.works : []);
