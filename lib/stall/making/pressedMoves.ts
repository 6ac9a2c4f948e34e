import type { StockMove } from '@/shared/schemas/stock';
import type { ToPress } from './toPress';

/**
 * What comes home when a job was pressed for a stall day. It is noted under the design that the day names, also where
 * another job pressed it, so that the plan finds it.
 *
 * @param jobId the job that pressed it
 * @param press of one design
 */
export const pressedMoves = (jobId: string, press: readonly ToPress[]): readonly StockMove[] =>
  press
    .filter(({ press: pieces }) => pieces > 0)
    .map(({ press: pieces, jobId: designId, lineId, size }) => ({
      item: { kind: 'finished', jobId: designId, lineId, size },
      place: { kind: 'home' },
      grade: 'first',
      quantity: pieces,
      cause: 'made',
      reference: { kind: 'job', id: jobId },
      unitCost: null,
    }));
