'use client';

import { useMemo } from 'react';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import type { QuoteAsked } from '@/lib/quotes/quoteAsked';
import type { OrderStudyAnswer, OrderStudyName, OrderStudyQuestion } from './studies';
import { useAnswer } from './useAnswer';
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
 * Asks a study of a whole order, whenever the order, what it is made of or the question changes.
 *
 * @param asked null where nothing is asked; it and the question are the same while they are equal in value
 */
export function useOrderStudy<Name extends OrderStudyName>(
  name: Name,
  asked: QuoteAsked | null,
  question: OrderStudyQuestion<Name>,
): OrderStudyState<Name> {
  const order = useSame(asked);
  const beside: unknown = useSame(question);
  const { newest, failure } = useAnswer(
    useMemo(
      () => (order === null ? null : { of: 'order' as const, name, asked: order, question: beside }),
      [name, order, beside],
    ),
  );
  return useMemo(
    () => ({
      failure,
      newest:
        newest === null
          ? null
          : {
              asked: newest.request.asked,
              // What a study is asked and answers is typed by its name on both sides of the thread.
              question: newest.request.question as OrderStudyQuestion<Name>,
              answer: newest.answer as OrderStudyAnswer<Name>,
            },
    }),
    [newest, failure],
  );
}
