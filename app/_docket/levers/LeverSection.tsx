'use client';

import { useState } from 'react';
import { CardSection } from '@/app/_controls/CardSection';
import { type FoldOfRow, FoldRow } from '@/app/_controls/FoldRow';
import { Answer } from '@/app/_docket/common/Answer';
import { AnswerComing } from '@/app/_docket/common/AnswerComing';
import { changesBack } from '@/app/_docket/common/changesBack';
import { LastGood } from '@/app/_docket/common/LastGood';
import { NotYet } from '@/app/_docket/common/NotYet';
import { useJob } from '@/app/_docket/common/useJob';
import { PickRow } from '@/app/_fields/PickRow';
import { useTextContext } from '@/app/_fields/useTextContext';
import { useStudy } from '@/app/_studies/useStudy';
import {
  gainOf,
  type LeverFold,
  leverAnswer,
  leverFoldName,
  sortedLevers,
} from '@/app/_words/docket/leverAnswerWords';
import { formatterFor } from '@/app/_words/formatter';
import { leverWords } from '@/app/_words/leverWords';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { taxTermsOf } from '@/lib/price/taxTerms';
import type { Lever } from '@/lib/studies/levers/lever';
import type { LeverAim } from '@/lib/studies/levers/levers';
import { formatMinor } from '@/shared/money';
import { GoalSeek } from './GoalSeek';
import { LeverList } from './LeverList';
import styles from './LeverSection.module.css';
import { type Tried, TriedList } from './TriedList';

const aims: readonly { readonly value: LeverAim; readonly label: string }[] = [
  { value: 'payPerHour', label: 'pay an hour' },
  { value: 'margin', label: 'margin' },
];

/** Section 7: the small changes that would leave more of a job, each to be tried and taken back; folded, the others and what is sought. */
export function LeverSection() {
  const { jobId, input, workspace, prices } = useJob();
  const { answer, madeOf, stale } = prices;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const { applyFix } = workspace;
  const [aim, setAim] = useState<LeverAim>('payPerHour');
  const [tried, setTried] = useState<readonly Tried[]>([]);
  const isPriced = answer?.prices != null;
  const { newest, failure } = useStudy('levers', isPriced ? madeOf : null, { aim });
  const isCurrent = newest?.input === madeOf && newest.question.aim === aim && !stale;
  const blockedBy = isCurrent ? undefined : 'The job has changed; its levers are being tried out anew.';
  const onTake = (lever: Lever) => {
    const says = leverWords(lever, context);
    setTried((before) => [
      ...before,
      { says, changes: lever.changes, back: changesBack(lever.changes, input) },
    ]);
    applyFix(jobId, `Tried: ${says}`, lever.changes);
  };
  const onLeave = (one: Tried) => setTried((before) => before.filter((other) => other !== one));
  const found = newest?.answer ?? null;
  const terms = taxTermsOf(found?.taxInside ?? 0);
  const sorted = sortedLevers(found?.levers ?? [], newest?.question.aim ?? aim);
  const offered = answer?.prices?.offer.lines ?? [];
  const suggested = answer?.prices?.suggested[0];
  const asksLess =
    offered.length === 1 && suggested !== undefined && suggested.each > (offered[0]?.each ?? 0);
  const leversJob = {
    profit: found?.before.profit ?? 0,
    ask: asksLess
      ? formatMinor(suggested.each, answer?.prices?.currency ?? context.currency, context.locale)
      : null,
  };
  const shown = { aim, blockedBy, onTake, most: Math.max(...sorted.open.map((one) => gainOf(one, aim))) };
  const more = (id: LeverFold, levers: readonly Lever[]): readonly FoldOfRow[] =>
    levers.length === 0
      ? []
      : [
          {
            id,
            name: leverFoldName(id, levers.length),
            body: () => (
              <LeverList
                {...shown}
                levers={levers}
                name={leverFoldName(id, levers.length)}
                full
                most={Math.max(...levers.map((one) => gainOf(one, aim)))}
              />
            ),
          },
        ];
  return (
    <CardSection
      numeral={7}
      heading="What would raise it"
      answer={
        found !== null ? (
          <Answer words={leverAnswer(sorted.open, newest?.question.aim ?? aim, context, leversJob)} />
        ) : (
          isPriced && failure === null && <AnswerComing />
        )
      }
      id="levers"
    >
      {!isPriced ? (
        <NotYet what="The levers" />
      ) : (
        <>
          {stale && <LastGood />}
          <AnswerMissing what="The levers could not be tried out" failure={failure} />
          <TriedList
            tried={tried}
            onLeave={onLeave}
            onTakeBack={(one) => {
              applyFix(jobId, `Taken back: ${one.says}`, one.back);
              onLeave(one);
            }}
          />
          {found !== null && found.ceilingEach !== null && (
            <p className={styles.words}>
              The target, {formatter.money(terms.written(found.before.targetEach))} a piece
              {terms.inside > 0 ? ' with its tax' : ' without tax'}, lies above the most this crowd pays,{' '}
              {formatter.money(terms.written(found.ceilingEach))}. A discount is no answer to that.{' '}
              {closing(found.levers, found.ceilingEach)}
            </p>
          )}
          <div className={found === null ? styles.room : undefined} aria-busy={!isCurrent}>
            {found === null
              ? failure === null && <p>Each change is being tried on the whole job.</p>
              : sorted.open.length > 0 && (
                  <LeverList {...shown} levers={sorted.open} name="Levers, biggest first" />
                )}
          </div>
          <FoldRow
            place={jobId}
            folds={[
              ...more('levers-changing', sorted.changing),
              ...more('levers-smaller', sorted.smaller),
              {
                id: 'levers-ask',
                name: 'Ask the sums',
                body: () => (
                  <div className={styles.ask}>
                    <PickRow label="What is to grow" value={aim} choices={aims} onPick={setAim} />
                    <GoalSeek />
                  </div>
                ),
              },
            ]}
          />
        </>
      )}
    </CardSection>
  );

  function closing(levers: readonly Lever[], ceilingEach: number): string {
    const closes = levers.find(({ after }) => after.targetEach <= ceilingEach + 1e-9);
    return closes === undefined
      ? 'None of these alone closes the gap; a larger batch or another way of selling may, or this is not to be made.'
      : `This alone closes the gap: ${leverWords(closes, context)}`;
  }
}
