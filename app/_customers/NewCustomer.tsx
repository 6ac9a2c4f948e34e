'use client';

import Link from 'next/link';
import { useEffect, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import sheet from '@/app/_controls/ListSheet.module.css';
import { EntryForm } from '@/app/_fields/EntryForm';
import { TextField } from '@/app/_fields/TextField';
import { foldedText } from '@/lib/drafts/jobSearch';
import { textLimits } from '@/shared/limits';
import { type Customer, customerSchema } from '@/shared/schemas/customer';
import styles from './Customers.module.css';

type NewCustomerProps = Readonly<{
  customers: Readonly<Record<string, Customer>>;
  onAdd: (name: string) => void;
  onLeave: () => void;
}>;

const NAME = 'customers-new-name';

/** A name is enough to begin with. Two of one name are taken, and told. */
export function NewCustomer({ customers, onAdd, onLeave }: NewCustomerProps) {
  const [name, setName] = useState('');
  useEffect(() => focusById(NAME), []);
  const same = Object.entries(customers).find(
    ([, one]) => one.erasedOn === null && foldedText(one.name) === foldedText(name),
  );
  const missing = name.trim() === '' ? 'The name is missing.' : undefined;
  return (
    <EntryForm label="New customer" className={sheet.adding} missing={missing} onEnter={() => onAdd(name)}>
      <TextField
        label="Name of the club, shop or person"
        id={NAME}
        value={name}
        {...textLimits(customerSchema, ['name'])}
        caution={same === undefined ? undefined : 'Somebody of this name is here already.'}
        onCommit={setName}
      />
      <div className={styles.ends}>
        <Button kind="strong" type="submit" blockedBy={missing}>
          Add
        </Button>
        <Button kind="quiet" onPress={onLeave}>
          Leave it
        </Button>
        {same !== undefined && <Link href={`/customers/${same[0]}`}>See who is here</Link>}
      </div>
    </EntryForm>
  );
}
