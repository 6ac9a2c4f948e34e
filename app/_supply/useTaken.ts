'use client';

import { useState } from 'react';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';

/** What came of something that was to be kept. */
export type Outcome = ReturnType<ReadyWorkspace['note']>;

/** Tells what the store did not take; whoever typed it leaves it as it stands then. */
export function useTaken() {
  const [problem, setProblem] = useState<string | null>(null);
  /** @returns whether it was taken */
  const taken = ({ state }: Outcome): boolean => {
    setProblem(state === 'shown' ? null : notNotedWords(state));
    return state === 'shown';
  };
  return { problem, taken };
}
