'use client';

import { useMemo } from 'react';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import type { RunQuestion } from '@/lib/making/study/runQuestion';
import type { RunStudyAnswer, RunStudyName } from './studies';
import { useAnswer } from './useAnswer';
import { useSame } from './useSame';

interface RunStudyState<Name extends RunStudyName> {
  /** The newest answer with what it is the answer to; null until the first arrives. */
  readonly newest: { readonly asked: RunQuestion; readonly answer: RunStudyAnswer<Name> } | null;
  /** What is asked now; the same object as in `newest` once it is answered. */
  readonly asked: RunQuestion;
  /** Why the newest question has no answer. */
  readonly failure: WorkerFailure | null;
}

/** Asks a study of a run, whenever the run or what it is planned from changes. */
export function useRunStudy<Name extends RunStudyName>(name: Name, asked: RunQuestion): RunStudyState<Name> {
  const same = useSame(asked);
  const { newest, failure } = useAnswer(
    useMemo(() => ({ of: 'run' as const, name, asked: same }), [name, same]),
  );
  return useMemo(
    () => ({
      failure,
      asked: same,
      newest:
        newest === null
          ? null
          : {
              asked: newest.request.asked,
              // What a study answers is typed by its name on both sides of the thread.
              answer: newest.answer as RunStudyAnswer<Name>,
            },
    }),
    [newest, failure, same],
  );
}
