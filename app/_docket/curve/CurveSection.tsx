'use client';

import { useMemo, useRef, useState } from 'react';
import { useNear } from '@/app/_charts/useNear';
import { CardSection } from '@/app/_controls/CardSection';
import { LastGood } from '@/app/_docket/common/LastGood';
import { NotYet } from '@/app/_docket/common/NotYet';
import { useJob } from '@/app/_docket/common/useJob';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { PickRow } from '@/app/_fields/PickRow';
import { useTextContext } from '@/app/_fields/useTextContext';
import { useStudy } from '@/app/_studies/useStudy';
import { curveWords, pricedWords, variantWords } from '@/app/_words/docket/curveWords';
import { taxWords } from '@/app/_words/docket/taxWords';
import { formatterFor } from '@/app/_words/formatter';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { type BetterFrom, betterFrom } from '@/lib/studies/curve/betterFrom';
import type { CurveMeasure } from '@/lib/studies/curve/curveSeries';
import { variantOf } from '@/lib/studies/curve/curveVariant';
import { numberLimits } from '@/shared/limits';
import { lineSchema } from '@/shared/schemas/job';
import styles from './CurveSection.module.css';
import { CurveTable } from './CurveTable';
import { CurveVariantChoice } from './CurveVariantChoice';
import { CurveView } from './CurveView';
import { curveVariants } from './curveVariants';

const measures: readonly { readonly value: CurveMeasure; readonly label: string }[] = [
  { value: 'margin', label: 'margin' },
  { value: 'each', label: 'cost and price a piece' },
  { value: 'profit', label: 'profit' },
];

/** Section 6: the job at every batch size, with its steps, and what another way of making it would change. */
export function CurveSection() {
  const { workspace, prices } = useJob();
  const { answer, madeOf, stale } = prices;
  const { job, workshop } = madeOf;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const { blanks } = workspace;
  const body = useRef<HTMLDivElement>(null);
  const isNear = useNear(body);
  const [picked, setPicked] = useState<CurveMeasure>('margin');
  const [flatPrice, setFlatPrice] = useState<number | null>(null);
  const [laidOver, setLaidOver] = useState<string | null>(null);
  const variants = useMemo(() => curveVariants(madeOf, blanks), [madeOf, blanks]);
  const chosen = variants.find(({ key }) => key === laidOver) ?? null;
  const variant = chosen?.variant ?? null;
  const isPriced = answer?.prices != null;
  const wanted = isPriced && isNear ? madeOf : null;
  const varied = useMemo(
    () => (wanted !== null && variant !== null ? variantOf(wanted, variant) : null),
    [wanted, variant],
  );
  const own = useStudy('curve', wanted, { flatPrice });
  const beside = useStudy('curve', varied, { flatPrice });
  const study = own.newest?.answer.kind === 'curve' ? own.newest.answer : null;
  // Never the curve of what was chosen before.
  const other = beside.newest !== null && beside.newest.input === varied ? beside.newest.answer : null;
  const otherStudy = other?.kind === 'curve' ? other : null;
  // At its target every batch leaves the same margin: there is nothing to see in it.
  const isTarget = study?.priced === 'target';
  const measure = isTarget && picked === 'margin' ? 'each' : picked;
  const sold =
    study === null ? null : pricedWords(study.priced, own.newest?.question.flatPrice ?? null, formatter);
  const channel = workshop.channels.find(({ id }) => id === job.channelId);
  const failure = own.failure ?? beside.failure;
  const better: BetterFrom | null =
    study === null || otherStudy === null ? null : betterFrom(study.points, otherStudy.points);
  return (
    <CardSection numeral={6} heading="Margin against batch size" answer={sold} id="curve">
      <div ref={body} className={styles.body}>
        {!isPriced ? (
          <NotYet what="The curve" />
        ) : (
          <>
            {stale && <LastGood />}
            <AnswerMissing what="The curve could not be worked out" failure={failure} />
            <PickRow
              label="What is drawn"
              value={measure}
              choices={isTarget ? measures.filter(({ value }) => value !== 'margin') : measures}
              onPick={setPicked}
            />
            <div className={styles.room}>
              {study !== null && (
                <CurveView
                  {...{ study, measure }}
                  jobName={job.name}
                  other={otherStudy}
                  otherName={otherStudy === null ? null : (chosen?.name ?? null)}
                  title={`${titles[measure]}, ${sold}`}
                  blockedBy={
                    stale
                      ? 'First clear the stop under “Checks”: these are the last good figures.'
                      : undefined
                  }
                />
              )}
            </div>
            <FieldGroup>
              <NumberField
                label="At a flat price instead"
                unit={context.currency}
                value={flatPrice}
                {...numberLimits(lineSchema, ['askedPrice'])}
                hint={`Only tried here, not kept; ${taxWords(channel?.taxMode ?? null)}.`}
                onCommit={setFlatPrice}
              />
              <CurveVariantChoice variants={variants} chosen={chosen} onChoose={setLaidOver} />
            </FieldGroup>
            {study !== null && (
              <>
                <p className={styles.other} role="status">
                  {chosen !== null &&
                    other !== null &&
                    variantWords(chosen.name, other, better, study.to, context)}
                </p>
                <ul className={styles.words}>
                  {curveWords(study, job, formatter).map((sentence) => (
                    <li key={sentence}>{sentence}</li>
                  ))}
                </ul>
                <p className={styles.assumes}>
                  One curve for the whole job in its mix of sizes, scaled in fractions; freight, drive and
                  tests stay as they are. {job.piecesPerSession === null && 'One session carries any batch. '}
                  Spoilage lies where it was counted, else between half and twice of what is typed.
                </p>
                <CurveTable study={study} name={job.name} />
              </>
            )}
          </>
        )}
      </div>
    </CardSection>
  );
}

// Helpers

const titles: Readonly<Record<CurveMeasure, string>> = {
  margin: 'Margin against batch size',
  each: 'Cost and price a piece against batch size',
  profit: 'Profit against batch size',
};
