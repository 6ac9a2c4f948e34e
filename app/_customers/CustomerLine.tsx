'use client';

import { OpenLine, OpenName } from '@/app/_controls/OpenLine';
import { erasedName, writtenToWords } from '@/app/_words/customers/customerWords';
import type { Formatter } from '@/app/_words/formatter';
import styles from './Customers.module.css';
import type { CustomerRow } from './customerOrders';

type CustomerLineProps = Readonly<{ row: CustomerRow; formatter: Formatter }>;

/** One customer of the list: who, whom to write to, and the order that came last. */
export function CustomerLine({ row: { id, customer, orders }, formatter }: CustomerLineProps) {
  const [last] = orders;
  const { erasedOn } = customer;
  return (
    <OpenLine className={styles.line}>
      <div>
        <OpenName href={`/customers/${id}`}>
          <bdi>{erasedOn === null ? customer.name : erasedName(erasedOn, formatter)}</bdi>
        </OpenName>
        {erasedOn === null && <p className={styles.quiet}>{writtenToWords(customer)}</p>}
      </div>
      <p className={styles.last}>
        {last === undefined ? (
          <span className={styles.quiet}>no order yet</span>
        ) : (
          <>
            <strong>{last.called}</strong>
            <span className={styles.quiet}>
              {last.enquiredOn !== null && formatter.day(last.enquiredOn)}
              {orders.length > 1 && `, ${formatter.count(orders.length, 'order')} in all`}
            </span>
          </>
        )}
      </p>
    </OpenLine>
  );
}
