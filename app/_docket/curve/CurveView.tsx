'use client';

import type { RefObject } from 'react';
import { useTextContext } from '@/app/_fields/useTextContext';
import { summaryWords } from '@/app/_words/docket/curveWords';
import type { PieceWord } from '@/app/_words/docket/pieceWords';
import { formatterFor } from '@/app/_words/formatter';
import type { TaxTerms } from '@/lib/price/taxTerms';
import type { CostCurve } from '@/lib/studies/curve/curveAnswer';
import type { CurveMeasure } from '@/lib/studies/curve/curveSeries';
import { CurveDrawing } from './CurveDrawing';
import { CurveLegend } from './CurveLegend';
import { CurveLooked } from './CurveLooked';
import styles from './CurveView.module.css';

type CurveViewProps = Readonly<{
  study: CostCurve;
  other: CostCurve | null;
  otherName: string | null;
  hasBand: boolean;
  measure: CurveMeasure;
  /** What is drawn and at which price, in words. */
  title: string;
  sold: string;
  piece: PieceWord;
  terms: TaxTerms;
  asked: number;
  looked: number;
  onLook: (n: number) => void;
  onMake: () => void;
  onBack: () => void;
  /** The drawing, for who saves it, and the handle, for who comes back to it. */
  whole: RefObject<HTMLElement | null>;
  hold: RefObject<HTMLDivElement | null>;
  /** Why the job cannot be changed from here now. */
  blockedBy: string | undefined;
}>;

/** The drawing with what it means, and beside it the figures of the batch that is looked at. */
export function CurveView(props: CurveViewProps) {
  const { study, other, otherName, hasBand, measure, title, piece, terms, asked, looked, whole } = props;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const pointAt = (batch: number) => study.points.find(({ n }) => n === batch) ?? null;
  return (
    <figure className={styles.whole} ref={whole} aria-label={title}>
      <figcaption className="visuallyHidden">{summaryWords(study, formatter)}</figcaption>
      <div className={styles.drawing}>
        <CurveDrawing
          {...{ study, other, hasBand, measure, looked, piece, terms, formatter }}
          hold={props.hold}
          currency={context.currency}
          locale={context.locale}
          onLook={props.onLook}
        />
        <CurveLegend measure={measure} otherName={otherName} hasBand={hasBand} />
      </div>
      <CurveLooked
        {...{ asked, piece, terms }}
        sold={props.sold}
        blockedBy={props.blockedBy}
        n={looked}
        point={pointAt(looked)}
        askedPoint={pointAt(asked)}
        onMake={props.onMake}
        onBack={props.onBack}
      />
    </figure>
  );
}
