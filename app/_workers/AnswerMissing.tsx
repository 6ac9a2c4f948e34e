'use client';

import { TryAgain } from '@/app/_network/TryAgain';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import { whyMissing } from '@/app/_words/missingAnswerWords';

type AnswerMissingProps = Readonly<{
  /** The first half of a sentence: “The levers could not be tried out”. */
  what: string;
  failure: WorkerFailure | null;
}>;

/** Stands where an answer of a worker is missing, with why and the way to it; nothing while none is. */
export function AnswerMissing({ what, failure }: AnswerMissingProps) {
  if (failure === null) return null;
  return (
    <TryAgain failure={failure} onAgain={failure.again}>
      {what}: {whyMissing(failure)}
    </TryAgain>
  );
}
