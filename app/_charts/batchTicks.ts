/** Batches are thought of in dozens. */
const STEPS = [12, 24, 48, 60, 96, 120, 240] as const;
/** Room that a figure and the gap after it take, as a share of the page's own letter. */
const ROOM = 3.2;
/** The last batch may stand a little nearer to the one before it. */
const ROOM_AT_END = 2.4;

/** @returns the batches to write beneath a drawing: the first, dozens as many as there is room for, the last. */
export function batchTicks(to: number, widthPx: number, letterPx: number): number[] {
  const most = Math.max(2, Math.floor(widthPx / (letterPx * ROOM)));
  const step = STEPS.find((dozens) => to / dozens <= most) ?? 480;
  const between = Array.from({ length: Math.floor(to / step) }, (_, index) => step * (index + 1));
  return [1, ...between.filter((n) => ((to - n) / to) * widthPx >= letterPx * ROOM_AT_END), to];
}
