'use client';

import { type ReactNode, useMemo } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Card } from '@/app/_controls/Card';
import { CardSection } from '@/app/_controls/CardSection';
import { PageHead } from '@/app/_controls/PageHead';
import { usePageName } from '@/app/_controls/usePageName';
import { EditableTitle } from '@/app/_fields/EditableTitle';
import { TextField } from '@/app/_fields/TextField';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { useOrderBook } from '@/app/_orderBook/useOrderBook';
import {
  addressesAnswer,
  ordersAnswer,
  peopleAnswer,
  taxAnswer,
  writtenToWords,
} from '@/app/_words/customers/customerWords';
import { formatterFor } from '@/app/_words/formatter';
import { textLimits } from '@/shared/limits';
import { type Customer, customerSchema } from '@/shared/schemas/customer';
import { AddressFields } from './AddressFields';
import styles from './Customers.module.css';
import type { CustomerFields } from './customerFields';
import { ordersByCustomer } from './customerOrders';
import { LeavePart } from './LeavePart';
import { OrderLinks } from './OrderLinks';
import { PeopleFields } from './PeopleFields';
import { TaxFields } from './TaxFields';

type CustomerEditorProps = Readonly<{
  customerId: string;
  customer: Customer;
  workspace: ReadyWorkspace;
  /** Told what undo calls it. */
  onRemoved: (label: string) => void;
}>;

/** A customer as one slip: each part with its answer, then its fields. */
export function CustomerEditor({ customerId, customer, workspace, onRemoved }: CustomerEditorProps) {
  usePageName(`${customer.name} · Pressminute`);
  const today = useToday();
  const formatter = formatterFor(workspace.workshop);
  const { board } = useOrderBook(workspace);
  const own = useMemo(() => ordersByCustomer(board).get(customerId) ?? [], [board, customerId]);
  const fields: CustomerFields = {
    workspace,
    customerId,
    customer,
    set: (label, path, value) =>
      void workspace.setField({ kind: 'customer', id: customerId }, label, path, value),
  };
  const parts: readonly Part[] = [
    {
      id: 'people',
      heading: 'People',
      answer: peopleAnswer(customer, formatter),
      body: <PeopleFields fields={fields} orders={own} />,
    },
    {
      id: 'addresses',
      heading: 'Addresses',
      answer: addressesAnswer(customer),
      body: <AddressFields fields={fields} orders={own} />,
    },
    {
      id: 'tax',
      heading: 'Language and tax',
      answer: taxAnswer(customer, today, formatter),
      body: <TaxFields fields={fields} />,
    },
    {
      id: 'orders',
      heading: 'Orders',
      answer: ordersAnswer(own, formatter),
      body: <OrderLinks orders={own} formatter={formatter} />,
    },
    {
      id: 'note',
      heading: 'Note',
      answer: null,
      body: (
        <TextField
          label="Only for you, on no paper"
          id="customer-note"
          width="full"
          rows={4}
          value={customer.note}
          {...textLimits(customerSchema, ['note'])}
          onCommit={(note) => fields.set('Note on a customer', ['note'], note)}
        />
      ),
    },
    {
      id: 'leave',
      heading: 'Remove or erase',
      answer: null,
      body: <LeavePart fields={fields} orders={own} onRemoved={onRemoved} />,
    },
  ];
  return (
    <>
      <PageHead
        title={
          <EditableTitle
            value={customer.name}
            label="Name of the customer"
            limits={textLimits(customerSchema, ['name'])}
            onCommit={(name) => fields.set('Name of a customer', ['name'], name)}
          />
        }
        line={<span className={styles.anyLength}>{writtenToWords(customer)}</span>}
      />
      <Card>
        {parts.map(({ id, heading, answer, body }, index) => (
          <CardSection
            key={id}
            id={id}
            numeral={index + 1}
            heading={heading}
            answer={
              answer && (
                <span className={styles.anyLength}>
                  <strong>{answer.strong}</strong>
                  {answer.rest}
                </span>
              )
            }
          >
            {body}
          </CardSection>
        ))}
      </Card>
    </>
  );
}

// Helpers

interface Part {
  readonly id: string;
  readonly heading: string;
  readonly answer: { readonly strong: string; readonly rest: string } | null;
  readonly body: ReactNode;
}
