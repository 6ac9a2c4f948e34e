'use client';

import { Button } from '@/app/_controls/Button';
import { newId } from '@/app/_documents/newId';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import styles from '@/app/_orderPapers/OrderPapers.module.css';
import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import { orderChargeWords } from '@/app/_words/orders/quote/orderChargeWords';
import { mostEntries, numberLimits, textLimits } from '@/shared/limits';
import { type OrderCharge, orderSchema } from '@/shared/schemas/order';
import { currencyDigits } from '@/shared/tables/currencies';
import type { OrderFields } from './orderFields';

type QuoteChargesProps = Readonly<{ of: OrderOnPaper; fields: OrderFields }>;

/** What is asked beside the pieces: once for the order, as prices are written. */
export function QuoteCharges({ of, fields }: QuoteChargesProps) {
  const { order, change } = fields;
  const { currency } = of.workspace.workshop;
  const most = mostEntries(orderSchema, ['charges']);
  const setCharge = (charge: OrderCharge, to: Partial<OrderCharge>, field: string) =>
    change(
      'Charge',
      (now) => ({
        ...now,
        charges: now.charges.map((one) => (one.id === charge.id ? { ...one, ...to } : one)),
      }),
      `charge ${charge.id} ${field}`,
    );
  return (
    <div className={styles.list}>
      {order.charges.map((charge) => (
        <div key={charge.id} className={styles.line}>
          <TextField
            label="What"
            value={charge.what}
            needed
            longest={textLimits(orderSchema, ['charges', 0, 'what']).longest}
            onCommit={(what) => setCharge(charge, { what }, 'what')}
          />
          <NumberField
            label="Amount"
            unit={currency}
            value={charge.amount}
            needed
            minDecimals={currencyDigits(currency) ?? 0}
            {...numberLimits(orderSchema, ['charges', 0, 'amount'])}
            hint={charge.amount === 0 ? 'The paper says “included”.' : undefined}
            onCommit={(amount) => amount !== null && setCharge(charge, { amount }, 'amount')}
          />
          <Button
            kind="quiet"
            spoken={`Take off ${charge.what}`}
            onPress={() =>
              change(`Take ${charge.what} off`, (now) => ({
                ...now,
                charges: now.charges.filter(({ id }) => id !== charge.id),
              }))
            }
          >
            Take off
          </Button>
        </div>
      ))}
      <ChoiceField
        label="Add a charge"
        value={null}
        unchosen={order.charges.length >= most ? `An order takes ${most}` : 'Choose what'}
        choices={
          order.charges.length >= most
            ? []
            : Object.entries(orderChargeWords).map(([value, label]) => ({ value, label }))
        }
        onCommit={(kind) => {
          const found = Object.entries(orderChargeWords).find(([key]) => key === kind);
          if (found === undefined) return;
          const charge = orderSchema.shape.charges
            .unwrap()
            .element.safeParse({ id: newId(), kind, what: found[1], amount: 0 });
          if (charge.success)
            change(`Charge ${found[1]}`, (now) => ({ ...now, charges: [...now.charges, charge.data] }));
        }}
      />
    </div>
  );
}
