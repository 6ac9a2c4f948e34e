import { act } from '@testing-library/react';
import type { StudyRequest } from '@/app/_studies/studies';

/** Stands in for the study worker: the sums are the real ones, without a thread of their own. */
export async function studiesHere() {
  const { stallStudies, studies } = await import('@/app/_studies/studies');
  const { grid } = await import('@/tests/fixtures/costed');
  return {
    shareStudyWorker: () => ({
      worker: {
        ask: (_key: string, request: StudyRequest, listener: (answered: unknown) => void) => {
          const isBench = request.of === 'job' && request.name === 'bench';
          if (request.of !== 'stall' && !isBench)
            throw new Error('only a stall day and its bench are asked for');
          const answer = isBench
            ? studies.bench(request.input, grid)
            : stallStudies[request.name](request.asked, grid);
          queueMicrotask(() => act(() => listener({ kind: 'answered', isLast: true, answer })));
        },
        leave: () => undefined,
        stop: () => undefined,
      },
      giveBack: () => undefined,
    }),
  };
}
