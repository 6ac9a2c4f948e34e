'use client';

import { useMemo } from 'react';
import { useChecks } from '@/app/_docket/common/useChecks';
import { useJob } from '@/app/_docket/common/useJob';
import { useQuestions } from '@/app/_docket/common/useQuestions';
import { useTextContext } from '@/app/_fields/useTextContext';
import { type SectionStates, sectionStates } from '@/app/_words/docket/sectionStates';

/** What rail, chips and sheet say of each section. */
export function useSectionStates(): SectionStates {
  const { input, isChecked, costs, prices } = useJob();
  const checks = useChecks();
  const questions = useQuestions().count;
  const context = useTextContext();
  const costSheet = costs.stale ? null : (costs.answer?.costSheet ?? null);
  const priced = prices.stale ? null : (prices.answer?.prices ?? null);
  return useMemo(
    () => sectionStates({ input, isChecked, checks, questions, costSheet, prices: priced }, context),
    [input, isChecked, checks, questions, costSheet, priced, context],
  );
}
