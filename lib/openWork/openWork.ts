import { isUnpressed } from '@/lib/making/list/toMake';
import type { RunFacts } from '@/lib/making/runFacts';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import { dayToKeep } from '@/lib/orders/dayToKeep';
import { placeOf } from '@/lib/orders/stepOrder';
import type { StockNeed } from '@/lib/stock/reserved';
import { compareText } from '@/shared/compareText';
import { compareDays } from '@/shared/days';
import type { Run } from '@/shared/schemas/making/run';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import type { BuyingList, Cover } from '@/shared/schemas/making/supply';

type Work = BuyingList['works'][number];

/** Work that is going to be done and uses what lies in stock. */
export interface OpenWork {
  readonly by: StockNeed['by'];
  readonly works: readonly Work[];
  readonly cover: Cover;
  /** Whoever comes first takes first; 0 of all that has begun or was bought for. */
  readonly place: number;
  /** Null of an order. */
  readonly run: Run | null;
  /** Null of what has not begun by one. */
  readonly standard: RunStandard | null;
  /** When an order is pressed at the latest; null where nobody knows, and of runs, which have a clock. */
  readonly day: string | null;
}

interface OpenWorkFrom {
  readonly board: readonly BoardOrder[];
  readonly runs: readonly RunFacts[];
  readonly lists: readonly { readonly id: string; readonly list: BuyingList }[];
  /** Lists from which an order went out to a supplier. */
  readonly orderedLists: ReadonlySet<string>;
  readonly latestOf: (orderId: string) => string | null;
}

/**
 * Runs that are not closed, and accepted orders of which nothing is pressed. A job that a run makes for an order is the
 * run's. What has begun or was bought for keeps its goods; the rest takes by the day it is wanted.
 */
export function openWork({ board, runs, lists, orderedLists, latestOf }: OpenWorkFrom): readonly OpenWork[] {
  const openLists = lists.filter(({ list }) => list.archivedOn === null);
  const listOf = (work: Work) => openLists.find(({ list }) => list.works.some((one) => sameWork(one, work)));
  const isOrdered = (works: readonly Work[]) =>
    works.some((work) => orderedLists.has(listOf(work)?.id ?? ''));
  const wanted = new Map(
    board.map(({ facts, standing }) => [facts.orderId, dayToKeep(facts.order, standing.agreed)]),
  );
  const open = runs.filter(isOpenRun);
  const inRuns = new Set(open.flatMap(({ run }) => run.works.map(workKey)));
  const found = [
    ...open.map(({ runId, run, standard, isBegun }): Found => {
      const works = run.works.map(({ jobId, orderId }) => ({ jobId, orderId }));
      const days = works.flatMap(({ orderId }) => wanted.get(orderId ?? '') ?? []).toSorted();
      return {
        ...{ by: { kind: 'run', id: runId }, works, cover: run.cover, run, day: null },
        standard: standard?.body ?? null,
        isHeld: isBegun || isOrdered(works),
        wantedOn: days[0] ?? run.startsOn,
      };
    }),
    ...board.filter(isUnpressed).map(({ facts: { orderId, order }, standing }): Found => {
      const all = [...new Set(order.jobIds)].map((jobId) => ({ jobId, orderId }));
      const works = all.filter((work) => !inRuns.has(workKey(work)));
      const isBought = standing.steps.some(
        ({ step, holdsSince }) => holdsSince !== null && placeOf(step.what) >= placeOf('blanksOrdered'),
      );
      return {
        ...{ by: { kind: 'order', id: orderId }, works, run: null, standard: null },
        cover: works.flatMap((work) => listOf(work)?.list.cover ?? [])[0] ?? 'usual',
        isHeld: isBought || isOrdered(works),
        wantedOn: wanted.get(orderId) ?? null,
        day: latestOf(orderId),
      };
    }),
  ].filter(({ works }) => works.length > 0);
  const waiting = found.filter(({ isHeld }) => !isHeld).toSorted(byDay);
  return found.map(({ isHeld, wantedOn: _, ...one }) => ({
    ...one,
    place: isHeld ? 0 : waiting.findIndex(({ by }) => by === one.by) + 1,
  }));
}

/** @returns whether a run is still going to be made, or being made. */
export const isOpenRun = ({ run, isClosed }: Pick<RunFacts, 'run' | 'isClosed'>): boolean =>
  run.archivedOn === null && !isClosed;

/** @returns one text for a job made for an order, or for nobody. */
export const workKey = ({ jobId, orderId }: Work): string => `${jobId} ${orderId ?? ''}`;

// Helpers

interface Found extends Omit<OpenWork, 'place'> {
  readonly isHeld: boolean;
  readonly wantedOn: string | null;
}

const sameWork = (one: Work, other: Work): boolean => workKey(one) === workKey(other);

const byDay = (one: Found, other: Found): number =>
  compareDays(one.wantedOn, other.wantedOn) ||
  compareText(one.by.kind, other.by.kind) ||
  compareText(one.by.id, other.by.id);
