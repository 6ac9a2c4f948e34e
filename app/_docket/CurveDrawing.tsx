'use client';

import { type KeyboardEvent, lazy, Suspense, useRef, useState } from 'react';
import { scaledJob } from '@/lib/jobs/scaledJob';
import type { CurveStudy } from '@/lib/price/curve/curveAnswer';
import type { CurveMark } from '../_charts/CurveChart';
import { curvePlot } from '../_charts/curvePlot';
import { useMaker } from '../_documents/useMaker';
import { moveFlag } from '../_figures/moveFlag';
import { useFlagDrag } from '../_figures/useFlagDrag';
import { useWidth } from '../_figures/useWidth';
import { Button } from '../_shell/Button';
import type { Speaker } from '../_text/speaker';
import styles from './CurveDrawing.module.css';
import { CurveSave } from './CurveSave';
import { type CurveFigure, curveView } from './curveView';
import { pointWords } from './curveWords';
import type { DocketPart } from './docketPart';

const CurveChart = lazy(() =>
  import('../_charts/CurveChart').then(
    (loaded) => ({ default: loaded.CurveChart }),
    () => ({ default: NotFetched }),
  ),
);

type CurveDrawingProps = Readonly<{
  part: DocketPart;
  figure: CurveFigure;
  speak: Speaker;
  study: CurveStudy | null;
  variant: CurveStudy | null;
}>;

/** Below this the drawing is a phone's. */
const PHONE_PX = 560;

/** The drawing, the quantity that is looked at on it, and what that comes to. */
export function CurveDrawing({ part, figure, speak, study, variant }: CurveDrawingProps) {
  const { changeJob } = useMaker();
  const frame = useRef<HTMLDivElement>(null);
  const widthPx = useWidth(frame, 720);
  const heightPx = widthPx < PHONE_PX ? curvePlot.phoneHeightPx : curvePlot.heightPx;
  const [moved, setMoved] = useState<number | null>(null);
  const last = study?.points.at(-1)?.n ?? 1;
  const asked = Math.min(last, Math.max(1, Math.round(study?.asked ?? 1)));
  const looked = moved === null ? asked : Math.min(last, moved);
  const bounds = { min: 1, max: last };
  const onMove = (value: number) => setMoved(Math.min(last, Math.max(1, Math.round(value))));
  const drag = useFlagDrag({ value: looked, bounds, step: 1, onMove });
  const point = study?.points.find(({ n }) => n === looked);
  const keyDown = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const next = moveFlag(event.key, event.shiftKey, { value: looked, step: 1, bounds });
    if (next === null) return;
    event.preventDefault();
    onMove(next);
  };
  const words = point === undefined ? 'not worked out' : pointWords(point, speak);
  const view = study === null ? null : curveView(study, figure, variant);
  return (
    <div className={styles.whole}>
      <div
        className={styles.frame}
        ref={frame}
        data-height={heightPx === curvePlot.heightPx ? 'wide' : 'phone'}
      >
        {study !== null && view !== null && study.points.length > 0 && (
          <>
            <div aria-hidden="true" className={styles.chart}>
              <Suspense fallback={null}>
                <CurveChart
                  data={view.data}
                  marks={marksOf(study, looked)}
                  bounds={view.bounds}
                  to={last}
                  widthPx={widthPx}
                  heightPx={heightPx}
                  tick={figureText}
                />
              </Suspense>
            </div>
            <div
              className={styles.hold}
              role="slider"
              tabIndex={0}
              aria-label="Pieces looked at on the curve"
              aria-valuemin={1}
              aria-valuemax={last}
              aria-valuenow={looked}
              aria-valuetext={words}
              onKeyDown={keyDown}
              {...drag.handlers}
            />
          </>
        )}
      </div>
      <div className={styles.beside}>
        <p className={styles.looked}>{point === undefined ? ' ' : `${words}.`}</p>
        <div className={styles.buttons}>
          {looked !== asked && !part.stale && (
            <>
              <Button
                onPress={() => {
                  changeJob(part.jobId, `Make it ${looked}`, (job) => scaledJob(job, looked));
                  setMoved(null);
                }}
              >
                Make it {speak.count(looked, 'piece')}
              </Button>
              <Button kind="quiet" onPress={() => setMoved(null)}>
                Back to {speak.number(asked, 0)}
              </Button>
            </>
          )}
          {study !== null && <CurveSave frame={frame} study={study} name={part.madeOf.job.name} />}
        </div>
      </div>
    </div>
  );

  function figureText(value: number): string {
    return figure === 'margin' ? speak.share(value) : speak.number(value, 2);
  }

  function marksOf(of: CurveStudy, at: number): readonly CurveMark[] {
    const valueAt = (n: number) => {
      const found = of.points.find((one) => one.n === n);
      return found === undefined || view === null ? null : view.of(found);
    };
    const mark = (kind: CurveMark['kind'], n: number | undefined, label?: (value: number) => string) => {
      const value = n === undefined ? null : valueAt(n);
      return n === undefined || value === null ? [] : [{ kind, n, value, label: label?.(value) }];
    };
    return [
      ...of.spots.flatMap(({ n }) => mark('spot', n)),
      ...mark('breakEven', of.breakEven?.first, () => `pays its way from ${of.breakEven?.first}`),
      ...mark('knee', of.knee?.n, () => 'the knee'),
      ...mark(
        'asked',
        at,
        (value) => `${speak.number(at, 0)}${at === asked ? ' asked' : ''}: ${figureText(value)}`,
      ),
    ];
  }
}

function NotFetched() {
  return (
    <p>The drawing could not be fetched. Its figures stand below; reload the page once there is a network.</p>
  );
}
