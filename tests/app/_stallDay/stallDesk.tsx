import { act } from '@testing-library/react';
import type { StudyRequest } from '@/app/_studies/studies';

/** Stands in for the study worker: the sums are the real ones, without a thread of their own. */
export async function studiesHere() {
  const { stallStudies } = await import('@/app/_studies/studies');
  const { grid } = await import('@/tests/fixtures/costed');
  return {
    shareStudyWorker: () => ({
      worker: {
        ask: (_key: string, request: StudyRequest, listener: (answered: unknown) => void) => {
          if (request.of !== 'stall') throw new Error('only stall days are asked for here');
          const answer = stallStudies[request.name](request.asked, grid);
          queueMicrotask(() => act(() => listener({ kind: 'answered', isLast: true, answer })));
        },
        leave: () => undefined,
        stop: () => undefined,
      },
      giveBack: () => undefined,
    }),
  };
}
