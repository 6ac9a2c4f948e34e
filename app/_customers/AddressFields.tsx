'use client';

import { useEffect, useState } from 'react';
import { focusById } from '@/app/_controls/focusById';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import { newId } from '@/app/_documents/newId';
import { typing } from '@/app/_documents/typing';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { TextField } from '@/app/_fields/TextField';
import { addressPurposeWords, addressRemovalWords } from '@/app/_words/customers/customerWords';
import { mostEntries, textLimits } from '@/shared/limits';
import { addressSchema, type CustomerAddress, customerSchema } from '@/shared/schemas/customer';
import { AddOne } from './AddOne';
import { AskedRemove } from './AskedRemove';
import styles from './Customers.module.css';
import type { CustomerFields } from './customerFields';
import type { OrderOfCustomer } from './customerOrders';

type AddressFieldsProps = Readonly<{ fields: CustomerFields; orders: readonly OrderOfCustomer[] }>;

const most = mostEntries(customerSchema, ['addresses']);
type Draft = Pick<CustomerAddress, 'purpose' | 'text'>;
const NEW = 'customer-new-address';

/** Where bills go, and goods. */
export function AddressFields({ fields, orders }: AddressFieldsProps) {
  const { workspace, customer, set } = fields;
  const { addresses } = customer;
  const [removed, setRemoved] = useState<string | null>(null);
  const [added, setAdded] = useState<Draft | null>(null);
  const isAdding = added !== null;
  useEffect(() => {
    if (isAdding) focusById(NEW);
  }, [isAdding]);
  const remove = (address: CustomerAddress, name: string) => {
    typing.ends();
    set(
      `Remove ${name}`,
      ['addresses'],
      addresses.filter(({ id }) => id !== address.id),
    );
    setRemoved(name);
  };
  const add = () => {
    if (added === null) return;
    typing.ends();
    set('Add an address', ['addresses', addresses.length], { ...added, id: newId() });
    setAdded(null);
  };
  const sentTo = (id: string) =>
    orders.filter(({ order }) => order.delivery.addressId === id).map(({ called }) => called);
  const missing = added?.text.trim() === '' ? 'The address is missing.' : undefined;
  return (
    <div className={styles.rows}>
      {addresses.length > 0 && (
        <ul className={styles.rows}>
          {addresses.map((address, index) => {
            const name = address.text.split('\n')[0] ?? '';
            return (
              <li key={address.id} className={styles.row}>
                <OneAddress
                  address={address}
                  needed
                  onSet={(label, key, value) => set(label, ['addresses', index, key], value)}
                />
                <div className={styles.ends}>
                  <AskedRemove
                    what={name}
                    told={addressRemovalWords(sentTo(address.id))}
                    onRemove={() => remove(address, name)}
                  />
                </div>
              </li>
            );
          })}
        </ul>
      )}
      <RemovedNote
        what={workspace.undoLabel === `Remove ${removed}` ? removed : null}
        onUndo={() => void workspace.undo()}
      />
      <AddOne
        words={{ begin: 'Add an address', form: 'A further address', add: 'Add it' }}
        most={addresses.length >= most ? most : null}
        isAdding={added !== null}
        missing={missing}
        onBegin={() => setAdded({ purpose: 'both', text: '' })}
        onAdd={add}
        onLeave={() => setAdded(null)}
      >
        {added !== null && (
          <OneAddress
            address={added}
            id={NEW}
            onSet={(_, key, value) => setAdded({ ...added, [key]: value })}
          />
        )}
      </AddOne>
    </div>
  );
}

// Helpers

type OneAddressProps = Readonly<{
  address: Draft;
  needed?: boolean;
  id?: string;
  onSet: (label: string, key: keyof Draft, value: string) => void;
}>;

const purposes = ['both', 'bills', 'goods'] as const;

function OneAddress({ address, needed = false, id, onSet }: OneAddressProps) {
  return (
    <FieldGroup>
      <TextField
        label="As on an envelope"
        id={id}
        rows={4}
        needed={needed}
        value={address.text}
        {...textLimits(addressSchema, ['text'])}
        onCommit={(text) => onSet('An address', 'text', text)}
      />
      <ChoiceField
        label="For"
        width="narrow"
        value={address.purpose}
        choices={purposes.map((value) => ({ value, label: addressPurposeWords[value] }))}
        onCommit={(purpose) => onSet('What an address is for', 'purpose', purpose)}
      />
    </FieldGroup>
  );
}
