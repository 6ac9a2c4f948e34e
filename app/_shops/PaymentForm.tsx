'use client';

import { useState } from 'react';
import { AmountField } from '@/app/_fields/AmountField';
import { DateField } from '@/app/_fields/DateField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type { SettledStatement } from '@/lib/stall/shops/shopStanding';
import { numberLimits } from '@/shared/limits';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import { shopPaymentSchema } from '@/shared/schemas/stallEvents';
import { FormActs } from './FormActs';
import styles from './Shops.module.css';
import type { ShopOnScreen } from './shopOnScreen';

type PaymentFormProps = Readonly<{ on: ShopOnScreen; statement: SettledStatement; onDone: () => void }>;

/** Money of a shop for one of its statements: what is open unless told otherwise. */
export function PaymentForm({ on, statement: { entry, openMinor }, onDone }: PaymentFormProps) {
  const { workspace, shopId, shop, today, locale } = on;
  const { currency } = entry.body;
  const [day, setDay] = useState(today);
  const [amount, setAmount] = useState<number | null>(
    openMinor > 0 ? fromMinor(openMinor as MinorUnits, currency) : null,
  );
  const amountMinor = amount === null ? null : toMinor(amount, currency);
  const over = amountMinor === null ? 0 : amountMinor - openMinor;
  const missing = amountMinor === null || amountMinor === 0 ? 'How much comes first.' : undefined;
  const enter = () => {
    if (amountMinor === null) return;
    const body = { shopId, statementId: entry.id, day, amountMinor, currency };
    if (workspace.note(`Payment of ${shop.name}`, [{ kind: 'shopPayment', body }]).state === 'shown')
      onDone();
  };
  return (
    <EntryForm label="Payment" className={styles.form} missing={missing} onEnter={enter}>
      <FieldGroup pairs>
        <AmountField
          label="How much"
          currency={currency}
          minorLimits={numberLimits(shopPaymentSchema, ['amountMinor'])}
          value={amount}
          caution={
            over > 0
              ? `${minorMoney(over, currency, locale)} more than is open. Is the amount right?`
              : undefined
          }
          onCommit={setAmount}
        />
        <DateField label="On" width="narrow" needed value={day} onCommit={(to) => setDay(to ?? today)} />
      </FieldGroup>
      <FormActs words="Note the payment" missing={missing} onLeave={onDone} />
    </EntryForm>
  );
}
