'use client';

import { useMemo } from 'react';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import type { StallAsked } from '@/lib/stall/plan/stallAsked';
import type { StallStudyAnswer, StallStudyName } from './studies';
import { useAnswer } from './useAnswer';
import { useSame } from './useSame';

interface StallStudyState<Name extends StallStudyName> {
  /** The newest answer with what it is the answer to; null until the first arrives. */
  readonly newest: { readonly asked: StallAsked; readonly answer: StallStudyAnswer<Name> } | null;
  /** What is asked now; the same object as in `newest` once it is answered. */
  readonly asked: StallAsked;
  /** Why the newest question has no answer. */
  readonly failure: WorkerFailure | null;
}

/** Asks a study of a stall day, whenever the day or what it is planned from changes. */
export function useStallStudy<Name extends StallStudyName>(
  name: Name,
  asked: StallAsked,
): StallStudyState<Name> {
  const same = useSame(asked);
  const { newest, failure } = useAnswer(
    useMemo(() => ({ of: 'stall' as const, name, asked: same }), [name, same]),
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
              answer: newest.answer as StallStudyAnswer<Name>,
            },
    }),
    [newest, failure, same],
  );
}
