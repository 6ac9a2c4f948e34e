'use client';

import { useState } from 'react';
import { Advice } from '@/app/_controls/Advice';
import { Button } from '@/app/_controls/Button';
import { ButtonLink } from '@/app/_controls/ButtonLink';
import { formatterFor } from '@/app/_words/formatter';
import {
  carWords,
  loadedWords,
  planDifferenceWords,
  planObstacleWords,
  takenWords,
} from '@/app/_words/stall/carWords';
import { dayLoadWords } from '@/app/_words/stall/dayLoadWords';
import { takenBackWords } from '@/app/_words/stall/takenBackWords';
import { notIssuedWords } from '@/app/_words/store/notIssuedWords';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { dayLoads } from '@/lib/stall/car/dayLoads';
import { planSeries } from '@/lib/stall/car/plansOf';
import { daysInOrder } from '@/lib/stall/sellingDays';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import styles from './Car.module.css';
import type { CarOnScreen, StallPart } from './carOnScreen';
import { takePlanBack } from './takingBack';

type Fixing =
  | { readonly kind: 'none' | 'fixing' }
  /** In words of the screen. */
  | { readonly kind: 'notFixed'; readonly why: string };

/** Fixes what goes along: the paper that is counted against, and the stock that moves to the car with it. */
export function FixPlan({ part, car }: Readonly<{ part: StallPart; car: CarOnScreen }>) {
  const { workspace, id, stallDay, isOld } = part;
  const { plans, toIssue, loads, taken, unknown, differences, isFixed, isCounted } = car;
  const [state, setState] = useState<Fixing>({ kind: 'none' });
  const formatter = formatterFor(workspace.workshop);
  const obstacles = toIssue?.kind === 'refused' ? toIssue.obstacles : [];
  const fix = async () => {
    if (toIssue?.kind !== 'ready') return;
    setState({ kind: 'fixing' });
    try {
      const outcome = await workspace.issue(`Fix the plan of ${stallDay.name}`, {
        kind: 'stallPlan',
        about: { kind: 'stallDay', id },
        series: planSeries(id),
        body: toIssue.body,
        notes: () => loads.map((body) => ({ kind: 'stockMove', body })),
      });
      const isFixedNow = outcome.state === 'issued';
      setState(isFixedNow ? { kind: 'none' } : { kind: 'notFixed', why: saveFailureWords[outcome.why] });
    } catch (error) {
      setState({ kind: 'notFixed', why: notIssuedWords(error) });
    }
  };
  const blockedBy =
    toIssue === null
      ? carWords.noPlan
      : state.kind === 'fixing'
        ? carWords.fixing
        : isOld
          ? carWords.old
          : obstacles.length > 0
            ? obstacles.map(planObstacleWords).join(' ')
            : isFixed
              ? carWords.same
              : undefined;
  const moved = (to: 'van' | 'home') =>
    loads.reduce(
      (sum, { quantity, place, cause }) =>
        place.kind === to && cause === 'returned' ? sum + Math.max(0, quantity) : sum,
      0,
    );
  const [toCar, toHome] = [moved('van'), moved('home')];
  const brought =
    plans.counts?.body ?? (toIssue?.kind === 'ready' ? toIssue.body({ count: 1, letter: null }) : null);
  const byDay =
    brought === null ? null : loadsTold(brought, part.today, usableLocale(workspace.workshop.locale));
  const words = [...new Set(obstacles.map(planObstacleWords))];
  return (
    <div className={styles.rows}>
      {plans.isOfSeveral && <Advice severity="caution">{carWords.several}</Advice>}
      {plans.isTakenBack && <Advice severity="caution">{takenBackWords}</Advice>}
      {differences !== null && (
        <div className={styles.told}>
          <p>
            {carWords.differs} {carWords.nextIsCounted}
          </p>
          <ul>
            {planDifferenceWords(differences, formatter).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </div>
      )}
      {words.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {byDay !== null && <p className={styles.quiet}>{byDay}</p>}
      <div className={styles.acts}>
        {plans.counts !== null && (
          <ButtonLink kind={differences === null ? 'strong' : 'plain'} href={`/stall/${id}/count`}>
            {carWords.count}
          </ButtonLink>
        )}
        <Button
          kind={plans.counts === null || differences !== null ? 'strong' : 'plain'}
          blockedBy={blockedBy}
          describedBy={`${id}-fix-told`}
          onPress={() => void fix()}
        >
          {plans.counts === null ? carWords.fix : carWords.fixAnew}
        </Button>
        {plans.counts !== null && (
          <Button
            kind="quiet"
            blockedBy={isCounted ? carWords.counted : undefined}
            onPress={() => takePlanBack(workspace, plans, stallDay.name)}
          >
            {carWords.takeBack}
          </Button>
        )}
      </div>
      <p id={`${id}-fix-told`} role="status" className={styles.quiet}>
        {state.kind === 'notFixed'
          ? `It is not fixed. ${state.why}`
          : isFixed
            ? carWords.same
            : toIssue?.kind === 'ready'
              ? [
                  loadedWords({ toCar, toHome, unknown: toCar > 0 ? unknown : 0 }, formatter),
                  ...takenWords(taken, formatter),
                ].join(' ')
              : ''}
      </p>
    </div>
  );
}

// Helpers

/** What of all that is brought goes to the table for each day. */
function loadsTold(
  { goods, days }: Pick<StallPlan, 'goods' | 'days'>,
  today: string,
  locale: string,
): string | null {
  const loads = goods.map(({ bring }) => dayLoads(bring, days));
  const ofDays = daysInOrder({ days }).map(({ day }) => day);
  const sums = ofDays.map((_, at) => loads.reduce((sum, load) => sum + (load[at] ?? 0), 0));
  return dayLoadWords(ofDays, sums, { today, locale });
}
