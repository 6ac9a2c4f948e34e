'use client';

import { NamesPart } from '@/app/_names/NamesPart';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { namesAnswer } from '@/app/_words/orders/orderNamesWords';
import { FoldedPart } from './FoldedPart';

/** Who gets which size. */
export function NamesSection({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { workspace, orderId, order, formatter } = on;
  return (
    <FoldedPart id="order-names" heading="Sizes and names" answer={namesAnswer(order.lines, formatter)}>
      <NamesPart {...{ workspace, orderId }} />
    </FoldedPart>
  );
}
