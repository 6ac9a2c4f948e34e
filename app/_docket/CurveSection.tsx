'use client';

import { useMemo, useState } from 'react';
import { type CurveVariant, variantOf } from '@/lib/jobs/curveVariant';
import { betterFrom } from '@/lib/price/curve/betterFrom';
import { NumberField } from '../_fields/NumberField';
import { PickRow } from '../_fields/PickRow';
import { useTextContext } from '../_fields/useTextContext';
import { DocketSection } from '../_figures/DocketSection';
import { useStudy } from '../_studies/useStudy';
import { findingText } from '../_text/findingText';
import { speakerOf } from '../_text/speaker';
import { CurveDrawing } from './CurveDrawing';
import styles from './CurveSection.module.css';
import { CurveTable } from './CurveTable';
import { CurveVariantChoice } from './CurveVariantChoice';
import type { CurveFigure } from './curveView';
import { curveWords } from './curveWords';
import type { DocketPart } from './docketPart';
import { LastGood } from './LastGood';
import { NotYet } from './NotYet';
import { taxWords } from './taxWords';

const figures: readonly { readonly value: CurveFigure; readonly label: string }[] = [
  { value: 'margin', label: 'margin' },
  { value: 'each', label: 'cost and price a piece' },
  { value: 'profit', label: 'profit' },
];

/** Section 6: the job at every batch size, with its steps, and what another way of making it would change. */
export function CurveSection(part: DocketPart) {
  const { answer, madeOf, stale } = part;
  const context = useTextContext();
  const speak = speakerOf(context);
  const [picked, setPicked] = useState<CurveFigure>('margin');
  const [flatPrice, setFlatPrice] = useState<number | null>(null);
  const [variant, setVariant] = useState<CurveVariant | null>(null);
  const isPriced = answer?.prices != null;
  const question = { flatPrice };
  const { newest, failure } = useStudy('curve', isPriced ? madeOf : null, question);
  const varied = useMemo(
    () => (isPriced && variant !== null ? variantOf(madeOf, variant) : null),
    [isPriced, variant, madeOf],
  );
  const beside = useStudy('curve', varied, question);
  const study = newest?.answer.kind === 'curve' ? newest.answer : null;
  const other = variant === null ? null : (beside.newest?.answer ?? null);
  const otherCurve = other?.kind === 'curve' ? other : null;
  // At its target every batch leaves the same margin: there is nothing to see in it.
  const figure = study?.priced === 'target' && picked === 'margin' ? 'each' : picked;
  const channel = madeOf.workshop.channels.find(({ id }) => id === madeOf.job.channelId);
  return (
    <DocketSection
      numeral={6}
      heading="Margin against batch size"
      line={study === null ? undefined : soldAt(study.priced)}
      id="curve"
    >
      {!isPriced ? (
        <NotYet what="The curve" />
      ) : (
        <>
          {stale && <LastGood />}
          {failure !== null && (
            <p role="alert">
              The curve could not be worked out: {failure}. The prices are not touched by it.
            </p>
          )}
          <div className={styles.choices}>
            <PickRow label="What is drawn" value={figure} choices={figures} onPick={setPicked} />
            <NumberField
              label="At one flat price instead"
              width="narrow"
              unit={context.currency}
              value={flatPrice}
              above={0}
              max={1e9}
              hint={`A try, not kept; ${taxWords(channel?.taxMode ?? null)}.`}
              onCommit={setFlatPrice}
            />
          </div>
          <CurveDrawing {...{ part, figure, speak }} study={study} variant={otherCurve} />
          <CurveVariantChoice input={madeOf} chosen={variant} onChoose={setVariant} />
          {other?.kind === 'stopped' && (
            <p>
              That way it cannot be made:{' '}
              {other.why === null ? 'its sums give no number.' : findingText(other.why, context).sentence}
            </p>
          )}
          {study !== null && otherCurve !== null && <p>{better(study, otherCurve)}</p>}
          {study !== null && (
            <>
              <ul className={styles.words}>
                {curveWords(study, madeOf.job, speak).map((sentence) => (
                  <li key={sentence}>{sentence}</li>
                ))}
              </ul>
              <p className={styles.assumes}>
                One curve for the whole job in its mix of sizes, scaled in fractions; freight, drive and tests
                stay as they are. {madeOf.job.piecesPerSession === null && 'One session carries any batch.'}{' '}
                The pale band is how far spoilage may lie off: where it was counted by its count, else half to
                twice of what is typed.
              </p>
              <CurveTable study={study} name={madeOf.job.name} />
            </>
          )}
        </>
      )}
    </DocketSection>
  );

  function soldAt(priced: 'asked' | 'flat' | 'target'): string {
    switch (priced) {
      case 'asked':
        return 'at the asked prices';
      case 'flat':
        return `at ${speak.money(flatPrice ?? 0)} a piece`;
      case 'target':
        return 'no price is decided: each batch at its target';
      default:
        return priced satisfies never;
    }
  }

  function better(one: Parameters<typeof curveWords>[0], two: Parameters<typeof curveWords>[0]): string {
    const from = betterFrom(one.points, two.points);
    if (from === null) return 'That way a piece costs no less at any batch drawn.';
    return from === 1
      ? 'That way a piece costs less at every batch.'
      : `That way a piece costs less from ${speak.count(from, 'piece')} on.`;
  }
}
