'use client';

import Link from 'next/link';
import { PageHead } from '@/app/_controls/PageHead';
import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
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
  const records = workspace.unreadable.filter(({ id }) => id === orderId);
  return (
    <>
      <PageHead
        title={records.length > 0 ? 'This order cannot be read' : 'This order is not here'}
        line={
          records.length > 0
            ? 'Its record stays kept as it is. Save it as a file, so that nothing of it is lost.'
            : 'It was removed, or is kept on another device. If you have just removed it, undo brings it back.'
        }
      />
      <UnreadableRecords workspace={{ ...workspace, unreadable: records }} level={2} />
      <p>
        <Link href="/orders">To the orders</Link>
      </p>
    </>
  );
}
