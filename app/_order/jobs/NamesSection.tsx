'use client';

import { useState } from 'react';
import { intakeMemory } from '@/app/_names/intakeMemory';
import { orderNamesAnswer } from '@/app/_names/orderNamesAnswer';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from '@/app/_order/laterParts';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { FoldedPart } from './FoldedPart';

/** Who gets which size. */
export function NamesSection({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { workspace, orderId, order, formatter } = on;
  // What was being taken in before a reload is found where it was left.
  const [isTaking] = useState(() => intakeMemory.holdsFor(orderId));
  const answer = orderNamesAnswer(order, workspace, formatter);
  return (
    <FoldedPart id="order-names" heading="Sizes and names" answer={answer} open={isTaking}>
      <LaterPart part={laterParts.names} what="The names" props={{ workspace, orderId }} />
    </FoldedPart>
  );
}
