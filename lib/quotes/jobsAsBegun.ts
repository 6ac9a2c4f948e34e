import { isAsBegun } from '@/lib/drafts/isAsBegun';
import type { QuoteAsked } from './quoteAsked';
import type { QuoteObstacle } from './quoteObstacle';

/** @returns the jobs of an order of which nothing was chosen, and nobody said that they are right so. */
export function jobsAsBegun({ order, jobs }: QuoteAsked): readonly QuoteObstacle[] {
  return jobs.flatMap(({ jobId, input }) => {
    const [line] = input.job.lines;
    if (line === undefined || !isAsBegun(input)) return [];
    const isRight = order.lines.some(
      (one) => one.jobId === jobId && one.lineId === line.id && one.rightAsBegun === true,
    );
    if (isRight) return [];
    return [
      {
        kind: 'asBegun',
        ...{ jobId, lineId: line.id, name: line.name, job: input.job.name },
        pieces: line.quantities.reduce((sum, { quantity }) => sum + quantity, 0),
        picture: input.artworks[line.placements[0]?.artworkId ?? '']?.name ?? '',
      },
    ];
  });
}
