import { useMemo } from 'react';
import { WORKSHOP_ID } from '@/app/_documents/documentsByKind';
import { foldLearned } from '@/lib/learning/foldLearned';
import { type SortedLessons, sortedLessons } from '@/lib/learning/sortedLessons';
import { pastDaysOf } from '@/lib/stall/evening/pastDaysOf';
import type { AfterRunOnScreen } from './afterRunOnScreen';

/** What all runs and deliveries teach. */
export function useLessons({ workspace, figures }: AfterRunOnScreen): SortedLessons {
  const { workshop, jobs, blanks, stallDays, entries, papers } = workspace;
  const { learned, prices, today } = figures;
  return useMemo(() => {
    const taken = entries.rateTaken.map(({ body }) => body);
    const lessons = foldLearned({
      ...{ runs: learned, prices, taken, day: today },
      goodsIn: entries.goodsIn.map(({ body }) => body),
      past: pastDaysOf(papers.stallPlan, papers.dayClose),
      documents: {
        workshop: { id: WORKSHOP_ID, body: workshop },
        jobs: jobs.map(({ id, job }) => ({ id, body: job })),
        blanks: Object.entries(blanks).map(([id, body]) => ({ id, body })),
        stallDays: Object.entries(stallDays).map(([id, body]) => ({ id, body })),
      },
    });
    return sortedLessons(lessons, taken);
  }, [learned, prices, workshop, jobs, blanks, stallDays, papers, entries.goodsIn, entries.rateTaken, today]);
}
