'use client';

import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { ListRow, RowList } from '@/app/_controls/RowList';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from '@/app/_order/laterParts';
import { takingBack, useNoting } from '@/app/_order/notes/useNoting';
import type { FormsOfPart } from '@/app/_order/notes/useOpenForm';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { payoutWords } from '@/app/_words/orders/money/orderMoneyWords';
import { paymentKindWords, paymentWayWords } from '@/app/_words/orders/notes/orderStepWords';
import { shortDay } from '@/app/_words/orders/orderDayWords';
import { type OrderPayment, withPayouts } from '@/lib/orders/money/payments';
import styles from './Money.module.css';

type PaymentListProps = Readonly<{
  on: OrderOnScreen;
  payments: readonly OrderPayment[];
  /** That of each payment, by its entry. */
  forms: FormsOfPart;
}>;

/** Payments as they were noted. None is ever changed: that it reached the bank is noted beside it. */
export function PaymentList({ on, payments, forms }: PaymentListProps) {
  const { workspace, today, locale } = on;
  const { open, show, formOf } = forms;
  const { problem, note } = useNoting(on);
  const close = () => {
    show(null);
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
                    onPress={() => show(open === id ? null : id)}
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
                open === id && (
                  <LaterPart
                    part={laterParts.payout}
                    what="The form"
                    props={{ on, payment, form: formOf(id), onDone: close, onLeave: close }}
                  />
                )
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
