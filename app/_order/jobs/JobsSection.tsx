'use client';

import { CardSection } from '@/app/_controls/CardSection';
import { RowList } from '@/app/_controls/RowList';
import { Answer } from '@/app/_docket/common/Answer';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from '@/app/_order/laterParts';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import { jobsAnswer } from '@/app/_words/orders/orderJobWords';
import { JobLine } from './JobLine';

/** What is made for the order: each job with its pieces and what they cost. */
export function JobsSection({ on, book }: Readonly<{ on: OrderOnScreen; book: OrderBook }>) {
  const { order, jobs, formatter } = on;
  return (
    <CardSection
      numeral={null}
      heading="Jobs"
      id="order-jobs"
      answer={
        <Answer
          words={jobsAnswer(
            order.jobIds.length,
            jobs.map(({ job }) => job),
            formatter,
          )}
        />
      }
    >
      <RowList>
        {order.jobIds.map((jobId) => (
          <JobLine key={jobId} {...{ on, jobId }} />
        ))}
      </RowList>
      <LaterPart part={laterParts.addJob} what="What adds a job" props={{ on, book }} />
    </CardSection>
  );
}
