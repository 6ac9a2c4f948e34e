'use client';

import { useMemo } from 'react';
import { useToday } from '@/app/_clock/useToday';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { useRunBook } from '@/app/_runBook/useRunBook';
import type { LearnedRun } from '@/lib/learning/learnedFrom';
import { runsToLearnFrom } from '@/lib/learning/runsToLearnFrom';
import type { RunFacts } from '@/lib/making/runFacts';
import type { ClosedRun } from '@/lib/variances/acrossRuns';
import { type ActualTrouble, actualTroubles } from '@/lib/variances/actualTroubles';
import { newestPrices, type PricePaid } from '@/lib/variances/pricesPaid';
import { resultOfRun } from '@/lib/variances/resultOfRun';
import type { RunResult } from '@/lib/variances/runResult';
import { sharedHours } from '@/lib/variances/sharedHours';
import { type SinceClosed, sinceClosed } from '@/lib/variances/sinceClosed';
import { compareText } from '@/shared/compareText';

/** A run once it is made, as its screen has it. */
export interface AfterRunFigures {
  readonly facts: RunFacts;
  readonly today: string;
  /** Null where the run was begun without a standard. */
  readonly result: RunResult | null;
  readonly troubles: readonly ActualTrouble[];
  /** Null without a result. */
  readonly since: SinceClosed | null;
  /** Every run with a standard, and its result; the first begun first. */
  readonly learned: readonly LearnedRun[];
  readonly prices: readonly PricePaid[];
  /** The first closed first, all of the currency of now. */
  readonly closed: readonly ClosedRun[];
  /** All runs. */
  readonly runs: readonly RunFacts[];
}

/** Results of all runs that have a standard: one is looked at, all teach. */
export function useAfterRun(workspace: ReadyWorkspace, runId: string): AfterRunFigures | null {
  const { entries, papers, workshop } = workspace;
  const { currency } = workshop;
  const today = useToday();
  const { runs, of } = useRunBook(workspace);
  const prices = useMemo(
    () =>
      newestPrices(
        entries.goodsIn.map(({ body }) => body),
        currency,
        null,
      ),
    [entries.goodsIn, currency],
  );
  const learned = useMemo(() => {
    const shared = sharedHours(entries.hours, papers.runStandard);
    return runsToLearnFrom(runs).flatMap((run): readonly LearnedRun[] => {
      const result = resultOfRun(run.facts, entries.goodsIn, shared);
      return result === null ? [] : [{ ...run, result }];
    });
  }, [runs, entries.goodsIn, entries.hours, papers.runStandard]);
  const facts = of(runId);
  if (facts === null) return null;
  const result = learned.find((one) => one.runId === runId)?.result ?? null;
  const troubles = result === null ? [] : actualTroubles(result, facts.hours, facts.pressings);
  const since =
    result === null || facts.standard === null
      ? null
      : sinceClosed(facts, facts.standard, result, entries.goodsIn);
  const closed = closedOf(runs, learned, currency);
  return { facts, today, result, troubles, since, learned, prices, closed, runs };
}

// Helpers

const closedOf = (
  all: readonly RunFacts[],
  learned: readonly LearnedRun[],
  currency: string,
): readonly ClosedRun[] =>
  all
    .flatMap(({ runId, run, steps, isClosed }): readonly ClosedRun[] => {
      const result = learned.find((one) => one.runId === runId)?.result;
      const step = steps.findLast(({ body }) => body.step.what === 'closed');
      if (!isClosed || step === undefined || result?.currency !== currency) return [];
      return [{ runId, name: run.name, closedOn: step.body.day, result }];
    })
    .toSorted(
      (one, other) => compareText(one.closedOn, other.closedOn) || compareText(one.runId, other.runId),
    );
