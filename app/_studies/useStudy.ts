'use client';

import { useEffect, useId, useState } from 'react';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import type { JobInput } from '@/shared/schemas/request';
import { shareStudyWorker } from './shareStudyWorker';
import type { StudyAnswer, StudyName, StudyQuestion } from './studies';
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
 * Asks a study in the worker that all studies of a page share, whenever the documents or the question change.
 *
 * @param input documents that were costed; null where nothing is
 * @param question plain data; two that are equal in value are one question
 */
export function useStudy<Name extends StudyName>(
  name: Name,
  input: JobInput | null,
  question: StudyQuestion<Name>,
): StudyState<Name> {
  const asker = useId();
  const asked = useSame(question);
  const [state, setState] = useState<StudyState<Name>>({ newest: null, failure: null });

  useEffect(() => {
    if (typeof Worker === 'undefined') return;
    const { worker, giveBack } = shareStudyWorker();
    if (input !== null) {
      worker.ask(asker, { of: 'job', name, input, question: asked }, (answered) => {
        if (answered.kind === 'missing') setState((before) => ({ ...before, failure: answered.failure }));
        else if (answered.answer === null) setState((before) => ({ ...before, failure: null }));
        // What a study answers is typed by its name on both sides of the thread.
        else
          setState({
            newest: { input, question: asked, answer: answered.answer as StudyAnswer<Name> },
            failure: null,
          });
      });
    }
    return () => {
      worker.leave(asker);
      giveBack();
    };
  }, [asker, name, input, asked]);

  return state;
}
