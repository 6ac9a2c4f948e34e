'use client';

import { useMemo } from 'react';
import { useTextContext } from '@/app/_fields/useTextContext';
import { type CheckGroup, checkGroups } from '@/app/_words/docket/checkGroups';
import { useJob } from './useJob';

/** What the checks of the job say, each thing once. */
export function useChecks(): readonly CheckGroup[] {
  const { findings, input } = useJob();
  const context = useTextContext();
  return useMemo(() => checkGroups(findings, input.job, context), [findings, input.job, context]);
}
