'use client';

import { type KeyboardEvent, type RefObject, useMemo, useRef } from 'react';
import { batchAtRatio } from '@/app/_charts/batchAxis';
import { curveScale } from '@/app/_charts/curveScale';
import { plotMargins } from '@/app/_charts/plotMargins';
import { useLetterPx } from '@/app/_charts/useLetterPx';
import { useNear } from '@/app/_charts/useNear';
import { lazy } from '@/app/_network/lazy';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import { moveFlag } from '@/app/_ruler/moveFlag';
import { useFlagDrag } from '@/app/_ruler/useFlagDrag';
import { useWidth } from '@/app/_ruler/useWidth';
import { amountWords } from '@/app/_words/amountWords';
import { curveTitles, pointWords } from '@/app/_words/docket/curveWords';
import type { PieceWord } from '@/app/_words/docket/pieceWords';
import type { Formatter } from '@/app/_words/formatter';
import type { TaxTerms } from '@/lib/price/taxTerms';
import type { CostCurve } from '@/lib/studies/curve/curveAnswer';
import { type CurveMeasure, curveSeries } from '@/lib/studies/curve/curveSeries';
import styles from './CurveDrawing.module.css';
import { curveMarks } from './curveMarks';

const lazyBatchChart = lazy(() => import('@/app/_charts/BatchChart').then(({ BatchChart }) => BatchChart));

type CurveDrawingProps = Readonly<{
  study: CostCurve;
  /** The job made another way; null where nothing is laid over. */
  other: CostCurve | null;
  /** Whether the band between little and much spoiled is drawn. */
  hasBand: boolean;
  measure: CurveMeasure;
  /** The batch that is looked at; what is dragged. */
  looked: number;
  onLook: (n: number) => void;
  hold: RefObject<HTMLDivElement | null>;
  piece: PieceWord;
  terms: TaxTerms;
  formatter: Formatter;
  currency: string;
  locale: string;
}>;

/** Heights as the frame has them before the drawing comes. */
const HIGH = 18;
const HIGH_ON_PHONE = 16.5;
/** Narrower than this many letters the drawing is a phone's. */
const PHONE_LETTERS = 32;
/** Fine enough that no batch is passed over on the doubling scale. */
const DRAG_STEP = 1e-4;

/** The curve itself, with the batch on it that can be dragged or moved by keys. */
export function CurveDrawing(props: CurveDrawingProps) {
  const { study, other, hasBand, measure, looked, onLook, hold, piece, terms, formatter } = props;
  const { currency, locale } = props;
  const frame = useRef<HTMLDivElement>(null);
  // Much code that holds a phone up for a third of a second, and nobody sees before scrolling there.
  const chart = useLazy(lazyBatchChart, useNear(frame));
  const widthPx = useWidth(frame, 640);
  const letterPx = useLetterPx();
  const heightPx = letterPx * (widthPx < letterPx * PHONE_LETTERS ? HIGH_ON_PHONE : HIGH);
  const { to } = study;
  const look = (n: number) => onLook(Math.min(to, Math.max(1, n)));
  const drag = useFlagDrag({
    value: Math.log(looked) / Math.log(to),
    bounds: { min: 0, max: 1 },
    step: DRAG_STEP,
    onMove: (ratio) => look(batchAtRatio(ratio, to)),
  });
  const keyDown = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const next = moveFlag(event.key, event.shiftKey, { value: looked, step: 1, bounds: { min: 1, max: to } });
    if (next === null) return;
    event.preventDefault();
    look(next);
  };
  // The same rows while the batch is dragged, so that the lines need not be made again.
  const rows = useMemo(() => {
    const series = curveSeries(study, other, measure);
    return hasBand ? series : series.map((row) => ({ ...row, band: null }));
  }, [study, other, measure, hasBand]);
  const scale = curveScale(rows, measure, Math.min(study.asked, to));
  const text = (value: number) =>
    measure === 'margin' ? formatter.share(value) : amountWords(value, currency, locale);
  // The unit stands once, at the top.
  const tick = (value: number) =>
    measure !== 'margin'
      ? formatter.number(value, 2)
      : value === scale.max
        ? formatter.share(value)
        : formatter.number(value * 100, 0);
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
        aria-valuemax={to}
        aria-valuenow={looked}
        aria-valuetext={
          point === undefined ? `${looked}, no number` : pointWords(point, piece, terms, formatter)
        }
        onKeyDown={keyDown}
        {...drag.handlers}
      />
      {chart.kind === 'missing' && (
        <PartMissing what="The drawing" meanwhile="Its figures stand beside it." missing={chart} />
      )}
      <div aria-hidden="true" className={styles.chart}>
        {chart.kind === 'here' && (
          <chart.value
            {...{ rows, scale, margins, to, widthPx, heightPx, letterPx, tick }}
            {...curveTitles(measure, piece, currency)}
            marks={curveMarks(study, measure, looked, text)}
            fullSheets={measure === 'margin' ? study.steps : []}
            falls={measure === 'each'}
          />
        )}
      </div>
    </div>
  );
}
