import { designKey } from '@/lib/stall/designKey';
import type { Pile } from '@/lib/stock/foldStock';
import type { Job } from '@/shared/schemas/job';
import type { StockGrade } from '@/shared/schemas/stock';

/** A design of which goods can go to a shop. */
interface DesignToSend {
  readonly key: string;
  readonly jobId: string;
  readonly lineId: string;
  /** Null where the job or the line is not here any more. */
  readonly job: string | null;
  readonly line: string | null;
  readonly sizes: readonly { readonly size: string; readonly grades: readonly StockGrade[] }[];
}

/**
 * What can go from home to a shop: every size that a job in use makes, counted or not, and whatever else lies finished
 * at home, in its grade, also of jobs that were put away or are gone.
 */
export function goodsToSend(
  jobs: readonly { readonly id: string; readonly job: Job }[],
  piles: readonly Pile[],
): readonly DesignToSend[] {
  const designs = new Map<string, Building>();
  const add = (jobId: string, lineId: string, size: string, grade: StockGrade) => {
    const key = designKey({ jobId, lineId });
    const design = designs.get(key) ?? { jobId, lineId, sizes: new Map() };
    design.sizes.set(size, (design.sizes.get(size) ?? new Set<StockGrade>()).add(grade));
    designs.set(key, design);
  };
  for (const { id, job } of jobs) {
    if (job.archivedOn !== null) continue;
    for (const line of job.lines) for (const { size } of line.quantities) add(id, line.id, size, 'first');
  }
  for (const { item, place, grade, quantity } of piles) {
    if (item.kind === 'finished' && place.kind === 'home' && quantity > 0)
      add(item.jobId, item.lineId, item.size, grade);
  }
  const byId = new Map(jobs.map(({ id, job }) => [id, job]));
  return [...designs].map(([key, { jobId, lineId, sizes }]) => {
    const job = byId.get(jobId);
    return {
      ...{ key, jobId, lineId, job: job?.name ?? null },
      line: job?.lines.find(({ id }) => id === lineId)?.name ?? null,
      sizes: [...sizes].map(([size, grades]) => ({ size, grades: [...grades] })),
    };
  });
}

// Helpers

interface Building {
  readonly jobId: string;
  readonly lineId: string;
  readonly sizes: Map<string, Set<StockGrade>>;
}
