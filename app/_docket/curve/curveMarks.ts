import type { BatchMarkKind, MarkedBatch } from '@/app/_charts/BatchMark';
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
  const { points, breakEven, knee, asked, taxInside } = study;
  const mark = (
    kind: BatchMarkKind,
    n: number | undefined,
    words: (value: number) => string,
  ): readonly MarkedBatch[] => {
    const point = points.find((one) => one.n === n);
    if (point === undefined) return [];
    const value = measured(point, measure, taxTermsOf(taxInside));
    return [{ kind, n: point.n, value, words: words(value) }];
  };
  const isAsked = looked === asked;
  return [
    ...(isAsked ? [] : mark('asked', asked, () => `this job, ${asked}`)),
    ...mark('knee', knee?.n, () => `knee, ${knee?.n}`),
    ...mark('breakEven', breakEven?.first, () => `pays its way from ${breakEven?.first}`),
    ...mark('looked', looked, (value) => `${isAsked ? `this job, ${looked}` : looked}: ${text(value)}`),
  ];
}
