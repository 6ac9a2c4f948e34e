import { otherMoneyWords } from '@/app/_words/orders/money/otherMoneyWords';
import type { OrderMoney } from '@/lib/orders/money/orderMoney';
import styles from './Money.module.css';

/** What of an order’s money is told and in no sum: other currencies, receipts that pay for stock, the bank. */
export function OtherMoney({ money, locale }: Readonly<{ money: OrderMoney; locale: string }>) {
  const lines = otherMoneyWords(money, locale);
  if (lines.length === 0) return null;
  return (
    <ul className={styles.told}>
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}
