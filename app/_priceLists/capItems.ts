import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { PriceListItem } from '@/shared/schemas/priceList';

/** Sells items under a cap, as one step to undo, whichever jobs they are of. */
export function capItems({ edit }: ReadyWorkspace, items: readonly PriceListItem[]): void {
  const lines = (jobId: string) => items.filter((item) => item.jobId === jobId).map(({ lineId }) => lineId);
  edit(
    'Cap on the items of the list',
    [...new Set(items.map(({ jobId }) => jobId))].map((jobId) => ({
      do: 'change',
      kind: 'job',
      id: jobId,
      to: (job) => ({
        ...job,
        lines: job.lines.map((line) =>
          lines(jobId).includes(line.id) ? { ...line, selling: 'capped' } : line,
        ),
      }),
    })),
  );
}
