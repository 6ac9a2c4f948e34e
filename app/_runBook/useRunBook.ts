'use client';

import { useMemo } from 'react';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { type AnyRunNote, factsOfRuns, type RunFacts } from '@/lib/making/runFacts';

/** Every run with what was noted of it. */
interface RunBook {
  readonly runs: readonly RunFacts[];
  /** Null where there is no such run. */
  readonly of: (runId: string) => RunFacts | null;
}

type Kept = Pick<ReadyWorkspace, 'runs' | 'happened' | 'papers'>;

/** Folds what happened to every run; a run of which nothing changed is folded again only with all others. */
export function useRunBook({ runs, happened, papers }: Kept): RunBook {
  const { runStandard } = papers;
  return useMemo(() => {
    const notes = happened.filter(isOfRuns);
    const all = factsOfRuns(runs, notes, runStandard);
    const byId = new Map(all.map((facts) => [facts.runId, facts]));
    return { runs: all, of: (runId) => byId.get(runId) ?? null };
  }, [runs, happened, runStandard]);
}

// Helpers

const kindsOfRuns: Readonly<Record<AnyRunNote['kind'], true>> = {
  ...{ pressing: true, sheetsPrinted: true, blankFault: true, runStep: true, runActual: true },
  ...{ hours: true, pressTest: true },
};

const isOfRuns = (one: { readonly kind: string }): one is AnyRunNote => Object.hasOwn(kindsOfRuns, one.kind);
