'use client';

import { useState } from 'react';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import { useRunStudy } from '@/app/_studies/useRunStudy';
import type { RunPlanned, RunTrouble } from '@/lib/making/runPlan';
import type { RunAnswer } from '@/lib/making/study/runAnswer';
import type { RunQuestion } from '@/lib/making/study/runQuestion';

type Planned = Extract<RunPlanned, { kind: 'planned' }>;

/** What the sums say of a run. */
export interface RunFigures {
  /** The newest answer; null until the first is here. */
  readonly answer: RunAnswer | null;
  /** The last clock that could be made; null while there was none. */
  readonly planned: Planned | null;
  readonly pieces: number;
  /** It is of figures before those of now: newer ones are worked out, or cannot be. */
  readonly isOld: boolean;
  /** The figures of now make no clock. */
  readonly isRefused: boolean;
  readonly troubles: readonly RunTrouble[];
  readonly failure: WorkerFailure | null;
}

/** Asks for the clock of a run; the last that could be made stays in view, marked, while there is none of now. */
export function useRunFigures(wanted: RunQuestion): RunFigures {
  const { newest, asked, failure } = useRunStudy('plan', wanted);
  const answer = newest?.answer ?? null;
  const [last, setLast] = useState<Planned | null>(null);
  const planned = answer?.planned.kind === 'planned' ? answer.planned : last;
  // Set while rendering: React renders again at once, and nothing is shown in between.
  if (planned !== last) setLast(planned);
  const isRefused = answer?.planned.kind === 'troubled';
  return {
    ...{ answer, planned, isRefused, failure },
    pieces: answer?.pieces ?? 0,
    isOld: newest?.asked !== asked || (planned !== null && isRefused),
    troubles: answer?.planned.kind === 'troubled' ? answer.planned.troubles : [],
  };
}
