'use client';

import { NamesPart } from '@/app/_names/NamesPart';
import { orderNamesAnswer } from '@/app/_names/orderNamesAnswer';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { FoldedPart } from './FoldedPart';

/** Who gets which size. */
export function NamesSection({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { workspace, orderId, order, formatter } = on;
  const answer = orderNamesAnswer(order, workspace, formatter);
  return (
    <FoldedPart id="order-names" heading="Sizes and names" answer={answer}>
      <NamesPart {...{ workspace, orderId }} />
    </FoldedPart>
  );
}
