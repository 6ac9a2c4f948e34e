import { areaPath, linePath } from './linePath';
import { type PlacedLabel, placeLabels } from './placeLabels';

/** Order totals by quantity; money in currency units. */
export interface StairsToDraw {
  /** From 1, one after the other. */
  readonly points: readonly {
    readonly n: number;
    readonly pays: number | null;
    readonly need: number;
    readonly fullCost: number;
  }[];
  readonly held: readonly {
    readonly from: number;
    readonly to: number;
    readonly pays: number;
    readonly words: string;
  }[];
  readonly falls: readonly {
    readonly from: number;
    readonly cheaperAt: number;
    readonly words: string;
  }[];
  readonly job: { readonly n: number; readonly total: number; readonly words: string } | null;
}

interface Plot {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly letterPx: number;
}

interface StairGeometry {
  readonly list: string;
  readonly held: readonly string[];
  readonly need: string;
  /** The ground beneath what each order must bring. */
  readonly ground: string;
  readonly fullCost: string;
  readonly falls: readonly { readonly x: number; readonly width: number }[];
  readonly job: { readonly x: number; readonly y: number } | null;
  readonly across: readonly { readonly n: number; readonly x: number }[];
  readonly up: readonly { readonly value: number; readonly y: number }[];
  readonly labels: readonly PlacedLabel[];
}

/** Half of the flag of this job with its rim, px. */
const FLAG = 9;
/** Lines across above nothing, at most. */
const MOST_LINES = 5;
const STEPS_ACROSS = [1, 2, 6, 12, 24, 48, 96] as const;
/** Room of a figure across, as a share of the page's own letter. */
const ROOM = 2.4;

/** Where everything of a staircase lies: both axes linear, nothing at the bottom. */
export function stairGeometry(stairs: StairsToDraw, plot: Plot): StairGeometry {
  const { points, held, falls, job } = stairs;
  const { left, right, top, bottom, letterPx } = plot;
  const to = Math.max(2, points.at(-1)?.n ?? 2);
  const most = Math.max(job?.total ?? 0, ...points.flatMap(({ pays, need }) => [pays ?? 0, need]));
  const up = upTicks(most);
  const max = up.at(-1) ?? 1;
  const xOf = (n: number) => left + ((n - 1) / (to - 1)) * (right - left);
  const yOf = (total: number) => bottom - (total / max) * (bottom - top);
  const path = (of: (point: StairsToDraw['points'][number]) => number | null) =>
    points.map((point) => {
      const total = of(point);
      return total === null ? null : ([xOf(point.n), yOf(total)] as const);
    });
  const need = path((point) => point.need);
  const lostAt = (fall: StairsToDraw['falls'][number]) =>
    points.find(({ n }) => n === fall.cheaperAt)?.pays ?? 0;
  const labels = [
    ...(job === null ? [] : [{ key: 'job', words: job.words, x: xOf(job.n), y: yOf(job.total), away: 11 }]),
    ...falls.map((fall) => ({
      key: `fall ${fall.from}`,
      words: fall.words,
      x: xOf(fall.cheaperAt),
      y: yOf(lostAt(fall)) + letterPx,
      away: 5,
    })),
    ...[...held].reverse().map((one) => ({
      key: `held ${one.from}`,
      words: one.words,
      x: (xOf(one.from) + xOf(one.to + 1)) / 2,
      y: yOf(one.pays),
      away: 6,
    })),
  ];
  return {
    list: linePath(path(({ pays }) => pays)),
    held: held.map(({ from, to: last, pays }) =>
      linePath([
        [xOf(from), yOf(pays)],
        [xOf(Math.min(to, last + 1)), yOf(pays)],
      ]),
    ),
    need: linePath(need),
    ground: areaPath(
      need,
      need.map((point) => (point === null ? null : ([point[0], bottom] as const))),
    ),
    fullCost: linePath(path((point) => point.fullCost)),
    falls: falls.map(({ from, cheaperAt }) => ({ x: xOf(from), width: xOf(cheaperAt) - xOf(from) })),
    job: job === null ? null : { x: xOf(job.n), y: yOf(job.total) },
    across: acrossTicks(to, right - left, letterPx).map((n) => ({ n, x: xOf(n) })),
    up: up.map((value) => ({ value, y: yOf(value) })),
    labels: placeLabels(
      labels,
      { left, right, top: top - letterPx, bottom },
      // Nothing is written over the flag of this job.
      job === null ? [] : [boxAround(xOf(job.n), yOf(job.total))],
      letterPx * 0.8125,
      falls.length > 0,
    ),
  };
}

const boxAround = (x: number, y: number) => ({
  left: x - FLAG,
  right: x + FLAG,
  top: y - FLAG,
  bottom: y + FLAG,
});

/** @returns round totals from nothing up to above the largest, as close above it as few lines come. */
function upTicks(most: number): readonly number[] {
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
function acrossTicks(to: number, widthPx: number, letterPx: number): readonly number[] {
  const most = Math.max(1, Math.floor(widthPx / (letterPx * ROOM)));
  const step = STEPS_ACROSS.find((one) => to / one <= most) ?? 96 * Math.ceil(to / 96 / most);
  const apart = (letterPx * ROOM * (to - 1)) / widthPx;
  const between = Array.from({ length: Math.floor(to / step) }, (_, index) => step * (index + 1));
  return [1, ...between.filter((n) => n - 1 >= apart && to - n >= apart), to];
}
