'use client';

import { PartGone } from '@/app/_network/PartGone';
import { TryAgain } from '@/app/_network/TryAgain';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import { PART_GONE, whyMissing } from '@/app/_words/missingAnswerWords';

type AnswerMissingProps = Readonly<{
  /** The first half of a sentence: “The levers could not be tried out”. */
  what: string;
  failure: WorkerFailure | null;
}>;

/** Stands where an answer of a worker is missing, with why and the way to it; nothing while none is. */
export function AnswerMissing({ what, failure }: AnswerMissingProps) {
  if (failure === null) return null;
  if (failure.kind === 'gone')
    return (
      <PartGone>
        {what}: {PART_GONE}.
      </PartGone>
    );
  return (
    <TryAgain failure={failure} onAgain={failure.again}>
      {what}: {whyMissing(failure)}
    </TryAgain>
  );
}
