'use client';

import { PageHead } from '@/app/_controls/PageHead';
import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';

/** The order that the address names. */
export const OrderOfAddress = () => <OrderScreen orderId={useIdInAddress('/orders/')} />;

/** One order: how far it is, what it waits for, its money and papers. */
function OrderScreen({ orderId }: Readonly<{ orderId: string }>) {
  return <WithWorkspace>{() => <PageHead title={orderId} />}</WithWorkspace>;
}
