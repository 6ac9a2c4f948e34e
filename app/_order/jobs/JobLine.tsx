'use client';

import Link from 'next/link';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { ListRow } from '@/app/_controls/RowList';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { jobLineWords } from '@/app/_words/orders/orderJobWords';
import { soldIn } from '@/lib/quotes/agreed/soldIn';
import styles from './Jobs.module.css';

/** One job of the order, which leads to its screen. */
export function JobLine({ on, jobId }: Readonly<{ on: OrderOnScreen; jobId: string }>) {
  const { workspace, orderId, jobs, formatter } = on;
  const job = jobs.find(({ id }) => id === jobId)?.job;
  const name = job?.name ?? 'A job that is not here';
  const takeOut = () => {
    workspace.changeOrder(orderId, `Take out ${name}`, (order) => ({
      ...order,
      // Its rows of names stay with the order, so that nothing typed is lost where it comes back.
      jobIds: order.jobIds.filter((id) => id !== jobId),
    }));
    focusById('order-jobs-heading');
  };
  return (
    <ListRow
      acts={
        <Button kind="quiet" spoken={`Take out ${name}`} onPress={takeOut}>
          Take out
        </Button>
      }
    >
      {job === undefined ? (
        <p>{name}</p>
      ) : (
        <Link href={`/jobs/${jobId}`}>
          <bdi>{name}</bdi>
        </Link>
      )}
      <p className={styles.quiet}>
        {job === undefined
          ? 'It was removed, or is kept on another device. Bring it back, or take it out: no quote can be made with it.'
          : jobLineWords(job, agreedPrices(on, jobId), formatter)}
      </p>
    </ListRow>
  );
}

// Helpers

/** The price of a job may be made of two, so that what was agreed on is told as its papers say it. */
function agreedPrices({ standing: { agreed }, locale }: OrderOnScreen, jobId: string) {
  if (agreed === null) return null;
  const { body } = agreed.quote;
  const each = soldIn(body, agreed.alternativeId).flatMap((sold) =>
    sold.jobId === jobId ? sold.sizes.flatMap((one) => (one.quantity > 0 ? [one.each] : [])) : [],
  );
  return each.length === 0 ? null : { each, currency: body.currency, locale };
}
