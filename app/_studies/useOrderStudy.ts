'use client';

import { useEffect, useId, useState } from 'react';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import type { QuoteAsked } from '@/lib/quotes/quoteAsked';
import { shareStudyWorker } from './shareStudyWorker';
import type { OrderStudyAnswer, OrderStudyName, OrderStudyQuestion } from './studies';
import { useSame } from './useSame';

interface OrderStudyState<Name extends OrderStudyName> {
  /** The newest answer with what it is the answer to; null until the first arrives. */
  readonly newest: {
    readonly asked: QuoteAsked;
    readonly question: OrderStudyQuestion<Name>;
    readonly answer: OrderStudyAnswer<Name>;
  } | null;
  /** Why the newest question has no answer. */
  readonly failure: WorkerFailure | null;
}

/**
 * Asks a study of a whole order in the worker that all studies of a page share.
 *
 * @param asked null where nothing is asked; one that is equal in value is the same
 * @param question plain data, likewise
 */
export function useOrderStudy<Name extends OrderStudyName>(
  name: Name,
  asked: QuoteAsked | null,
  question: OrderStudyQuestion<Name>,
): OrderStudyState<Name> {
  const asker = useId();
  const [order, beside] = [useSame(asked), useSame(question)];
  const [state, setState] = useState<OrderStudyState<Name>>({ newest: null, failure: null });

  useEffect(() => {
    if (typeof Worker === 'undefined') return;
    const { worker, giveBack } = shareStudyWorker();
    if (order !== null) {
      worker.ask(asker, { of: 'order', name, asked: order, question: beside }, (answered) => {
        if (answered.kind === 'missing') setState((before) => ({ ...before, failure: answered.failure }));
        // What a study answers is typed by its name on both sides of the thread.
        else
          setState({
            newest: { asked: order, question: beside, answer: answered.answer as OrderStudyAnswer<Name> },
            failure: null,
          });
      });
    }
    return () => {
      worker.leave(asker);
      giveBack();
    };
  }, [asker, name, order, beside]);

  return state;
}
