'use client';

import { CardSection } from '@/app/_controls/CardSection';
import { Answer } from '@/app/_docket/common/Answer';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from '@/app/_order/laterParts';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import type { Bench } from '@/app/_orderBook/useBench';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import { benchAnswer, benchLines } from '@/app/_words/orders/bench/orderBenchWords';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { benchDays } from '@/lib/calendar/benchDays';
import { plansOf } from '@/lib/calendar/load';
import { paceOf } from '@/lib/calendar/pace';
import { benchClaim } from '@/lib/orders/bench/orderLoad';
import { dayToKeep } from '@/lib/orders/dayToKeep';
import styles from './Bench.module.css';
import { BenchDays } from './BenchDays';
import { OrderFindings } from './OrderFindings';

/** More days than this do not fit side by side. */
const MOST_DAYS = 16;

type BenchSectionProps = Readonly<{ on: OrderOnScreen; book: OrderBook; bench: Bench }>;

/** When the bench can make it: how long it takes, when it is done, and the last days on which it can still be kept. */
export function BenchSection({ on, book, bench }: BenchSectionProps) {
  const { orderId, order, today, workspace, locale, formatter } = on;
  const { calendar, load } = bench;
  const own = bench.benchOf(orderId);
  const planned = own === null ? null : bench.plannedOf(orderId);
  const plan = planned?.kind === 'planned' ? planned.plan : null;
  const latest = own === null ? null : bench.latestOf(orderId);
  const wantedOn = dayToKeep(order, on.standing.agreed);
  const keptOn = own?.load.wantedOn ?? null;
  const days =
    latest?.kind === 'latest' && keptOn !== null
      ? { latest: latest.dates, plan: plan ?? latest.dates.plan, wantedOn: keptOn }
      : null;
  const { approval, deposit } = on.standing.gates;
  // What was agreed bears no charge for haste any more, however near its day comes.
  const claim = benchClaim(on);
  // Where its days are only not known, those in a calendar stay.
  const isDayless = claim === 'none' || (own !== null && keptOn === null);
  const stages = order.jobIds.flatMap((jobId) => bench.workOf(jobId)?.stages ?? []);
  const seen = {
    pace: own === null ? null : paceOf(stages),
    calendar,
    own,
    planned,
    latest,
    wantedOn,
    today,
    isWaiting: bench.isWaiting,
    isOnBench: claim !== 'none',
    isHeld: on.standing.side.side === 'held',
    jobs: order.jobIds.length,
    isReleased: approval !== 'shut' && deposit !== 'shut',
  };
  const named = (ids: readonly string[] = []) =>
    ids.flatMap((id) => workspace.jobs.find((job) => job.id === id)?.job.name ?? 'a job that is not here');
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
        {benchLines(
          seen,
          { unknown: named(own?.unknown), quoted: named(own?.quoted) },
          locale,
          formatter,
        ).map(({ words, isCaution }) => (
          <li key={words} className={isCaution ? styles.caution : undefined}>
            {words}
          </li>
        ))}
      </ul>
      {claim === 'open' && wantedOn !== null && planned !== null && (
        <LaterPart
          part={laterParts.rush}
          what="The charge for haste"
          props={{ on, book, bench, planned, wantedOn }}
        />
      )}
      <OrderFindings on={on} bench={bench} id="TIM-03" />
      {(days !== null || isDayless) && (
        <LaterPart
          key={days === null ? 'off' : 'days'}
          part={laterParts.calendar}
          what="The calendar file"
          props={{ on, days }}
        />
      )}
    </CardSection>
  );
}
