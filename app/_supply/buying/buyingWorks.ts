import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import type { RunFacts } from '@/lib/making/runFacts';
import { laidOut } from '@/lib/openWork/laidOut';
import { isOpenRun, workKey } from '@/lib/openWork/openWork';
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
 * @param runs with what was noted of them
 * @returns what can be bought for and stands on no list yet: orders whose goods are not here, open runs as far as
 *   nothing of them is laid out or pressed, and jobs of neither
 */
export function workChoices(
  workspace: ReadyWorkspace,
  book: OrderBook,
  runs: readonly RunFacts[],
): readonly WorkChoice[] {
  const { buyingLists, jobs } = workspace;
  const lists = Object.values(buyingLists).filter(({ archivedOn }) => archivedOn === null);
  const listed = new Set(lists.flatMap(({ works }) => works.map(workKey)));
  const { sure } = laidOut(runs, book.board);
  const fresh = (works: readonly Work[]) =>
    works.filter((work) => !listed.has(workKey(work)) && !sure.has(workKey(work)));
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
  const ofRuns = runs.filter(isOpenRun).map(
    ({ runId, run }): WorkChoice => ({
      ...{ key: `run ${runId}`, kind: 'run', name: run.name },
      works: fresh(run.works.map(({ jobId, orderId }) => ({ jobId, orderId }))),
    }),
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
  const works = new Map(choices.flatMap((choice) => choice.works).map((work) => [workKey(work), work]));
  return [...works.values()];
}
