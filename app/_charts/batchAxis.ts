/** Quantities that people order by, on a scale that doubles. */
const ROUND = [1, 2, 6, 12, 24, 48, 100, 200, 500, 1000] as const;
/** Room that a figure and the gap after it take, as a share of the page's own letter. */
const ROOM = 2.4;

/**
 * Where a batch stands on a logarithmic axis: each doubling takes the same room.
 *
 * @param to the last batch, above 1
 * @returns 0 for one piece, 1 for the last batch
 */
export const ratioOfBatch = (n: number, to: number): number => Math.log(n) / Math.log(to);

/** @returns the batch at a place of the axis, in whole pieces. */
export const batchAtRatio = (ratio: number, to: number): number =>
  Math.min(to, Math.max(1, Math.round(to ** ratio)));

/** @returns the batches to write beneath a drawing: the first, round ones as many as there is room for, the last. */
export function batchTicks(to: number, widthPx: number, letterPx: number): readonly number[] {
  const apart = letterPx * ROOM;
  const xOf = (n: number) => ratioOfBatch(n, to) * widthPx;
  const ticks: number[] = [1];
  for (const n of ROUND) {
    const isFree = xOf(n) - xOf(ticks[ticks.length - 1] ?? 1) >= apart && xOf(to) - xOf(n) >= apart;
    if (n < to && isFree) ticks.push(n);
  }
  return [...ticks, to];
}
