'use client';

import { useMemo } from 'react';
import { useToday } from '@/app/_clock/useToday';
import type { JobRecord } from '@/app/_documents/documentsByKind';
import { lastNamedInput, namedInput } from '@/app/_documents/namedInput';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import { useSteadyAsks } from '@/app/_studies/useSteadyAsks';
import { type StudyAsk, useStudies } from '@/app/_studies/useStudies';
import type { JobFigures } from '@/lib/costing/jobFigures';
import type { JobInput } from '@/shared/schemas/request';

interface ListedFigures {
  /** Null until they are made. */
  readonly figuresOf: (kept: JobRecord) => JobFigures | null;
  readonly failure: WorkerFailure | null;
}

/**
 * What every job earns, one after the other in the study worker and in the order given, so that what is in sight comes
 * first. What was made once is remembered for as long as nothing it was made of changes, on other screens too.
 */
export function useJobFigures(
  {
    workshop,
    blanks,
    artworks,
    onHand,
    approvedVersions,
  }: Pick<ReadyWorkspace, 'workshop' | 'blanks' | 'artworks' | 'onHand' | 'approvedVersions'>,
  jobs: readonly JobRecord[],
): ListedFigures {
  const asOf = useToday();
  const inputs = useMemo(
    () =>
      jobs.map((kept) => {
        const input = { asOf, workshop, blanks, artworks, job: kept.job, onHand, approvedVersions };
        return { kept, input: namedInput(input) };
      }),
    [jobs, asOf, workshop, blanks, artworks, onHand, approvedVersions],
  );
  const wanted = useMemo(
    () =>
      inputs.flatMap(({ kept: { id }, input }): readonly StudyAsk<'figures'>[] =>
        made.has(input) ? [] : [{ key: id, input, question: null }],
      ),
    [inputs],
  );
  const asks = useSteadyAsks(wanted);
  const results = useStudies('figures', asks);
  for (const { ask, answer } of results.values()) if (answer !== null) made.set(ask.input, answer);
  // A new answer is in `results`, a new job in `inputs`.
  // biome-ignore lint/correctness/useExhaustiveDependencies: as said
  return useMemo(
    () => ({
      figuresOf: ({ job }) => {
        const input = lastNamedInput(job);
        return (input !== undefined && made.get(input)) || null;
      },
      failure: asks.map(({ key }) => results.get(key)?.failure).find((one) => one != null) ?? null,
    }),
    [results, asks, inputs],
  );
}

// Helpers

const made = new WeakMap<JobInput, JobFigures>();
