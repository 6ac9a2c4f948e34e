'use client';

import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { newId } from '@/app/_documents/newId';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import { freeName } from '@/lib/drafts/freeName';
import { jobFacts } from '@/lib/drafts/jobFacts';
import { newJob } from '@/lib/drafts/newJob';
import { scaledJob } from '@/lib/drafts/scaledJob';
import { measuredScrap } from '@/lib/learning/measuredScrap';
import { mostEntries } from '@/shared/limits';
import { orderSchema } from '@/shared/schemas/order';
import styles from './Jobs.module.css';

/** A further job: a new one, or one that belongs to no order. */
export function AddJob({ on, book }: Readonly<{ on: OrderOnScreen; book: OrderBook }>) {
  const { workspace, orderId, order, customer, today } = on;
  const { workshop, blanks, jobs } = workspace;
  const router = useRouter();
  const [chosen, setChosen] = useState<string | null>(null);
  const most = mostEntries(orderSchema, ['jobIds']);
  const full = order.jobIds.length >= most ? `An order holds ${most} jobs. Make a second order.` : undefined;
  const taken = new Set(book.board.flatMap(({ facts }) => facts.order.jobIds));
  const free = jobs.filter(({ id }) => !taken.has(id));
  const withJob = (jobId: string) => (now: typeof order) => ({ ...now, jobIds: [...now.jobIds, jobId] });
  const begin = () => {
    const [jobId, artworkId] = [newId(), newId()];
    // Most makers go on with what they printed on last.
    const last = jobs[0]?.job.lines[0]?.blankId;
    const entries = Object.entries(blanks);
    const blank = entries.find(([id]) => id === last) ?? entries[0];
    const { job, artwork } = newJob({
      name: freeName(
        order.name,
        jobs.map((one) => one.job.name),
      ),
      ...{ day: today, workshop, artworkId },
      blank: blank === undefined ? null : { id: blank[0], body: blank[1] },
      measuredScrap:
        blank &&
        measuredScrap(
          workspace.entries.rateTaken.map(({ body }) => body),
          blank[0],
        ),
    });
    // As many as were asked for and no other job of the order makes.
    const made = on.jobs.reduce((sum, one) => sum + jobFacts(one.job).pieces, 0);
    const left = (order.askedPieces ?? 0) - made;
    const added = workspace.edit(job.name, [
      { do: 'add', kind: 'artwork', id: artworkId, body: artwork },
      {
        ...{ do: 'add', kind: 'job', id: jobId },
        body: {
          ...(left > 0 ? scaledJob(job, left) : job),
          customer: customer?.name ?? '',
          wantedOn: order.wantedOn,
        },
      },
      { do: 'change', kind: 'order', id: orderId, to: withJob(jobId) },
    ]);
    // Blank, sizes and print are still those that any job begins with.
    if (added.state === 'shown') router.push(`/jobs/${jobId}`);
  };
  return (
    <>
      <div className={styles.acts}>
        <Button blockedBy={full} onPress={begin}>
          Add a new job
        </Button>
      </div>
      {free.length > 0 && (
        <Fold
          summary="Add a job that is there"
          line={`${on.formatter.count(free.length, 'job belongs', 'jobs belong')} to no order`}
        >
          <div className={styles.acts}>
            <ChoiceField
              label="Job"
              value={free.some(({ id }) => id === chosen) ? chosen : null}
              choices={free.map(({ id, job }) => ({ value: id, label: job.name }))}
              onCommit={setChosen}
            />
            <Button
              blockedBy={full ?? (chosen === null ? 'Choose the job first.' : undefined)}
              onPress={() => {
                if (chosen === null) return;
                workspace.changeOrder(orderId, 'Job of the order', withJob(chosen));
                setChosen(null);
              }}
            >
              Add it
            </Button>
          </div>
        </Fold>
      )}
    </>
  );
}
