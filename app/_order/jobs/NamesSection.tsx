'use client';

import { orderNamesAnswer } from '@/app/_names/orderNamesAnswer';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from '@/app/_order/laterParts';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { FoldedPart } from './FoldedPart';

/** Who gets which size. */
export function NamesSection({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { workspace, orderId, order, formatter } = on;
  const answer = orderNamesAnswer(order, workspace, formatter);
  return (
    <FoldedPart id="order-names" heading="Sizes and names" answer={answer}>
      <LaterPart part={laterParts.names} what="The names" props={{ workspace, orderId }} />
    </FoldedPart>
  );
}
