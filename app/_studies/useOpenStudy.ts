'use client';

import { useMemo } from 'react';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import type { OpenAsked, OpenNeeds } from '@/lib/openWork/openNeeds';
import { useAnswer } from './useAnswer';
import { useSame } from './useSame';

interface OpenStudyState {
  /** The newest answer; null until the first arrives. */
  readonly answer: OpenNeeds | null;
  /** Why the newest question has no answer. */
  readonly failure: WorkerFailure | null;
}

/** Asks what open work is going to use, whenever any of it changes. */
export function useOpenStudy(asked: OpenAsked): OpenStudyState {
  const same = useSame(asked);
  const { newest, failure } = useAnswer(
    useMemo(() => ({ of: 'open' as const, name: 'needs' as const, asked: same }), [same]),
  );
  // What a study answers is typed by its name on both sides of the thread.
  return { failure, answer: newest === null ? null : (newest.answer as OpenNeeds) };
}
