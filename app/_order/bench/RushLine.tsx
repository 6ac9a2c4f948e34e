'use client';

import { useMemo, useRef } from 'react';
import { Button } from '@/app/_controls/Button';
import { newId } from '@/app/_documents/newId';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { quoteAsked } from '@/app/_orderBook/quoteAsked';
import type { Bench } from '@/app/_orderBook/useBench';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import { useOrderStudy } from '@/app/_studies/useOrderStudy';
import { orderRushWords } from '@/app/_words/orders/bench/orderRushWords';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { orderChargeWords } from '@/app/_words/orders/quote/orderChargeWords';
import type { Planned } from '@/lib/calendar/planWork';
import { sameValue } from '@/lib/merging/sameValue';
import { rushFor } from '@/lib/studies/charges/rushFor';
import { mostEntries } from '@/shared/limits';
import { toMinor } from '@/shared/money';
import { type OrderCharge, orderSchema } from '@/shared/schemas/order';
import styles from './Bench.module.css';

type RushLineProps = Readonly<{
  on: OrderOnScreen;
  book: OrderBook;
  bench: Bench;
  planned: Planned;
  wantedOn: string;
}>;

/** What an order that nobody has said yes to is charged for haste, and the charge itself with one press. */
export function RushLine({ on, book, bench, planned, wantedOn }: RushLineProps) {
  const { orderId, order, workspace, today, formatter } = on;
  const told = useRef<HTMLParagraphElement>(null);
  const rush = rushFor(today, wantedOn, planned, workspace.workshop.policy.charges);
  const isCharged = hasRush(order.charges);
  const words = orderRushWords(rush, isCharged, formatter);
  const share = rush.outcome.kind === 'rush' && !isCharged ? rush.outcome.share : null;
  const charge = useRushCharge(on, book, bench, share);
  if (words === null) return null;
  const add = ({ body }: NonNullable<typeof charge>) => {
    workspace.changeOrder(orderId, `Charge ${body.what}`, (now) =>
      // Another tab may have added it.
      hasRush(now.charges) ? now : { ...now, charges: [...now.charges, { ...body, id: newId() }] },
    );
    // The button goes.
    told.current?.focus();
  };
  return (
    <>
      <p className={styles.said} ref={told} tabIndex={-1}>
        {words}
      </p>
      {charge !== null && (
        <div className={styles.acts}>
          <Button blockedBy={tooMany(order.charges)} onPress={() => add(charge)}>
            Charge {charge.money} for haste
          </Button>
        </div>
      )}
    </>
  );
}

// Helpers

const most = mostEntries(orderSchema, ['charges']);
const chargeSchema = orderSchema.shape.charges.unwrap().element.omit({ id: true });

const hasRush = (charges: readonly OrderCharge[]): boolean => charges.some(({ kind }) => kind === 'rush');

const tooMany = (charges: readonly OrderCharge[]): string | undefined =>
  charges.length >= most ? `An order takes ${most}. Take one off its quote first.` : undefined;

/** @returns the charge as it would be added; null where nothing is charged, or while what the pieces come to is not known. */
function useRushCharge(
  { workspace, orderId, locale }: OrderOnScreen,
  book: OrderBook,
  bench: Bench,
  share: number | null,
): { readonly body: Omit<OrderCharge, 'id'>; readonly money: string } | null {
  const asked = useMemo(
    () => (share === null ? null : quoteAsked(workspace, book, bench, orderId)),
    [share, workspace, book, bench, orderId],
  );
  const { newest } = useOrderStudy('rush', asked, share ?? 0);
  const isNow = newest !== null && newest.question === share && sameValue(newest.asked, asked);
  if (!isNow) return null;
  const { amount, currency } = newest.answer;
  const body = chargeSchema.safeParse({ kind: 'rush', what: orderChargeWords.rush, amount });
  if (!body.success || body.data.amount <= 0) return null;
  return { body: body.data, money: minorMoney(toMinor(body.data.amount, currency), currency, locale) };
}
