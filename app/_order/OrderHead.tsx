'use client';

import Link from 'next/link';
import { PageHead } from '@/app/_controls/PageHead';
import { usePageName } from '@/app/_controls/usePageName';
import { EditableTitle } from '@/app/_fields/EditableTitle';
import { orderLineWords } from '@/app/_words/orders/orderHeadWords';
import { dayToKeep } from '@/lib/orders/dayToKeep';
import { textLimits } from '@/shared/limits';
import { orderSchema } from '@/shared/schemas/order';
import type { OrderOnScreen } from './orderOnScreen';

/** What the order is called, its number, how many and for which day, and whom it is for. */
export function OrderHead({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { order, orderId, standing, jobs, customer, workspace, today, locale, formatter } = on;
  usePageName(`${order.name} · Pressminute`);
  const line = orderLineWords(
    {
      number: standing.number,
      jobs: jobs.map(({ job }) => job),
      blanks: workspace.blanks,
      askedPieces: order.askedPieces,
      wantedOn: order.wantedOn,
      dueOn: dayToKeep(order, standing.agreed),
    },
    today,
    locale,
    formatter,
  );
  return (
    <PageHead
      title={
        <EditableTitle
          value={order.name}
          label="Name of the order"
          limits={textLimits(orderSchema, ['name'])}
          onCommit={(name) =>
            workspace.setField({ kind: 'order', id: orderId }, 'Name of the order', ['name'], name)
          }
        />
      }
      line={line}
      aside={
        order.customerId === null ? (
          <a href="#order-asked">Nobody is named as the customer</a>
        ) : customer === null ? (
          'The customer is not on this device.'
        ) : (
          <Link href={`/customers/${order.customerId}`}>
            <bdi>{customer.name}</bdi>
          </Link>
        )
      }
    />
  );
}
