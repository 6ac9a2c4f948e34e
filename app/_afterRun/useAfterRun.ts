'use client';

import { useMemo } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { WORKSHOP_ID } from '@/app/_documents/documentsByKind';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { foldLearned } from '@/lib/learning/foldLearned';
import type { LearnedRun } from '@/lib/learning/learnedFrom';
import type { Lesson } from '@/lib/learning/lesson';
import { type AnyRunNote, type RunFacts, runFacts } from '@/lib/making/runFacts';
import type { ClosedRun } from '@/lib/variances/acrossRuns';
import { type ActualTrouble, actualTroubles } from '@/lib/variances/actualTroubles';
import { newestPrices, paidForRun } from '@/lib/variances/pricesPaid';
import { type RunResult, runResult } from '@/lib/variances/runResult';

/** A run once it is made, as its screen has it. */
export interface AfterRunFigures {
  readonly facts: RunFacts;
  readonly today: string;
  /** Null where the run was begun without a standard. */
  readonly result: RunResult | null;
  readonly lessons: readonly Lesson[];
  readonly troubles: readonly ActualTrouble[];
  /** The first closed first, all of the currency of now. */
  readonly closed: readonly ClosedRun[];
}

/** Folds what was noted of all runs that have a standard: one is looked at, all teach. */
export function useAfterRun(workspace: ReadyWorkspace, runId: string): AfterRunFigures | null {
  const { runs, happened, papers, entries, workshop, jobs, blanks } = workspace;
  const { runStandard } = papers;
  const today = useToday();
  const all = useMemo(() => {
    const notes = happened.filter(isOfRuns);
    return Object.entries(runs).map(([id, run]) => runFacts(id, run, notes, runStandard));
  }, [runs, happened, runStandard]);
  const { currency } = workshop;
  const prices = useMemo(
    () =>
      newestPrices(
        entries.goodsIn.map(({ body }) => body),
        currency,
        null,
      ),
    [entries.goodsIn, currency],
  );
  const learned = useMemo(
    () => all.flatMap((facts) => learnedOf(facts, entries.goodsIn, entries.hours)),
    [all, entries.goodsIn, entries.hours],
  );
  const lessons = useMemo(
    () =>
      foldLearned({
        runs: learned,
        prices,
        documents: {
          workshop: { id: WORKSHOP_ID, body: workshop },
          jobs: jobs.map(({ id, job }) => ({ id, body: job })),
          blanks: Object.entries(blanks).map(([id, body]) => ({ id, body })),
        },
        taken: entries.rateTaken.map(({ body }) => body),
        day: today,
      }),
    [learned, prices, workshop, jobs, blanks, entries.rateTaken, today],
  );
  const facts = all.find((one) => one.runId === runId);
  if (facts === undefined) return null;
  const result = learned.find((one) => one.runId === runId)?.result ?? null;
  const troubles = result === null ? [] : actualTroubles(result, facts.hours);
  const closed = closedOf(all, learned, currency);
  return { facts, today, result, lessons, troubles, closed };
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
    .toSorted((one, other) => (one.closedOn < other.closedOn ? -1 : 1));

function learnedOf(
  facts: RunFacts,
  goodsIn: ReadyWorkspace['entries']['goodsIn'],
  hours: ReadyWorkspace['entries']['hours'],
): readonly LearnedRun[] {
  const { standard, runId, run } = facts;
  if (standard === null) return [];
  const orders = new Set(run.works.map(({ orderId }) => orderId));
  const orderHours = hours
    .map(({ body }) => body)
    .filter((one) => one.for.kind === 'order' && orders.has(one.for.id));
  const deliveries = goodsIn.map(({ body }) => body);
  const paid = paidForRun(deliveries, standard.body.currency, facts);
  const result = runResult(standard, { facts, paid, orderHours });
  return [{ runId, standard: standard.body, facts, result }];
}

const kindsOfRuns: Readonly<Record<AnyRunNote['kind'], true>> = {
  ...{ pressing: true, sheetsPrinted: true, blankFault: true, runStep: true, runActual: true },
  ...{ hours: true, pressTest: true },
};

const isOfRuns = (one: { readonly kind: string }): one is AnyRunNote => Object.hasOwn(kindsOfRuns, one.kind);
