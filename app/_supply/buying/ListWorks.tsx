'use client';

import Link from 'next/link';
import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { ListRow, RowList } from '@/app/_controls/RowList';
import { useOrderBook } from '@/app/_orderBook/useOrderBook';
import { useRunBook } from '@/app/_runBook/useRunBook';
import styles from '@/app/_supply/Supply.module.css';
import { mostEntries } from '@/shared/limits';
import { buyingListSchema } from '@/shared/schemas/making/supply';
import type { BuyingOnScreen } from './buyingOnScreen';
import { workChoices, worksOf } from './buyingWorks';
import { WorkChoices } from './WorkChoices';

/** The jobs that a list buys for; further ones are added, others taken off. */
export function ListWorks({ on }: Readonly<{ on: BuyingOnScreen }>) {
  const { list, set, supply } = on;
  const { workspace } = supply;
  const book = useOrderBook(workspace);
  const { runs } = useRunBook(workspace);
  const [isAdding, setAdding] = useState(false);
  const choices = isAdding ? workChoices(workspace, book, runs) : [];
  const isFull = list.works.length >= mostEntries(buyingListSchema, ['works']);
  return (
    <>
      <RowList label="What it is for">
        {list.works.map((work) => {
          const job = workspace.jobs.find(({ id }) => id === work.jobId)?.job;
          const order = work.orderId === null ? null : book.of(work.orderId)?.facts.order;
          const name = job?.name ?? 'A job that is not here any more';
          return (
            <ListRow
              key={`${work.jobId} ${work.orderId}`}
              acts={
                <Button
                  kind="quiet"
                  spoken={`Take ${name} off the list`}
                  onPress={() =>
                    set(
                      `Take ${name} off the list`,
                      ['works'],
                      list.works.filter((one) => one !== work),
                    )
                  }
                >
                  Take it off
                </Button>
              }
            >
              {job === undefined ? name : <Link href={`/jobs/${work.jobId}`}>{name}</Link>}
              {order != null && (
                <p className={styles.quiet}>
                  for <Link href={`/orders/${work.orderId}`}>{order.name}</Link>
                </p>
              )}
            </ListRow>
          );
        })}
      </RowList>
      <div className={styles.acts}>
        <Button
          expanded={isAdding}
          blockedBy={isFull ? 'The list is full: make a second one.' : undefined}
          onPress={() => setAdding(!isAdding)}
        >
          Buy for something more
        </Button>
      </div>
      {isAdding && (
        <WorkChoices
          {...{ choices }}
          chosen={[]}
          onToggle={(key) => {
            const picked = choices.filter((choice) => choice.key === key);
            set(`Buy for ${picked[0]?.name ?? ''} too`, ['works'], [...list.works, ...worksOf(picked)]);
          }}
        />
      )}
    </>
  );
}
