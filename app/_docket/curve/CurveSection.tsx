'use client';

import { useMemo, useRef, useState } from 'react';
import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { Answer } from '@/app/_docket/common/Answer';
import { AnswerComing } from '@/app/_docket/common/AnswerComing';
import { LastGood } from '@/app/_docket/common/LastGood';
import { NotYet } from '@/app/_docket/common/NotYet';
import { useJob } from '@/app/_docket/common/useJob';
import { NumberField } from '@/app/_fields/NumberField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { useStudy } from '@/app/_studies/useStudy';
import { curveAnswerWords, pricedWords, soldWords } from '@/app/_words/docket/curveWords';
import { piecesOfJob } from '@/app/_words/docket/pieceWords';
import { taxWords } from '@/app/_words/docket/taxWords';
import { formatterFor } from '@/app/_words/formatter';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { scaledJob } from '@/lib/drafts/scaledJob';
import { askedInput } from '@/lib/price/suggestedPrice';
import { taxTerms } from '@/lib/price/taxTerms';
import type { CurveMeasure } from '@/lib/studies/curve/curveSeries';
import { variantOf } from '@/lib/studies/curve/curveVariant';
import { numberLimits } from '@/shared/limits';
import { lineSchema } from '@/shared/schemas/job';
import { CurveComing } from './CurveComing';
import { CurveSave } from './CurveSave';
import styles from './CurveSection.module.css';
import { CurveTable } from './CurveTable';
import { SPOILAGE } from './CurveVariantChoice';
import { CurveView } from './CurveView';
import { CurveViews } from './CurveViews';
import { curveVariants } from './curveVariants';

/** Section 6: the job at every batch size, where it pays its way, and what another quantity would leave. */
export function CurveSection() {
  const { jobId, workspace, prices } = useJob();
  const { answer, madeOf, stale } = prices;
  const { job, workshop } = madeOf;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const { blanks } = workspace;
  const whole = useRef<HTMLElement>(null);
  const hold = useRef<HTMLDivElement>(null);
  const [measure, setMeasure] = useState<CurveMeasure>('margin');
  const [flatPrice, setFlatPrice] = useState<number | null>(null);
  const [laidOver, setLaidOver] = useState<string | null>(null);
  const [moved, setMoved] = useState<number | null>(null);
  const variants = useMemo(() => curveVariants(madeOf, blanks), [madeOf, blanks]);
  const chosen = variants.find(({ key }) => key === laidOver) ?? null;
  const variant = chosen?.variant ?? null;
  const wanted = answer?.prices != null ? madeOf : null;
  const suggested = answer?.prices?.suggested ?? null;
  const varied = useMemo(
    () =>
      wanted === null || variant === null || suggested === null
        ? null
        : // Made another way it would be suggested another price: it is laid over at the price of this one.
          variantOf(askedInput(wanted, suggested), variant),
    [wanted, variant, suggested],
  );
  const own = useStudy('curve', wanted, { flatPrice });
  const beside = useStudy('curve', varied, { flatPrice });
  const study = own.newest?.answer.kind === 'curve' ? own.newest.answer : null;
  // Never the curve of what was chosen before.
  const other = beside.newest !== null && beside.newest.input === varied ? beside.newest.answer : null;
  const otherStudy = other?.kind === 'curve' ? other : null;
  const failure = own.failure ?? beside.failure;
  const piece = piecesOfJob(madeOf);
  const asked = study === null ? 0 : Math.min(study.to, Math.max(1, Math.round(study.asked)));
  const looked = study === null || moved === null ? asked : Math.min(study.to, moved);
  const hasBand = laidOver === SPOILAGE && study !== null && study.spread.length > 0;
  const flatNow = own.newest?.question.flatPrice ?? null;
  const title = study === null ? '' : `${titles[measure]}, ${pricedWords(study.priced, flatNow, formatter)}`;
  const point = looked === asked ? null : (study?.points.find(({ n }) => n === looked) ?? null);
  const channel = workshop.channels.find(({ id }) => id === job.channelId);
  const terms = answer?.costSheet == null ? null : taxTerms(answer.costSheet);
  // The button that is pressed goes away: whoever came by keys stays at the curve.
  const back = () => {
    setMoved(null);
    hold.current?.focus();
  };
  return (
    <CardSection
      numeral={6}
      heading="Batch"
      answer={
        study !== null ? (
          <Answer words={curveAnswerWords(study, point, piece, context)} />
        ) : (
          wanted !== null && failure === null && <AnswerComing />
        )
      }
      id="curve"
    >
      {wanted === null || terms === null ? (
        <NotYet what="The curve" />
      ) : (
        <>
          {stale && <LastGood />}
          <AnswerMissing what="The curve could not be worked out" failure={failure} />
          {study === null ? (
            failure === null && <CurveComing />
          ) : (
            <CurveView
              {...{ study, measure, title, piece, terms, asked, looked, whole, hold, hasBand }}
              other={otherStudy}
              otherName={otherStudy === null ? null : (chosen?.name ?? null)}
              sold={soldWords(study, flatNow, context)}
              onLook={setMoved}
              onMake={() => {
                const name = `Make it ${formatter.count(looked, piece.one, piece.many)}`;
                void workspace.changeJob(jobId, name, (now) => scaledJob(now, looked));
                back();
              }}
              onBack={back}
              blockedBy={
                stale ? 'First clear the stop under “Checks”: these are the last good figures.' : undefined
              }
            />
          )}
          {study !== null && (
            <FoldRow
              place={jobId}
              folds={[
                {
                  id: 'curve-views',
                  name: 'Cost and price, or profit',
                  body: () => (
                    <CurveViews
                      {...{ study, job, measure, looked, variants, laidOver, chosen, other, otherStudy }}
                      onMeasure={setMeasure}
                      onLook={setMoved}
                      onLay={setLaidOver}
                    />
                  ),
                },
                {
                  id: 'curve-flat',
                  name: 'Try a flat price',
                  body: () => (
                    <div className={styles.flat}>
                      <NumberField
                        label="At a flat price instead"
                        unit={context.currency}
                        value={flatPrice}
                        {...numberLimits(lineSchema, ['askedPrice'])}
                        hint={`Only tried here, not kept; ${taxWords(channel?.taxMode ?? null)}.`}
                        onCommit={setFlatPrice}
                      />
                      <p role="status">{pricedWords(study.priced, flatNow, formatter)}</p>
                    </div>
                  ),
                },
                {
                  id: 'curve-save',
                  name: 'Save the chart',
                  body: () => (
                    <CurveSave
                      frame={whole}
                      study={study}
                      name={job.name}
                      captions={[
                        `${job.name}: ${title}.`,
                        ...(otherStudy === null ? [] : [`Long dashes: the job ${chosen?.name ?? ''}.`]),
                        ...(measure === 'each' ? ['Dots: price a piece.'] : []),
                        ...(hasBand ? ['Pale band: if little or much is spoiled.'] : []),
                      ]}
                    />
                  ),
                },
                {
                  id: 'curve-table',
                  name: 'As a table',
                  body: () => <CurveTable {...{ study, terms }} name={job.name} />,
                },
              ]}
            />
          )}
        </>
      )}
    </CardSection>
  );
}

// Helpers

const titles: Readonly<Record<CurveMeasure, string>> = {
  margin: 'Margin against batch size',
  each: 'Cost and price a piece against batch size',
  profit: 'Profit against batch size',
};
