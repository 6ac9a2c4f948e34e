'use client';

import { CardSection } from '@/app/_controls/CardSection';
import { Answer } from '@/app/_docket/common/Answer';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import type { Bench } from '@/app/_orderBook/useBench';
import { benchAnswer, benchLines } from '@/app/_words/orders/orderBenchWords';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { benchDays } from '@/lib/calendar/benchDays';
import { plansOf } from '@/lib/calendar/load';
import { paceOf } from '@/lib/calendar/pace';
import { benchClaim } from '@/lib/orders/bench/orderLoad';
import { rushFor } from '@/lib/studies/charges/rushFor';
import styles from './Bench.module.css';
import { BenchDays } from './BenchDays';
import { CalendarFileButton } from './CalendarFileButton';
import { OrderFindings } from './OrderFindings';

/** More days than this do not fit side by side. */
const MOST_DAYS = 16;

/** When the bench can make it: how long it takes, when it is done, and the last days on which it can still be kept. */
export function BenchSection({ on, bench }: Readonly<{ on: OrderOnScreen; bench: Bench }>) {
  const { orderId, order, today, workspace, locale, formatter } = on;
  const { calendar, load } = bench;
  const own = bench.benchOf(orderId);
  const planned = own === null ? null : bench.plannedOf(orderId);
  const plan = planned?.kind === 'planned' ? planned.plan : null;
  const latest = own === null ? null : bench.latestOf(orderId);
  const { wantedOn } = order;
  const { approval, deposit } = on.standing.gates;
  const rush =
    wantedOn === null || own === null || planned === null
      ? null
      : rushFor(today, wantedOn, planned, workspace.workshop.policy.charges);
  const stages = order.jobIds.flatMap((jobId) => bench.workOf(jobId)?.stages ?? []);
  const seen = {
    pace: own === null ? null : paceOf(stages),
    calendar,
    own,
    planned,
    latest,
    wantedOn,
    today,
    rush,
    isWaiting: bench.isWaiting,
    isOnBench: benchClaim(on) !== 'none',
    jobs: order.jobIds.length,
    isReleased: approval !== 'shut' && deposit !== 'shut',
  };
  const unknown = (own?.unknown ?? []).flatMap(
    (id) => workspace.jobs.find((job) => job.id === id)?.job.name ?? [],
  );
  const others =
    load === null ? [] : plansOf({ ...load, orders: load.orders.filter(({ id }) => id !== orderId) });
  return (
    <CardSection
      numeral={null}
      heading="Bench time"
      id="order-bench"
      answer={<Answer words={benchAnswer(seen, locale)} />}
    >
      <AnswerMissing what="What it takes at the bench could not be worked out" failure={bench.failure} />
      {calendar !== null && plan !== null && (
        <BenchDays
          days={benchDays(calendar, plan, others, { from: today, wantedOn, most: MOST_DAYS })}
          {...{ today, locale }}
        />
      )}
      <ul className={styles.lines}>
        {benchLines(seen, unknown, locale, formatter).map(({ words, isCaution }) => (
          <li key={words} className={isCaution ? styles.caution : undefined}>
            {words}
          </li>
        ))}
      </ul>
      <OrderFindings on={on} bench={bench} id="TIM-03" />
      {latest?.kind === 'latest' && wantedOn !== null && (
        <CalendarFileButton
          on={on}
          latest={latest.dates}
          plan={plan ?? latest.dates.plan}
          wantedOn={wantedOn}
        />
      )}
    </CardSection>
  );
}
