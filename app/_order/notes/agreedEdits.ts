import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import type { DocumentBodies } from '@/lib/kinds/kinds';
import { type AgreedJob, jobsAsAgreed } from '@/lib/quotes/agreed/jobAsAgreed';
import type { Edit } from '@/lib/stored/prepareEdit';
import type { Quote } from '@/shared/schemas/orderPapers';

/** @returns jobs of an order that are not as they are, or would be, accepted. */
export const agreedJobs = (
  { order, jobs, workspace }: Pick<OrderOnScreen, 'order' | 'jobs' | 'workspace'>,
  quote: Quote,
  alternativeId: string | null,
): readonly AgreedJob[] =>
  jobsAsAgreed({
    ...{ quote, alternativeId, order, workshop: workspace.workshop },
    jobs: jobs.map(({ id, job }) => ({ jobId: id, job })),
  });

/** @returns what brings them there; what was chosen is asked for then, and no longer offered beside. */
export function agreedEdits(
  { orderId, order }: Pick<OrderOnScreen, 'orderId' | 'order'>,
  becoming: readonly AgreedJob[],
  alternativeId: string | null,
): readonly Edit<DocumentBodies>[] {
  const isOffered = order.alternatives.some(({ id }) => id === alternativeId);
  return [
    ...becoming.map(
      ({ jobId, job }): Edit<DocumentBodies> => ({ do: 'change', kind: 'job', id: jobId, to: () => job }),
    ),
    ...(isOffered
      ? [
          {
            do: 'change',
            kind: 'order',
            id: orderId,
            to: (now) => ({
              ...now,
              alternatives: now.alternatives.filter(({ id }) => id !== alternativeId),
            }),
          } satisfies Edit<DocumentBodies>,
        ]
      : []),
  ];
}
