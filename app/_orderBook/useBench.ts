'use client';

import { useEffect, useMemo, useRef } from 'react';
import { namedInput } from '@/app/_documents/namedInput';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import { useSteadyAsks } from '@/app/_studies/useSteadyAsks';
import { type StudyAsk, useStudies } from '@/app/_studies/useStudies';
import { type Calendar, calendarOf } from '@/lib/calendar/calendar';
import { type IfAllCome, ifAllCome } from '@/lib/calendar/ifAllCome';
import { keptBeside } from '@/lib/calendar/keptBeside';
import { type Load, latestOfAll, loadOf } from '@/lib/calendar/load';
import type { Latest } from '@/lib/calendar/orderDates';
import type { Planned } from '@/lib/calendar/planWork';
import { type WeekAhead, weeksAhead } from '@/lib/calendar/weeksAhead';
import { benchClaim, type OrderBench, orderBench } from '@/lib/orders/bench/orderLoad';
import type { BenchAnswer } from '@/lib/studies/bench/benchAnswer';
import type { JobInput } from '@/shared/schemas/request';
import type { OrderBook } from './useOrderBook';

/** The bench with all orders on it. */
export interface Bench {
  /** Null where nobody has said when the bench is free: then no day is known, and all below is empty. */
  readonly calendar: Calendar | null;
  /** Orders that were accepted, in the order in which they are made. */
  readonly sure: readonly OrderBench[];
  /** Orders that are asked or quoted. */
  readonly open: readonly OrderBench[];
  /** Accepted ones of which some work is not known: the bench looks freer than it is. Empty while it is worked out. */
  readonly leftOut: readonly string[];
  /** The accepted ones planned; null as above. */
  readonly load: Load | null;
  readonly weeks: readonly WeekAhead[];
  readonly ifAllCome: IfAllCome | null;
  /** The last days on which an order and all that were accepted can be kept; null where it has no wanted day. */
  readonly latestOf: (orderId: string) => Latest | null;
  /** The first plan of an order that can be kept: its own place, or behind all that were accepted. */
  readonly plannedOf: (orderId: string) => Planned | null;
  /** What an order asks of the bench; null where it takes none any more. */
  readonly benchOf: (orderId: string) => OrderBench | null;
  readonly workOf: (jobId: string) => BenchAnswer | null;
  /** All above rests on the work of all jobs; before it was known once, the bench looks free. */
  readonly isKnown: boolean;
  /** The work of some job is being worked out: all above is as it was before. */
  readonly isWaiting: boolean;
  readonly failure: WorkerFailure | null;
}

/** What the days of a quote rest on. */
export type SureBench = Pick<Bench, 'sure' | 'leftOut' | 'isWaiting' | 'failure'>;

/** Lays the orders that take time of the bench onto its calendar; what their jobs take is asked of the study worker. */
export function useBench(workspace: ReadyWorkspace, book: OrderBook): Bench {
  const { workshop, blanks, artworks, onHand, approvedVersions } = workspace;
  const { today, board, jobOf } = book;
  const asks = useSteadyAsks(
    useMemo(
      () =>
        board
          .filter((order) => benchClaim(order) !== 'none')
          .flatMap(({ facts }) => facts.order.jobIds)
          .flatMap((jobId): readonly StudyAsk<'bench'>[] => {
            const job = jobOf(jobId)?.job;
            if (job === undefined) return [];
            const input = { asOf: today, workshop, blanks, artworks, job, onHand, approvedVersions };
            return [{ key: jobId, input: namedInput(input), question: null }];
          }),
      [board, jobOf, today, workshop, blanks, artworks, onHand, approvedVersions],
    ),
  );
  const results = useStudies('bench', asks);
  for (const { ask, answer } of results.values()) if (answer !== null) made.set(ask.input, answer);
  // A new answer is in `results`.
  // biome-ignore lint/correctness/useExhaustiveDependencies: as said
  const works = useMemo(
    () =>
      new Map(
        asks.flatMap(({ key, input }) => {
          const answer = made.get(input);
          return answer === undefined ? [] : [[key, answer] as const];
        }),
      ),
    [asks, results],
  );
  const { blocks, daysOff, quoting } = workshop;
  const calendar = useMemo(() => calendarOf({ blocks, daysOff }), [blocks, daysOff]);
  const isWaiting = asks.some(({ key, input }) => !made.has(input) && results.get(key)?.ask.input !== input);
  const failure = asks.map(({ key }) => results.get(key)?.failure).find((one) => one != null) ?? null;
  const known = useMemo(
    (): BenchKnown => ({ calendar, board, today, works, isWaiting, winChance: quoting.winChance }),
    [calendar, board, today, works, isWaiting, quoting.winChance],
  );
  const settled = useSettled(known, isWaiting && failure === null);
  const planned = useMemo(() => benchOn(settled), [settled]);
  return useMemo(() => ({ ...planned, isWaiting, failure }), [planned, isWaiting, failure]);
}

// Helpers

/** What was worked out once is remembered for as long as nothing it was made of changes, on other screens too. */
const made = new WeakMap<JobInput, BenchAnswer>();

interface BenchKnown extends Pick<Bench, 'calendar' | 'isWaiting'>, Pick<OrderBook, 'board' | 'today'> {
  readonly works: ReadonlyMap<string, BenchAnswer>;
  readonly winChance: number;
}

/**
 * Days made of half of the orders are wrong days, and a plan for each answer holds up the page.
 *
 * @returns what was known when nothing was waited for, until nothing is again
 */
function useSettled(known: BenchKnown, isWaiting: boolean): BenchKnown {
  const before = useRef(known);
  // Other hours are shown at once, for they are said to be missing where there are none.
  const settled = isWaiting && before.current.calendar === known.calendar ? before.current : known;
  useEffect(() => {
    before.current = settled;
  }, [settled]);
  return settled;
}

function benchOn({
  calendar,
  board,
  today,
  works,
  isWaiting,
  winChance,
}: BenchKnown): Omit<Bench, 'isWaiting' | 'failure'> {
  const workOf = (jobId: string) => works.get(jobId) ?? null;
  const benches = (claim: 'sure' | 'open') =>
    // What is not answered yet is not unknown.
    (isWaiting ? [] : board)
      .filter((order) => benchClaim(order) === claim)
      .map((order) => orderBench(order, workOf, today));
  // Of what nothing is known, nothing can be planned.
  const isKnown = ({ load }: OrderBench) => load.works.length > 0;
  const accepted = benches('sure');
  const [sure, open] = [accepted.filter(isKnown), benches('open').filter(isKnown)];
  const leftOut = accepted
    .filter((one) => one.unknown.length > 0 || !isKnown(one))
    .map(({ load }) => load.id);
  const benchOf = (orderId: string) => [...sure, ...open].find(({ load }) => load.id === orderId) ?? null;
  const common = { isKnown: !isWaiting, calendar, sure, open, leftOut, workOf, benchOf };
  if (calendar === null) {
    const none = () => null;
    return { ...common, load: null, weeks: [], ifAllCome: null, latestOf: none, plannedOf: none };
  }
  const [sureLoads, openLoads] = [sure.map(({ load }) => load), open.map(({ load }) => load)];
  const load = loadOf(calendar, sureLoads, today);
  return {
    ...common,
    load,
    weeks: weeksAhead(calendar, today, load, openLoads),
    ifAllCome: ifAllCome(calendar, today, { orders: sureLoads, load }, openLoads, winChance),
    latestOf(orderId) {
      const own = openLoads.find(({ id }) => id === orderId);
      const all = own === undefined ? sureLoads : [...sureLoads, own];
      return latestOfAll(calendar, all).find(({ id }) => id === orderId)?.latest ?? null;
    },
    plannedOf(orderId) {
      const own = openLoads.find(({ id }) => id === orderId);
      if (own !== undefined) return keptBeside(calendar, sureLoads, own, today).planned;
      return load.orders.find(({ id }) => id === orderId)?.planned ?? null;
    },
  };
}
