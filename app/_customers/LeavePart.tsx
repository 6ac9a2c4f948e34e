'use client';

import { removalWords } from '@/app/_words/customers/customerWords';
import { AskedRemove } from './AskedRemove';
import styles from './Customers.module.css';
import type { CustomerFields } from './customerFields';
import type { OrderOfCustomer } from './customerOrders';
import { EraseOnRequest } from './EraseOnRequest';

type LeavePartProps = Readonly<{
  fields: CustomerFields;
  orders: readonly OrderOfCustomer[];
  onRemoved: (label: string) => void;
}>;

/** Two ways of letting a customer go: removed for the maker, erased for the customer. */
export function LeavePart({ fields, orders, onRemoved }: LeavePartProps) {
  const { workspace, customerId, customer } = fields;
  const remove = () => {
    const label = `Remove ${customer.name}`;
    onRemoved(label);
    workspace.remove({ kind: 'customer', id: customerId }, label);
  };
  return (
    <div className={styles.rows}>
      <div>
        <p className={styles.words}>
          Removed, they are gone from your lists, and undo brings them back. What orders and papers say of
          them stays.
        </p>
        <AskedRemove
          what={customer.name}
          told={removalWords(
            customer.name,
            orders.map(({ called }) => called),
          )}
          onRemove={remove}
        />
      </div>
      <EraseOnRequest fields={fields} />
    </div>
  );
}
