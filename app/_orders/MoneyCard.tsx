import { classes } from '@/app/_controls/classes';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import type { TextContext } from '@/app/_words/formatter';
import { purseAnswer, purseFigures } from '@/app/_words/orders/board/purseWords';
import type { Purse } from '@/lib/orders/board/purse';
import styles from './MoneyCard.module.css';

type MoneyCardProps = Readonly<{
  all: readonly Purse[];
  book: Pick<OrderBook, 'of' | 'today'>;
  context: TextContext;
}>;

/** Money of all open orders, a purse for each currency: to come, in hand, late, asked, at worst. */
export function MoneyCard({ all, book, context }: MoneyCardProps) {
  const nameOf = (orderId: string) => book.of(orderId)?.facts.order.name ?? '';
  return (
    <section className={styles.card} aria-labelledby="money-heading">
      <h2 className={styles.heading} id="money-heading">
        Money
      </h2>
      {all.map((purse) => {
        const [first, rest] = purseAnswer(purse, context);
        const figures = purseFigures(purse, nameOf, book.today, context);
        return (
          <div className={styles.purse} key={purse.currency}>
            <p className={styles.answer}>
              <strong>{first}</strong> {rest}
            </p>
            {figures.length > 0 && (
              <dl className={styles.figures}>
                {figures.map(({ key, figure, line }) => (
                  <div className={styles.figure} key={key}>
                    <dt className={styles.line}>{line}</dt>
                    <dd className={classes(styles.amount, key === 'late' && styles.late)}>{figure}</dd>
                  </div>
                ))}
              </dl>
            )}
          </div>
        );
      })}
    </section>
  );
}
