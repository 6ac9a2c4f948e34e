import { vi } from 'vitest';
import type { StudyRequest } from '@/app/_studies/studies';

/** A page with a worker, whose answers come when they come. */
export function stubWorker(): void {
  vi.stubGlobal('Worker', class {});
  vi.stubGlobal('IS_REACT_ACT_ENVIRONMENT', false);
}

/** Stands in for the study worker: the sums are the real ones, without a thread of their own. */
export async function studiesHere() {
  const { openStudies, runStudies } = await import('@/app/_studies/studies');
  const { grid } = await import('@/tests/fixtures/costed');
  const answerOf = (request: StudyRequest): unknown => {
    if (request.of === 'run') return runStudies[request.name](request.asked, grid);
    if (request.of === 'open') return openStudies.needs(request.asked, grid);
    throw new Error('only runs are asked for here');
  };
  return {
    shareStudyWorker: () => ({
      worker: {
        ask: (_key: string, request: StudyRequest, listener: (answered: unknown) => void) => {
          const answer = answerOf(request);
          queueMicrotask(() => listener({ kind: 'answered', isLast: true, answer }));
        },
        leave: () => undefined,
        stop: () => undefined,
      },
      giveBack: () => undefined,
    }),
  };
}
