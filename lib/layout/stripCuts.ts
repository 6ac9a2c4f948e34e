import type { PlacedPiece } from '@/lib/packing/placedPiece';
import { fitsWithin } from '@/shared/units';

/**
 * Where a roll print is cut straight across, mm from its start: in the middle of each gap that no piece reaches into
 * and that leaves both sides as much paper as between any two pieces.
 */
export function stripCuts(pieces: readonly PlacedPiece[], gutterMm: number): readonly number[] {
  const cuts: number[] = [];
  let end: number | null = null;
  for (const { yMm, heightMm } of pieces.toSorted((a, b) => a.yMm - b.yMm)) {
    if (end !== null && fitsWithin(gutterMm, yMm - end)) cuts.push((end + yMm) / 2);
    end = Math.max(end ?? 0, yMm + heightMm);
  }
  return cuts;
}
