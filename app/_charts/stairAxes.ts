/** Lines across above nothing, at most. */
const MOST_LINES = 5;
const STEPS_ACROSS = [1, 2, 6, 12, 24, 48, 96] as const;
/** Room of a figure across, as a share of the page's own letter. */
const ROOM = 2.4;

/** @returns round totals from nothing up to above the largest, as close above it as few lines come. */
export function upTicks(most: number): readonly number[] {
  if (!(most > 0)) return [0, 1];
  const size = 10 ** Math.floor(Math.log10(most));
  const steps = [0.1, 0.2, 0.25, 0.5, 1, 2, 2.5, 5]
    .map((times) => ({ step: times * size, count: Math.ceil(most / (times * size) - 1e-9) }))
    .filter(({ count }) => count <= MOST_LINES)
    .sort((a, b) => a.step * a.count - b.step * b.count || a.step - b.step);
  const { step = most, count = 1 } = steps[0] ?? {};
  return Array.from({ length: count + 1 }, (_, index) => Number((index * step).toPrecision(12)));
}

/** @returns quantities to write beneath a linear axis from 1 on: by the half dozen, as far as there is room. */
export function acrossTicks(to: number, widthPx: number, letterPx: number): readonly number[] {
  const most = Math.max(1, Math.floor(widthPx / (letterPx * ROOM)));
  const step = STEPS_ACROSS.find((one) => to / one <= most) ?? 96 * Math.ceil(to / 96 / most);
  const apart = (letterPx * ROOM * (to - 1)) / widthPx;
  const between = Array.from({ length: Math.floor(to / step) }, (_, index) => step * (index + 1));
  return [1, ...between.filter((n) => n - 1 >= apart && to - n >= apart), to];
}
