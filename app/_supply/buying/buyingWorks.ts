import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import { isOpen } from '@/lib/orders/board/turnOf';
import { placeOf } from '@/lib/orders/stepOrder';
import type { BuyingList } from '@/shared/schemas/making/supply';

type Work = BuyingList['works'][number];

/** Something to buy for: an order, a run, a job that no order asks for. */
export interface WorkChoice {
  readonly key: string;
  /** `asked`: an order that nobody accepted yet. */
  readonly kind: 'order' | 'run' | 'asked' | 'job';
  readonly name: string;
  readonly works: readonly Work[];
}

/**
 * @returns what can be bought for and stands on no list yet: orders whose goods are not here, open runs, and jobs of
 *   neither
 */
export function workChoices(workspace: ReadyWorkspace, book: OrderBook): readonly WorkChoice[] {
  const { buyingLists, runs, jobs } = workspace;
  const lists = Object.values(buyingLists).filter(({ archivedOn }) => archivedOn === null);
  const keyOf = ({ jobId, orderId }: Work) => `${jobId} ${orderId ?? ''}`;
  const listed = new Set(lists.flatMap(({ works }) => works.map(keyOf)));
  const fresh = (works: readonly Work[]) => works.filter((work) => !listed.has(keyOf(work)));
  const orders = book.board.flatMap(({ facts, standing }): readonly WorkChoice[] => {
    const { orderId, order } = facts;
    const isWanted =
      isOpen(facts, standing) &&
      standing.side.side === 'open' &&
      !standing.steps.some(({ step }) => placeOf(step.what) >= placeOf('goodsIn'));
    if (!isWanted) return [];
    return [
      {
        ...{ key: `order ${orderId}`, name: order.name },
        kind: standing.acceptance === null ? 'asked' : 'order',
        works: fresh(order.jobIds.map((jobId) => ({ jobId, orderId }))),
      },
    ];
  });
  const ofRuns = Object.entries(runs).flatMap(([id, run]): readonly WorkChoice[] =>
    run.archivedOn !== null
      ? []
      : [
          {
            ...{ key: `run ${id}`, kind: 'run', name: run.name },
            works: fresh(run.works.map(({ jobId, orderId }) => ({ jobId, orderId }))),
          },
        ],
  );
  const ordered = new Set(book.board.flatMap(({ facts }) => facts.order.jobIds));
  const others = jobs.flatMap(({ id, job }): readonly WorkChoice[] =>
    ordered.has(id) || job.archivedOn !== null
      ? []
      : [{ key: `job ${id}`, kind: 'job', name: job.name, works: fresh([{ jobId: id, orderId: null }]) }],
  );
  return [...orders, ...ofRuns, ...others].filter(({ works }) => works.length > 0);
}

/** @returns the works of some choices, each once. */
export function worksOf(choices: readonly WorkChoice[]): BuyingList['works'] {
  const works = new Map(
    choices.flatMap((choice) => choice.works).map((work) => [`${work.jobId} ${work.orderId ?? ''}`, work]),
  );
  return [...works.values()];
}
