'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { CardSection } from '@/app/_controls/CardSection';
import { changesBack } from '@/app/_docket/common/changesBack';
import { changesStand } from '@/app/_docket/common/changesStand';
import { LastGood } from '@/app/_docket/common/LastGood';
import { NotYet } from '@/app/_docket/common/NotYet';
import { useJob } from '@/app/_docket/common/useJob';
import { PickRow } from '@/app/_fields/PickRow';
import { useTextContext } from '@/app/_fields/useTextContext';
import { useStudy } from '@/app/_studies/useStudy';
import { type Formatter, formatterFor } from '@/app/_words/formatter';
import { leverWords } from '@/app/_words/leverWords';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { taxTermsOf } from '@/lib/price/taxTerms';
import type { Lever } from '@/lib/studies/levers/lever';
import type { LeverAim } from '@/lib/studies/levers/levers';
import type { Change } from '@/shared/finding';
import { GoalSeek } from './GoalSeek';
import styles from './LeverSection.module.css';

/** A change that was tried, with the way back. */
interface Tried {
  readonly says: string;
  readonly changes: readonly Change[];
  readonly back: readonly Change[];
}

const aims: readonly { readonly value: LeverAim; readonly label: string }[] = [
  { value: 'margin', label: 'margin' },
  { value: 'payPerHour', label: 'pay an hour' },
];

/** Section 7: the single changes that would leave more of a job, each to be tried and taken back, and what is sought. */
export function LeverSection() {
  const { jobId, input, workspace, prices } = useJob();
  const { answer, madeOf, stale } = prices;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const { applyFix } = workspace;
  const [aim, setAim] = useState<LeverAim>('margin');
  const [tried, setTried] = useState<readonly Tried[]>([]);
  const isPriced = answer?.prices != null;
  const { newest, failure } = useStudy('levers', isPriced ? madeOf : null, { aim });
  const isCurrent = newest?.input === madeOf && newest.question.aim === aim && !stale;
  const waiting = isCurrent ? undefined : 'The job has changed; its levers are being tried out anew.';
  const take = (lever: Lever) => {
    const says = leverWords(lever, context);
    setTried((before) => [
      ...before,
      { says, changes: lever.changes, back: changesBack(lever.changes, input) },
    ]);
    applyFix(jobId, `Tried: ${says}`, lever.changes);
  };
  const takeBack = (one: Tried) => {
    applyFix(jobId, `Taken back: ${one.says}`, one.back);
    setTried((before) => before.filter((other) => other !== one));
  };
  const found = newest?.answer ?? null;
  const terms = taxTermsOf(found?.taxInside ?? 0);
  return (
    <CardSection
      numeral={7}
      heading="What would raise it"
      answer="one change at a time, each tried on the whole job"
      id="levers"
    >
      {!isPriced ? (
        <NotYet what="The levers" />
      ) : (
        <>
          {stale && <LastGood />}
          <AnswerMissing what="The levers could not be tried out" failure={failure} />
          {tried.length > 0 && (
            <ul className={styles.list} aria-label="Tried">
              {tried.map((one) => (
                <li className={styles.lever} key={one.says}>
                  <p>
                    <strong>Tried.</strong> {one.says}
                    {!changesStand(one.changes, input) && (
                      <span className={styles.gain}>
                        You have changed it since, so there is nothing to take back.
                      </span>
                    )}
                  </p>
                  {changesStand(one.changes, input) ? (
                    <Button onPress={() => takeBack(one)}>Take it back</Button>
                  ) : (
                    <Button
                      kind="quiet"
                      onPress={() => setTried((before) => before.filter((other) => other !== one))}
                    >
                      Leave it
                    </Button>
                  )}
                </li>
              ))}
            </ul>
          )}
          <PickRow label="What is to grow" value={aim} choices={aims} onPick={setAim} />
          {found !== null && found.ceilingEach !== null && (
            <p className={styles.words}>
              The target, {formatter.money(terms.written(found.before.targetEach))} a piece
              {terms.inside > 0 ? ' with its tax' : ' without tax'}, lies above the most this crowd pays,{' '}
              {formatter.money(terms.written(found.ceilingEach))}. A discount is no answer to that.{' '}
              {closing(found.levers, found.ceilingEach)}
            </p>
          )}
          <div className={styles.room} aria-busy={!isCurrent}>
            {found === null ? (
              failure === null && <p className={styles.words}>Each change is being tried on the whole job.</p>
            ) : found.levers.length === 0 ? (
              <p className={styles.words}>No single change that is known here leaves more of this job.</p>
            ) : (
              <ul className={styles.list} aria-label="Levers, biggest first">
                {found.levers.map((lever) => {
                  const says = leverWords(lever, context);
                  return (
                    <li className={styles.lever} key={`${lever.id} ${says}`}>
                      <p>
                        {says}
                        <span className={styles.gain}>{gainWords(lever, formatter)}</span>
                      </p>
                      <Button blockedBy={waiting} onPress={() => take(lever)}>
                        Try it
                      </Button>
                    </li>
                  );
                })}
              </ul>
            )}
          </div>
          <GoalSeek />
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

// Helpers

function gainWords({ gain }: Lever, formatter: Formatter): string {
  const parts = [
    `${signed(gain.margin, formatter.number(gain.margin * 100, 2))} points of margin`,
    `${signed(gain.payPerHour, formatter.money(gain.payPerHour))} an hour`,
    ...(Math.abs(gain.savingEach) >= 0.005
      ? [
          `a piece costs ${formatter.money(Math.abs(gain.savingEach))} ${gain.savingEach > 0 ? 'less' : 'more'}`,
        ]
      : []),
    `${signed(gain.profit, formatter.money(gain.profit))} profit in all`,
  ];
  return parts.join(', ');
}

const signed = (value: number, text: string): string => `${value > 0 ? '+' : ''}${text}`;
