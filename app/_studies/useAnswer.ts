import { useEffect, useId, useState } from 'react';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import { shareStudyWorker } from './shareStudyWorker';
import type { StudyRequest } from './studies';

interface Answered<Request extends StudyRequest> {
  /** The newest answer with what it is the answer to; null until the first arrives. */
  readonly newest: { readonly request: Request; readonly answer: unknown } | null;
  /** Why the newest question has no answer. */
  readonly failure: WorkerFailure | null;
}

/**
 * Asks the worker that all studies of a page share, whenever the question is another one.
 *
 * @param request plain data, the same object for as long as the same is asked; null asks nothing
 * @returns what was answered last; a study that finds nothing to say leaves the answer before
 */
export function useAnswer<Request extends StudyRequest>(request: Request | null): Answered<Request> {
  const asker = useId();
  const [state, setState] = useState<Answered<Request>>({ newest: null, failure: null });

  useEffect(() => {
    if (typeof Worker === 'undefined') return;
    const { worker, giveBack } = shareStudyWorker();
    if (request !== null) {
      worker.ask(asker, request, (answered) => {
        if (answered.kind === 'missing') setState((before) => ({ ...before, failure: answered.failure }));
        else if (answered.answer === null) setState((before) => ({ ...before, failure: null }));
        else setState({ newest: { request, answer: answered.answer }, failure: null });
      });
    }
    return () => {
      worker.leave(asker);
      giveBack();
    };
  }, [asker, request]);

  return state;
}
