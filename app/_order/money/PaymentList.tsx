'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { ListRow, RowList } from '@/app/_controls/RowList';
import { useNoting } from '@/app/_order/notes/useNoting';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { shortDay } from '@/app/_words/orders/orderDayWords';
import { payoutWords } from '@/app/_words/orders/orderMoneyWords';
import { paymentKindWords, paymentWayWords } from '@/app/_words/orders/orderStepWords';
import type { NotedOf } from '@/lib/orders/orderFacts';
import styles from './Money.module.css';
import { PaymentNote } from './PaymentNote';

type PaymentListProps = Readonly<{ on: OrderOnScreen; payments: readonly NotedOf<'payment'>[] }>;

/** Payments as they were noted. None is ever changed: one that is noted anew takes the place of the one before. */
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
          const { id, body } = payment;
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
                    spoken={`Fee or bank of ${spoken}`}
                    expanded={open === id}
                    onPress={() => setOpen(open === id ? null : id)}
                  >
                    Fee or bank
                  </Button>
                  <Button
                    kind="quiet"
                    spoken={`Take back ${spoken}`}
                    onPress={() => note(`Take back ${spoken}`, [{ kind: 'takeBack', body: { entryId: id } }])}
                  >
                    Take back
                  </Button>
                </>
              }
              unfolded={
                open === id && (
                  <PaymentNote on={on} before={payment} dueMinor={null} onDone={close} onLeave={close} />
                )
              }
            >
              <strong>{words}</strong> {kind !== 'payment' && `${paymentKindWords[kind].toLowerCase()}, `}
              {shortDay(day, today, locale)}, {paymentWayWords[way].toLowerCase()}
              <p className={styles.quiet}>
                {payoutWords(body, today, locale)}
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
