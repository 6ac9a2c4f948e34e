'use client';

import { useEffect, useId, useRef, useState } from 'react';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import type { JobInput } from '@/shared/schemas/request';
import { shareStudyWorker } from './shareStudyWorker';
import type { StudyAnswer, StudyName, StudyQuestion } from './studies';

/** One of several questions to the same study. */
export interface StudyAsk<Name extends StudyName> {
  readonly key: string;
  readonly input: JobInput;
  readonly question: StudyQuestion<Name>;
}

/** What came of one of them. */
interface StudyResult<Name extends StudyName> {
  readonly ask: StudyAsk<Name>;
  /** Null where it failed. */
  readonly answer: StudyAnswer<Name> | null;
  readonly failure: WorkerFailure | null;
}

/**
 * Asks the same study of several jobs, one after the other in the worker that all studies share.
 *
 * @param asks the same array for as long as nothing in it changes; one that stays the same object is asked once
 * @returns what is known so far, by key; an answer whose `ask` is not the one given now is an older one
 */
export function useStudies<Name extends StudyName>(
  name: Name,
  asks: readonly StudyAsk<Name>[],
): ReadonlyMap<string, StudyResult<Name>> {
  const asker = useId();
  const [results, setResults] = useState<ReadonlyMap<string, StudyResult<Name>>>(new Map());
  const answered = useRef(new Map<string, StudyAsk<Name>>());

  useEffect(() => {
    if (typeof Worker === 'undefined' || asks.length === 0) return;
    const { worker, giveBack } = shareStudyWorker();
    for (const ask of asks) {
      const { key, input, question } = ask;
      if (answered.current.get(key) === ask) continue;
      worker.ask(`${asker} ${key}`, { of: 'job', name, input, question }, (reply) => {
        const news: StudyResult<Name> =
          reply.kind === 'missing'
            ? { ask, answer: null, failure: reply.failure }
            : // What a study answers is typed by its name on both sides of the thread.
              { ask, answer: reply.answer as StudyAnswer<Name> | null, failure: null };
        // What is missing is asked again, until it is here.
        if (reply.kind !== 'missing') answered.current.set(key, ask);
        setResults((before) => new Map(before).set(key, news));
      });
    }
    return () => {
      for (const { key } of asks) worker.leave(`${asker} ${key}`);
      giveBack();
    };
  }, [asker, name, asks]);

  return results;
}
