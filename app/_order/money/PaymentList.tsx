'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { ListRow, RowList } from '@/app/_controls/RowList';
import { takingBack, useNoting } from '@/app/_order/notes/useNoting';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { shortDay } from '@/app/_words/orders/orderDayWords';
import { payoutWords } from '@/app/_words/orders/orderMoneyWords';
import { paymentKindWords, paymentWayWords } from '@/app/_words/orders/orderStepWords';
import { type OrderPayment, withPayouts } from '@/lib/orders/money/payments';
import styles from './Money.module.css';
import { PayoutNote } from './PayoutNote';

type PaymentListProps = Readonly<{ on: OrderOnScreen; payments: readonly OrderPayment[] }>;

/** Payments as they were noted. None is ever changed: that it reached the bank is noted beside it. */
export function PaymentList({ on, payments }: PaymentListProps) {
  const { workspace, today, locale } = on;
  const [open, setOpen] = useState<string | null>(null);
  const { problem, note } = useNoting(on);
  const close = () => {
    setOpen(null);
    focusById('order-money-heading');
  };
  return (
    <>
      <RowList label="Payments">
        {payments.map((payment) => {
          const { id, body } = payment.entry;
          const { kind, amountMinor, currency, day, way, note: text } = body;
          const sign = kind === 'payment' ? '' : '−';
          const words = `${sign}${minorMoney(amountMinor, currency, locale)}`;
          const spoken = `${words} of ${shortDay(day, today, locale)}`;
          return (
            <ListRow
              key={workspace.firstId(id)}
              acts={
                <>
                  <Button
                    kind="quiet"
                    spoken={`At the bank: ${spoken}`}
                    expanded={open === id}
                    onPress={() => setOpen(open === id ? null : id)}
                  >
                    At the bank
                  </Button>
                  <Button
                    kind="quiet"
                    spoken={`Take back ${spoken}`}
                    onPress={() => note(`Take back ${spoken}`, takingBack(withPayouts(payment)))}
                  >
                    Take back
                  </Button>
                </>
              }
              unfolded={
                open === id && <PayoutNote on={on} payment={payment} onDone={close} onLeave={close} />
              }
            >
              <strong>{words}</strong> {kind !== 'payment' && `${paymentKindWords[kind].toLowerCase()}, `}
              {shortDay(day, today, locale)}, {paymentWayWords[way].toLowerCase()}
              <p className={styles.quiet}>
                {payoutWords(payment, today, locale)}
                {text !== '' && <bdi> · {text}</bdi>}
              </p>
            </ListRow>
          );
        })}
      </RowList>
      <p role="alert">{problem}</p>
    </>
  );
}
