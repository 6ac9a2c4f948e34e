'use client';

import { useEffect, useState } from 'react';
import { formMemory, type OrderForm } from '@/app/_fields/formMemory';
import { creditSchema, firstChoices, type PaperChoices } from './paperChoices';

export const creditForm = (orderId: string, isErased: boolean): OrderForm => ({
  ...{ orderId, name: 'paper creditNote', isErased },
});

/**
 * What is chosen for the papers of an order. What is typed of a credit note is kept in the tab until it went out.
 *
 * @param isErased whether the customer was erased, in this tab or in another: all that is typed about them goes
 */
export function usePaperChoices(orderId: string, isErased: boolean) {
  const [choices, setChoices] = useState<PaperChoices>(() => ({
    ...firstChoices,
    ...creditSchema.safeParse(formMemory.recall(creditForm(orderId, isErased), 'credit')).data,
  }));
  const [wasErased, setWasErased] = useState(isErased);
  if (isErased !== wasErased) {
    setWasErased(isErased);
    if (isErased) setChoices(firstChoices);
  }
  useEffect(() => {
    // What another tab's erasing could not reach.
    if (isErased) formMemory.forgetOrders([orderId]);
  }, [orderId, isErased]);
  const { invoiceId, creditWhy, creditLines } = choices;
  useEffect(() => {
    const isTyped = creditWhy !== '' || creditLines.length > 0;
    formMemory.remember(
      creditForm(orderId, isErased),
      'credit',
      isTyped ? { invoiceId, creditWhy, creditLines } : undefined,
    );
  }, [orderId, isErased, invoiceId, creditWhy, creditLines]);
  const choose = (change: Partial<PaperChoices>) => setChoices((now) => ({ ...now, ...change }));
  return [choices, choose] as const;
}
