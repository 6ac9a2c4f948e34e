'use client';

import { useState } from 'react';
import { TextField } from '@/app/_fields/TextField';
import { textLimits } from '@/shared/limits';
import { orderSchema } from '@/shared/schemas/order';
import type { OrderFields } from './orderFields';

type UnderCostFieldProps = Readonly<{
  fields: OrderFields;
  /** Something of the quote goes out under cost as it is. */
  isAsked: boolean;
}>;

/** Why a quote goes out under cost: asked where it does, and shown where it was written down. */
export function UnderCostField({ fields: { order, set }, isAsked }: UnderCostFieldProps) {
  const isNeeded = isAsked || order.underCostWhy !== '';
  const [isShown, setShown] = useState(isNeeded);
  // It stays while it is looked at: emptied, it must not go from under the hand.
  if (isNeeded && !isShown) setShown(true);
  if (!isShown) return null;
  return (
    <TextField
      id="quote-under-cost"
      label="Why it goes out under cost"
      rows={2}
      width="full"
      value={order.underCostWhy}
      longest={textLimits(orderSchema, ['underCostWhy']).longest}
      isTrimmed={false}
      hint="It is kept on your own side and never printed. A price list never may go out so: it promises its prices to everybody."
      onCommit={(why) => set('Why under cost', 'underCostWhy', why)}
    />
  );
}
