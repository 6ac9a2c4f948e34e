import type { CurveMarkKind, MarkedBatch } from '@/app/_charts/CurveMark';
import { taxTermsOf } from '@/lib/price/taxTerms';
import type { CostCurve } from '@/lib/studies/curve/curveAnswer';
import { type CurveMeasure, measured } from '@/lib/studies/curve/curveSeries';

/** @returns what is marked on the drawing, with its words; the batch that is looked at last, on top of all. */
export function curveMarks(
  study: CostCurve,
  measure: CurveMeasure,
  looked: number,
  text: (value: number) => string,
): readonly MarkedBatch[] {
  const { points, spots, breakEven, knee, asked, to, taxInside } = study;
  const mark = (
    kind: CurveMarkKind,
    n: number | undefined,
    words?: (value: number) => string,
  ): readonly MarkedBatch[] => {
    const point = points.find((one) => one.n === n);
    if (point === undefined) return [];
    const value = measured(point, measure, taxTermsOf(taxInside));
    return [{ kind, n: point.n, value, words: words?.(value) }];
  };
  const drawn = spots.map(({ n }) => n).filter((n) => n <= to);
  return [
    ...drawn.flatMap((n, index) =>
      mark('spot', n, index === 0 ? () => `just full: ${drawn.join(', ')}` : undefined),
    ),
    ...mark('knee', knee?.n, () => `knee ${knee?.n}`),
    ...mark('breakEven', breakEven?.first, () => `pays its way from ${breakEven?.first}`),
    ...(looked === asked ? [] : mark('asked', asked)),
    ...mark('looked', looked, (value) => `${looked}${looked === asked ? ' asked' : ''}: ${text(value)}`),
  ];
}
