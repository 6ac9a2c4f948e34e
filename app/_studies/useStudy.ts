'use client';

import { useMemo } from 'react';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import type { JobInput } from '@/shared/schemas/request';
import type { StudyAnswer, StudyName, StudyQuestion } from './studies';
import { useAnswer } from './useAnswer';
import { useSame } from './useSame';

interface StudyState<Name extends StudyName> {
  /** The newest answer with what it is the answer to; null until the first arrives. */
  readonly newest: {
    readonly input: JobInput;
    readonly question: StudyQuestion<Name>;
    readonly answer: StudyAnswer<Name>;
  } | null;
  /** Why the newest question has no answer. */
  readonly failure: WorkerFailure | null;
}

/**
 * Asks a study of a job, whenever the documents or the question change.
 *
 * @param input documents that were costed, another object where any of them changed; null where nothing is
 * @param question plain data; two that are equal in value are one question
 */
export function useStudy<Name extends StudyName>(
  name: Name,
  input: JobInput | null,
  question: StudyQuestion<Name>,
): StudyState<Name> {
  const beside: unknown = useSame(question);
  const { newest, failure } = useAnswer(
    useMemo(
      () => (input === null ? null : { of: 'job' as const, name, input, question: beside }),
      [name, input, beside],
    ),
  );
  return useMemo(
    () => ({
      failure,
      newest:
        newest === null
          ? null
          : {
              input: newest.request.input,
              // What a study is asked and answers is typed by its name on both sides of the thread.
              question: newest.request.question as StudyQuestion<Name>,
              answer: newest.answer as StudyAnswer<Name>,
            },
    }),
    [newest, failure],
  );
}
