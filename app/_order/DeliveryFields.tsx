'use client';

import Link from 'next/link';
import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { deliveryWords } from '@/app/_words/orders/deliveryWords';
import type { Order } from '@/shared/schemas/order';
import { choicesOf } from './notes/choicesOf';
import styles from './OrderRoom.module.css';
import type { OrderOnScreen } from './orderOnScreen';

/** How the goods get to the customer, and where. */
export function DeliveryFields({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { workspace, orderId, order, customer } = on;
  const { way, addressId, byPerson } = order.delivery;
  const set = (label: string, change: Partial<Order['delivery']>) =>
    workspace.changeOrder(orderId, label, (now) => ({ ...now, delivery: { ...now.delivery, ...change } }));
  const places = (customer?.addresses ?? []).filter(({ purpose }) => purpose !== 'bills');
  return (
    <>
      <FieldGroup>
        <ChoiceField
          label="How it gets to them"
          value={way}
          choices={choicesOf(deliveryWords)}
          unchosen="Not said yet"
          onCommit={(value) => set('How it gets to them', { way: value })}
        />
        {way !== 'fetched' && places.length > 0 && (
          <ChoiceField
            label="Where to"
            value={addressId ?? places[0]?.id ?? null}
            choices={places.map(({ id, text }) => ({ value: id, label: text.replaceAll('\n', ', ') }))}
            onCommit={(value) => set('Where to', { addressId: value })}
          />
        )}
        <CheckField
          label="Packed for each person apart"
          checked={byPerson}
          onCommit={(value) => set('Packed for each person', { byPerson: value })}
        />
      </FieldGroup>
      {(way === 'sent' || way === 'brought') && places.length === 0 && order.customerId !== null && (
        <p className={styles.caution}>
          No address takes goods. <Link href={`/customers/${order.customerId}`}>Add one to the customer</Link>
          .
        </p>
      )}
    </>
  );
}
