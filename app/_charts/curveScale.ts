import type { CurveMeasure, CurveRow } from '@/lib/studies/curve/curveSeries';

/** What is drawn from bottom to top, with round values to write beside it. */
export interface CurveScale {
  readonly min: number;
  readonly max: number;
  readonly ticks: readonly number[];
}

/** Losses below this are off the drawing: a single shirt that loses five times its price says no more there. */
const LOWEST_MARGIN = -0.4;
/** So far down the drawing follows a job that loses; further the line leaves it, or nothing above would be told apart. */
const DEEPEST_MARGIN = -0.6;
/** The first few pieces cost so much that they would flatten all the rest. */
const HIGHEST_COST = 2;

/**
 * How high a drawing goes, so that the asked quantity lies well inside it.
 *
 * @param around the batch that matters most, pieces
 */
export function curveScale(rows: readonly CurveRow[], measure: CurveMeasure, around: number): CurveScale {
  const all = rows.flatMap(valuesOf);
  const [least, most] = [Math.min(0, ...all), Math.max(0, ...all)];
  const near = rows.filter(({ n }) => n >= around);
  const inView = (near.length > 0 ? near : rows).flatMap(valuesOf);
  switch (measure) {
    case 'margin':
      return rounded(Math.max(Math.min(LOWEST_MARGIN, ...inView), DEEPEST_MARGIN, least), most);
    case 'each':
      return rounded(least, Math.min(most, HIGHEST_COST * Math.max(...inView)));
    case 'profit':
      return rounded(least, most);
    default:
      return measure satisfies never;
  }
}

// Helpers

const valuesOf = ({ value, price, band, other }: CurveRow): readonly number[] =>
  [value, price, other, ...(band ?? [])].filter((one) => one !== null);

/** No more lines than about this many go across. */
const LINES = 7;

function rounded(least: number, most: number): CurveScale {
  const range = most - least;
  if (!(range > 0)) return { min: 0, max: 1, ticks: [0, 1] };
  const size = 10 ** Math.floor(Math.log10(range / LINES));
  const step = size * ([1, 2, 5].find((times) => times * size * LINES >= range) ?? 10);
  const [first, last] = [Math.floor(least / step + 1e-9), Math.ceil(most / step - 1e-9)];
  const ticks = Array.from({ length: last - first + 1 }, (_, index) => tidy((first + index) * step));
  return { min: tidy(first * step), max: tidy(last * step), ticks };
}

/** Takes away the noise of binary sums: three times 0.2 is 0.6. */
const tidy = (value: number) => Number(value.toPrecision(12));
