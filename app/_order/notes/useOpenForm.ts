'use client';

import { useState } from 'react';
import { formMemory, type OrderForm } from '@/app/_fields/formMemory';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';

/** A form of an order that stands open. */
export interface OpenForm extends OrderForm {
  /** Something was typed in it before a reload: it opens by itself, and the hand is not taken there. */
  readonly isFound: boolean;
}

export interface FormsOfPart {
  /** Which form stands open; null where none does. */
  readonly open: string | null;
  readonly show: (name: string | null) => void;
  readonly formOf: (name: string) => OpenForm;
}

/**
 * Which form of a part of the screen stands open; one that was begun before a reload does so by itself.
 *
 * @param part its name, one word
 * @param isOffered whether a form is there now
 */
export function useOpenForm(
  { orderId, customer }: Pick<OrderOnScreen, 'orderId' | 'customer'>,
  part: string,
  isOffered: (name: string) => boolean = () => true,
): FormsOfPart {
  const isErased = customer !== null && customer.erasedOn !== null;
  const [{ open, isFound }, setOpen] = useState(() => {
    const begun = isErased ? null : (formMemory.begun(orderId, `${part} `).find(isOffered) ?? null);
    return { open: begun, isFound: begun !== null };
  });
  return {
    open,
    show: (name) => setOpen({ open: name, isFound: false }),
    formOf: (name) => ({ orderId, name: `${part} ${name}`, isErased, isFound }),
  };
}
