'use client';

import { CardSection } from '@/app/_controls/CardSection';
import { FindingRow } from '@/app/_controls/FindingRow';
import { RowList } from '@/app/_controls/RowList';
import { Answer } from '@/app/_docket/common/Answer';
import { MakeIt } from '@/app/_makingFrame/MakeIt';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from '@/app/_order/laterParts';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import { jobsAnswer } from '@/app/_words/orders/orderJobWords';
import { askedPiecesWords } from '@/app/_words/orders/quote/askedPiecesWords';
import { jobFacts } from '@/lib/drafts/jobFacts';
import { scaledJob } from '@/lib/drafts/scaledJob';
import { JobLine } from './JobLine';
import styles from './Jobs.module.css';

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
      <AskedOtherwise on={on} />
      <LaterPart part={laterParts.addJob} what="What adds a job" props={{ on, book }} />
      {jobs.length > 0 && <MakeIt runs={on.workspace.runs} of={{ kind: 'order', id: on.orderId }} />}
    </CardSection>
  );
}

// Helpers

/** More or fewer were asked for: made so by one button where there is one job to make it of. */
function AskedOtherwise({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { workspace, order, jobs, standing, formatter } = on;
  const words = askedPiecesWords({ order, standing, jobs: jobs.map(({ job }) => job) }, formatter);
  const { askedPieces } = order;
  if (words === null || askedPieces === null) return null;
  const [first] = jobs;
  const only = jobs.length === 1 && first !== undefined && jobFacts(first.job).pieces > 0 ? first : null;
  const scale = ({ id, job }: (typeof jobs)[number]) =>
    workspace.changeJob(id, `${formatter.count(askedPieces, 'piece')} of ${job.name}`, (now) =>
      scaledJob(now, askedPieces),
    );
  return (
    <ul className={styles.list}>
      <FindingRow
        severity="note"
        sentence={words}
        detail={
          only === null
            ? 'Set how many of each size in the jobs, if they are to be as many.'
            : 'Sizes share them as they share what is there now.'
        }
        fix={
          only === null
            ? undefined
            : {
                label: `Make it ${formatter.count(askedPieces, 'piece')}`,
                onFix: () => scale(only),
              }
        }
      />
    </ul>
  );
}
