'use client';

import { useMemo } from 'react';
import { namedInput } from '@/app/_documents/namedInput';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import { useBench } from '@/app/_orderBook/useBench';
import { useOrderBook } from '@/app/_orderBook/useOrderBook';
import { useSteadyAsks } from '@/app/_studies/useSteadyAsks';
import { type StudyAsk, useStudies } from '@/app/_studies/useStudies';
import { jobsOfOtherDays } from '@/lib/stall/making/jobsOfOtherDays';
import { type MakingJob, makingJobs } from '@/lib/stall/making/makingJobs';
import { type MakingTimes, makingTimes } from '@/lib/stall/making/makingTimes';
import { type BroughtAnswer, type ToPress, toPress } from '@/lib/stall/making/toPress';
import { firstDayOf } from '@/lib/stall/sellingDays';
import type { BenchAnswer } from '@/lib/studies/bench/benchAnswer';
import type { StallDay } from '@/shared/schemas/stallDay';

/** What it takes to press for a stall day. */
export interface Making {
  readonly today: string;
  readonly firstDay: string | null;
  readonly press: readonly ToPress[];
  readonly jobs: readonly MakingJob[];
  /** Of each job, by the id of its design; null while it is worked out, or where a stop stands in it. */
  readonly answerOf: (designId: string) => BenchAnswer | null;
  readonly isWaiting: boolean;
  /** Names of jobs that cannot be costed. */
  readonly stopped: readonly string[];
  /** Null while not everything is known, and where nobody has said when the bench is free. */
  readonly times: MakingTimes | null;
  readonly hasCalendar: boolean;
  /** Accepted orders of which some work is not known: the bench looks freer than it is. */
  readonly ordersLeftOut: number;
  readonly failure: WorkerFailure | null;
}

/** @param answer what the stall day's plan came to */
export function useMaking(
  workspace: ReadyWorkspace,
  {
    id,
    stallDay,
    answer,
  }: { readonly id: string; readonly stallDay: StallDay; readonly answer: BroughtAnswer },
): Making {
  const book = useOrderBook(workspace);
  const bench = useBench(workspace, book);
  const { today, board } = book;
  const { workshop, blanks, artworks, onHand, approvedVersions, stallDays, jobs: kept } = workspace;
  const press = useMemo(() => (answer.kind === 'planned' ? toPress(answer.goods) : []), [answer]);
  const jobs = useMemo(
    () =>
      makingJobs({
        ...{ stallDay, press },
        jobs: Object.fromEntries(kept.map(({ id: jobId, job }) => [jobId, job])),
        ofOrders: new Set(board.flatMap(({ facts }) => facts.order.jobIds)),
        ofOtherDays: jobsOfOtherDays(stallDays, id, today),
      }),
    [stallDay, press, kept, board, stallDays, id, today],
  );
  const asks = useSteadyAsks(
    useMemo(
      () =>
        jobs.map(({ designId, job }): StudyAsk<'bench'> => {
          const input = { asOf: today, workshop, blanks, artworks, job, onHand, approvedVersions };
          return { key: designId, input: namedInput(input), question: null };
        }),
      [jobs, today, workshop, blanks, artworks, onHand, approvedVersions],
    ),
  );
  const results = useStudies('bench', asks);
  const failure = asks.map(({ key }) => results.get(key)?.failure).find((one) => one != null) ?? null;
  return useMemo(() => {
    const found = asks.map((ask) => {
      const result = results.get(ask.key);
      return { key: ask.key, isHere: result?.ask.input === ask.input, answer: result?.answer ?? null };
    });
    const answers = new Map(found.flatMap(({ key, isHere, answer: one }) => (isHere ? [[key, one]] : [])));
    const known = [...answers.values()].flatMap((one) => one ?? []);
    const { calendar, sure, leftOut } = bench;
    const isKnown = known.length === jobs.length && jobs.length > 0 && !bench.isWaiting;
    return {
      ...{ today, press, jobs, failure, firstDay: firstDayOf(stallDay) },
      answerOf: (designId) => answers.get(designId) ?? null,
      isWaiting: failure === null && (bench.isWaiting || found.some(({ isHere }) => !isHere)),
      stopped: jobs.flatMap(({ designId, job }) => (answers.get(designId) === null ? [job.name] : [])),
      times:
        calendar === null || !isKnown
          ? null
          : makingTimes(
              calendar,
              sure.map(({ load }) => load),
              { id, firstDay: firstDayOf(stallDay), jobs: known },
              today,
            ),
      hasCalendar: calendar !== null,
      ordersLeftOut: leftOut.length,
    };
  }, [asks, results, bench, jobs, press, failure, id, stallDay, today]);
}
