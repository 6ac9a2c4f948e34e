'use client';

import { useMemo } from 'react';
import { jobQuestions } from '@/lib/check/questions/jobQuestions';
import type { Question } from '@/lib/check/questions/question';
import { workshopQuestions } from '@/lib/check/questions/workshopQuestions';
import { useJob } from './useJob';

interface Questions {
  readonly workshop: readonly Question[];
  readonly job: readonly Question[];
  readonly count: number;
}

/** What nobody has told yet about the workshop, and about this job. */
export function useQuestions(): Questions {
  const { input, asked } = useJob();
  return useMemo(() => {
    const ofWorkshop = (question: Question) => question.id === 'taxInside';
    const workshop = [...asked.filter(ofWorkshop), ...workshopQuestions(input.workshop)];
    const job = [...asked.filter((question) => !ofWorkshop(question)), ...jobQuestions(input)];
    return { workshop, job, count: workshop.length + job.length };
  }, [input, asked]);
}
