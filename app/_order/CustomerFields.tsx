'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { newId } from '@/app/_documents/newId';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { TextField } from '@/app/_fields/TextField';
import { textLimits } from '@/shared/limits';
import { customerSchema } from '@/shared/schemas/customer';
import styles from './OrderRoom.module.css';
import type { OrderOnScreen } from './orderOnScreen';

const NEW = 'new';

/** Whom it is for: one who is there, or a new one by name; and whom of them to write to. */
export function CustomerFields({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { workspace, orderId, order, customer } = on;
  const [isNew, setNew] = useState(false);
  const [name, setName] = useState('');
  const known = Object.entries(workspace.customers)
    .filter(([id, one]) => one.erasedOn === null || id === order.customerId)
    .map(([value, one]) => ({ value, label: one.name }))
    .toSorted((one, other) => one.label.localeCompare(other.label));
  const choose = (id: string) => {
    setNew(id === NEW);
    if (id !== NEW)
      workspace.changeOrder(orderId, 'Customer', (now) => ({
        ...now,
        customerId: id,
        // People and addresses are those of the one before.
        personId: null,
        delivery: { ...now.delivery, addressId: null },
      }));
  };
  const add = () => {
    const id = newId();
    const outcome = workspace.edit(name.trim(), [
      { do: 'add', kind: 'customer', id, body: customerSchema.parse({ name }) },
      {
        ...{ do: 'change', kind: 'order', id: orderId },
        to: (now: typeof order) => ({
          ...now,
          customerId: id,
          personId: null,
          delivery: { ...now.delivery, addressId: null },
        }),
      },
    ]);
    if (outcome.state !== 'shown') return;
    setNew(false);
    setName('');
  };
  return (
    <>
      <FieldGroup>
        <ChoiceField
          id="order-customer"
          label="Customer"
          value={isNew ? NEW : order.customerId}
          choices={[...known, { value: NEW, label: 'A new customer' }]}
          unchosen="Nobody named yet"
          onCommit={choose}
        />
        {customer !== null && customer.people.length > 1 && (
          <ChoiceField
            label="Whom to write to"
            value={order.personId ?? customer.people[0]?.id ?? null}
            choices={customer.people.map(({ id, name: label }) => ({ value: id, label }))}
            onCommit={(personId) =>
              workspace.changeOrder(orderId, 'Whom to write to', (now) => ({ ...now, personId }))
            }
          />
        )}
      </FieldGroup>
      {isNew && (
        <EntryForm
          className={styles.newCustomer}
          label="A new customer"
          missing={name.trim() === '' ? 'The name comes first.' : undefined}
          onEnter={add}
        >
          <TextField
            label="Name of the new customer"
            value={name}
            {...textLimits(customerSchema, ['name'])}
            onCommit={setName}
          />
          <Button type="submit" blockedBy={name.trim() === '' ? 'The name comes first.' : undefined}>
            Add the customer
          </Button>
        </EntryForm>
      )}
    </>
  );
}
