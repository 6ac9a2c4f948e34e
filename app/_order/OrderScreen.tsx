'use client';

import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { NotHere } from '@/app/_keeping/NotHere';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { useOrderBook } from '@/app/_orderBook/useOrderBook';
import { OrderRoom } from './OrderRoom';

/** The order that the address names. */
export const OrderOfAddress = () => <OrderScreen orderId={useIdInAddress('/orders/')} />;

/** One order: how far it is, what it waits for, its money and papers. */
export function OrderScreen({ orderId }: Readonly<{ orderId: string }>) {
  return (
    <WithWorkspace>{(workspace) => <OrderOfId key={orderId} {...{ workspace, orderId }} />}</WithWorkspace>
  );
}

// Helpers

type OrderOfIdProps = Readonly<{ workspace: ReadyWorkspace; orderId: string }>;

function OrderOfId({ workspace, orderId }: OrderOfIdProps) {
  const book = useOrderBook(workspace);
  const found = book.of(orderId);
  if (found !== null) return <OrderRoom {...{ workspace, book, found }} />;
  return (
    <NotHere
      {...{ workspace, id: orderId }}
      what="order"
      back={{ href: '/orders', words: 'To the orders' }}
    />
  );
}
