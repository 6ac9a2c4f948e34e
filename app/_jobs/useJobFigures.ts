'use client';

import { useMemo } from 'react';
import { useToday } from '@/app/_clock/useToday';
import type { JobRecord } from '@/app/_documents/documentsByKind';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import { useSteadyAsks } from '@/app/_studies/useSteadyAsks';
import { type StudyAsk, useStudies } from '@/app/_studies/useStudies';
import type { JobFigures } from '@/lib/costing/jobFigures';
import { jobLinks } from '@/lib/kinds/job/jobLinks';
import { sameValue } from '@/lib/merging/sameValue';
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
        return { kept, input: inputOf(input) };
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
        const input = known.get(job);
        return (input !== undefined && made.get(input)) || null;
      },
      failure: asks.map(({ key }) => results.get(key)?.failure).find((one) => one != null) ?? null,
    }),
    [results, asks, inputs],
  );
}

// Helpers

/** What a job was costed with last: the same object for as long as none of it changes. */
const known = new WeakMap<JobInput['job'], JobInput>();
const made = new WeakMap<JobInput, JobFigures>();

/** The documents a job names and no others: two hundred jobs are not to send every picture there is to the worker. */
function inputOf({ asOf, workshop, blanks, artworks, job, ...noted }: JobInput): JobInput {
  const links = jobLinks(job);
  const idsOf = (kind: string) => new Set(links.filter(({ to }) => to === kind).map(({ id }) => id));
  const input: JobInput = {
    asOf,
    workshop,
    blanks: entriesOf(blanks, idsOf('blank')),
    artworks: entriesOf(artworks, idsOf('artwork')),
    job,
    onHand: entriesOf(noted.onHand, idsOf('blank')),
    approvedVersions: entriesOf(noted.approvedVersions, idsOf('artwork')),
  };
  const before = known.get(job);
  if (before !== undefined && isSame(before, input)) return before;
  known.set(job, input);
  return input;
}

const entriesOf = <Value>(
  from: Readonly<Record<string, Value>>,
  ids: ReadonlySet<string>,
): Record<string, Value> => Object.fromEntries(Object.entries(from).filter(([id]) => ids.has(id)));

const isSame = (one: JobInput, other: JobInput): boolean =>
  one.asOf === other.asOf &&
  one.workshop === other.workshop &&
  hasSameEntries(one.blanks, other.blanks) &&
  hasSameEntries(one.artworks, other.artworks) &&
  sameValue(one.onHand, other.onHand) &&
  sameValue(one.approvedVersions, other.approvedVersions);

function hasSameEntries(
  one: Readonly<Record<string, unknown>>,
  other: Readonly<Record<string, unknown>>,
): boolean {
  const ids = Object.keys(one);
  return ids.length === Object.keys(other).length && ids.every((id) => one[id] === other[id]);
}
