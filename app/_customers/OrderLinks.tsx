import Link from 'next/link';
import type { Formatter } from '@/app/_words/formatter';
import styles from './Customers.module.css';
import type { OrderOfCustomer } from './customerOrders';

type OrderLinksProps = Readonly<{ orders: readonly OrderOfCustomer[]; formatter: Formatter }>;

/** What a customer ordered, the latest first. */
export function OrderLinks({ orders, formatter }: OrderLinksProps) {
  if (orders.length === 0) return <p className={styles.quiet}>New enquiries are noted under Orders.</p>;
  return (
    <ul className={styles.orders}>
      {orders.map(({ id, order, called, enquiredOn }) => (
        <li key={id} className={styles.order}>
          <Link href={`/orders/${id}`}>
            <bdi>{order.name}</bdi>
          </Link>{' '}
          <span className={styles.quiet}>
            {[called === order.name ? '' : called, enquiredOn === null ? '' : formatter.day(enquiredOn)]
              .filter((one) => one !== '')
              .join(', ')}
          </span>
        </li>
      ))}
    </ul>
  );
}
