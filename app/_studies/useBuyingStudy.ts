'use client';

import { useMemo } from 'react';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import type { BuyingAsked } from '@/lib/buying/buyingAsked';
import type { BuyingAnswer } from './studies';
import { useAnswer } from './useAnswer';
import { useSame } from './useSame';

interface BuyingStudyState {
  /** The newest answer; null until the first arrives. */
  readonly plan: BuyingAnswer | null;
  /** The newest question is being answered: the plan is of the one before. */
  readonly isWaiting: boolean;
  /** Why the newest question has no answer. */
  readonly failure: WorkerFailure | null;
}

/**
 * Asks what is to be bought, whenever the list or what it is worked out from changes.
 *
 * @param asked null while something of it is not known yet
 */
export function useBuyingStudy(asked: BuyingAsked | null): BuyingStudyState {
  const same = useSame(asked);
  const { newest, failure } = useAnswer(
    useMemo(
      () => (same === null ? null : { of: 'buying' as const, name: 'plan' as const, asked: same }),
      [same],
    ),
  );
  return {
    failure,
    isWaiting: newest?.request.asked !== same && failure === null,
    // What a study answers is typed by its name on both sides of the thread.
    plan: newest === null ? null : (newest.answer as BuyingAnswer),
  };
}
