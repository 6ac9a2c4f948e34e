'use client';

import { type KeyboardEvent, type RefObject, useRef } from 'react';
import { curveScale } from '@/app/_charts/curveScale';
import { plotMargins } from '@/app/_charts/plotMargins';
import { useLetterPx } from '@/app/_charts/useLetterPx';
import { lazy } from '@/app/_network/lazy';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import { moveFlag } from '@/app/_ruler/moveFlag';
import { useFlagDrag } from '@/app/_ruler/useFlagDrag';
import { useWidth } from '@/app/_ruler/useWidth';
import { amountWords } from '@/app/_words/amountWords';
import { pointWords } from '@/app/_words/docket/curveWords';
import type { Formatter } from '@/app/_words/formatter';
import type { CostCurve } from '@/lib/studies/curve/curveAnswer';
import { type CurveMeasure, curveSeries } from '@/lib/studies/curve/curveSeries';
import styles from './CurveDrawing.module.css';
import { curveMarks } from './curveMarks';

const lazyCurveChart = lazy(() => import('@/app/_charts/CurveChart').then(({ CurveChart }) => CurveChart));

type CurveDrawingProps = Readonly<{
  study: CostCurve;
  /** The job made another way; null where nothing is laid over. */
  other: CostCurve | null;
  measure: CurveMeasure;
  /** The batch that is looked at; what is dragged. */
  looked: number;
  onLook: (n: number) => void;
  hold: RefObject<HTMLDivElement | null>;
  formatter: Formatter;
  currency: string;
  locale: string;
}>;

/** Heights as the frame has them before the drawing comes. */
const HIGH = 20;
const HIGH_ON_PHONE = 17;
/** Narrower than this many letters the drawing is a phone's. */
const PHONE_LETTERS = 32;

/** The curve itself, with the batch on it that can be dragged or moved by keys. */
export function CurveDrawing(props: CurveDrawingProps) {
  const { study, other, measure, looked, onLook, hold, formatter, currency, locale } = props;
  const chart = useLazy(lazyCurveChart);
  const frame = useRef<HTMLDivElement>(null);
  const widthPx = useWidth(frame, 640);
  const letterPx = useLetterPx();
  const heightPx = letterPx * (widthPx < letterPx * PHONE_LETTERS ? HIGH_ON_PHONE : HIGH);
  const bounds = { min: 1, max: study.to };
  const look = (n: number) => onLook(Math.min(study.to, Math.max(1, n)));
  const drag = useFlagDrag({ value: looked, bounds, step: 1, onMove: look });
  const keyDown = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const next = moveFlag(event.key, event.shiftKey, { value: looked, step: 1, bounds });
    if (next === null) return;
    event.preventDefault();
    look(next);
  };
  const rows = curveSeries(study, other, measure);
  const scale = curveScale(rows, measure, Math.min(study.asked, study.to));
  const text = (value: number) =>
    measure === 'margin' ? formatter.share(value) : amountWords(value, currency, locale);
  const tick = (value: number) =>
    measure === 'margin' ? formatter.share(value) : formatter.number(value, 2);
  const margins = plotMargins(letterPx, scale.ticks.map(tick));
  const point = study.points.find(({ n }) => n === looked);
  return (
    <div className={styles.frame} ref={frame}>
      <div
        className={styles.hold}
        // Set on the page after the first figures came, never in what the server renders.
        style={{
          insetInlineStart: margins.left,
          insetInlineEnd: margins.right,
          insetBlockEnd: margins.bottom,
        }}
        ref={hold}
        role="slider"
        tabIndex={0}
        aria-label="Pieces looked at, on the curve"
        aria-valuemin={1}
        aria-valuemax={study.to}
        aria-valuenow={looked}
        aria-valuetext={point === undefined ? `${looked}, no number` : pointWords(point, formatter)}
        onKeyDown={keyDown}
        {...drag.handlers}
      />
      {chart.kind === 'missing' && (
        <PartMissing what="The drawing" meanwhile="Its figures stand below." missing={chart} />
      )}
      <div aria-hidden="true" className={styles.chart}>
        {chart.kind === 'here' && (
          <chart.value
            {...{ rows, scale, margins, widthPx, heightPx, letterPx, tick }}
            marks={curveMarks(study, measure, looked, text)}
            to={study.to}
            falls={measure === 'each'}
          />
        )}
      </div>
    </div>
  );
}
