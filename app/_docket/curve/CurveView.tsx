'use client';

import { useRef, useState } from 'react';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { summaryWords } from '@/app/_words/docket/curveWords';
import { formatterFor } from '@/app/_words/formatter';
import { scaledJob } from '@/lib/drafts/scaledJob';
import type { CostCurve } from '@/lib/studies/curve/curveAnswer';
import type { CurveMeasure } from '@/lib/studies/curve/curveSeries';
import { CurveDrawing } from './CurveDrawing';
import { CurveLegend } from './CurveLegend';
import { CurveLooked } from './CurveLooked';
import { CurveSave } from './CurveSave';
import styles from './CurveView.module.css';

type CurveViewProps = Readonly<{
  jobName: string;
  study: CostCurve;
  other: CostCurve | null;
  otherName: string | null;
  measure: CurveMeasure;
  /** What is drawn and at which price, in words. */
  title: string;
  /** Why the job cannot be changed from here now. */
  blockedBy: string | undefined;
}>;

/** The drawing with what it means, and beside it the figures of the batch that is looked at. */
export function CurveView(props: CurveViewProps) {
  const { jobName, study, other, otherName, measure, title, blockedBy } = props;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const { jobId, workspace } = useJob();
  const [moved, setMoved] = useState<number | null>(null);
  const whole = useRef<HTMLElement>(null);
  const hold = useRef<HTMLDivElement>(null);
  const asked = Math.min(study.to, Math.max(1, Math.round(study.asked)));
  const looked = moved === null ? asked : Math.min(study.to, moved);
  // The button that is pressed goes away: whoever came by keys stays at the curve.
  const back = () => {
    setMoved(null);
    hold.current?.focus();
  };
  const hasBand = study.spread.length > 0;
  const names = [
    `${jobName}: ${title}.`,
    ...(otherName === null ? [] : [`Long dashes: the job ${otherName}.`]),
    ...(measure === 'each'
      ? [
          `Dots: price a piece, ${study.taxInside > 0 ? 'tax inside, as its costs beside it' : 'without tax'}.`,
        ]
      : []),
    ...(hasBand ? ['Pale band: if little or much is spoiled.'] : []),
  ];
  return (
    <figure className={styles.whole} ref={whole} aria-label={title}>
      <figcaption className="visuallyHidden">{summaryWords(study, formatter)}</figcaption>
      <div className={styles.drawing}>
        <CurveDrawing
          {...{ study, other, measure, looked, hold, formatter }}
          currency={context.currency}
          locale={context.locale}
          onLook={setMoved}
        />
        <CurveLegend measure={measure} otherName={otherName} hasBand={hasBand} />
        <CurveSave frame={whole} study={study} name={jobName} captions={names} />
      </div>
      <CurveLooked
        {...{ asked, formatter, blockedBy }}
        n={looked}
        point={study.points.find(({ n }) => n === looked) ?? null}
        to={study.to}
        onLook={setMoved}
        onMake={() => {
          void workspace.changeJob(jobId, `Make it ${formatter.count(looked, 'piece')}`, (job) =>
            scaledJob(job, looked),
          );
          back();
        }}
        onBack={back}
      />
    </figure>
  );
}
