'use client';

import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { PickRow } from '@/app/_fields/PickRow';
import { useTextContext } from '@/app/_fields/useTextContext';
import { curveWords, variantWords } from '@/app/_words/docket/curveWords';
import { formatterFor } from '@/app/_words/formatter';
import { betterFrom } from '@/lib/studies/curve/betterFrom';
import type { CostCurve, CurveAnswer } from '@/lib/studies/curve/curveAnswer';
import type { CurveMeasure } from '@/lib/studies/curve/curveSeries';
import { numberLimits } from '@/shared/limits';
import { type Job, jobSchema } from '@/shared/schemas/job';
import styles from './CurveSection.module.css';
import { CurveVariantChoice } from './CurveVariantChoice';
import type { NamedVariant } from './curveVariants';

type CurveViewsProps = Readonly<{
  study: CostCurve;
  job: Job;
  measure: CurveMeasure;
  onMeasure: (measure: CurveMeasure) => void;
  looked: number;
  onLook: (n: number) => void;
  variants: readonly NamedVariant[];
  laidOver: string | null;
  onLay: (key: string | null) => void;
  chosen: NamedVariant | null;
  /** The job made the chosen way; null while it is worked out. */
  other: CurveAnswer | null;
  otherStudy: CostCurve | null;
}>;

const measures: readonly { readonly value: CurveMeasure; readonly label: string }[] = [
  { value: 'margin', label: 'margin' },
  { value: 'each', label: 'cost and price a piece' },
  { value: 'profit', label: 'profit' },
];

/** What is drawn, what is laid over it, the exact quantity, and what the quantities mean in sentences. */
export function CurveViews(props: CurveViewsProps) {
  const { study, job, measure, looked, variants, laidOver, chosen, other, otherStudy } = props;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const better = otherStudy === null ? null : betterFrom(study.points, otherStudy.points);
  return (
    <div className={styles.views}>
      <PickRow label="What is drawn" value={measure} choices={measures} onPick={props.onMeasure} />
      <FieldGroup>
        <CurveVariantChoice
          variants={variants}
          chosen={laidOver}
          hasSpread={study.spread.length > 0}
          onChoose={props.onLay}
        />
        <NumberField
          label="Pieces looked at"
          width="narrow"
          value={looked}
          needed
          {...numberLimits(jobSchema, ['piecesPerSession'])}
          max={study.to}
          onCommit={(value) => value !== null && props.onLook(value)}
        />
      </FieldGroup>
      <p role="status">
        {chosen !== null && other !== null && variantWords(chosen.name, other, better, study.to, context)}
      </p>
      <ul className={styles.words}>
        {curveWords(study, job, formatter).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <p className={styles.assumes}>
        One curve for the whole job in its mix of sizes, scaled in fractions; freight, drive and tests stay as
        they are. {job.piecesPerSession === null && 'One session carries any batch. '}
        Spoilage lies where it was counted, else between half and twice of what is typed.
      </p>
    </div>
  );
}
