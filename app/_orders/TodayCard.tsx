'use client';

import { Button } from '@/app/_controls/Button';
import { ButtonLink } from '@/app/_controls/ButtonLink';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import { todayAnswer, todayWords } from '@/app/_words/orders/board/todayWords';
import type { todayList } from '@/lib/orders/board/todayList';
import styles from './TodayCard.module.css';
import { todayAddress, todayRows } from './todayRows';
import type { OrderActions } from './useOrderActions';

type TodayCardProps = Readonly<{
  items: ReturnType<typeof todayList>;
  book: OrderBook;
  /** How many rows are shown; the rest is told. */
  rows: number;
  onMore: () => void;
  actions: OrderActions;
  workspace: Pick<ReadyWorkspace, 'customers' | 'workshop'>;
}>;

/** What today asks for, the most urgent first; each with the one way to it. */
export function TodayCard({ items, book, rows, onMore, actions, workspace }: TodayCardProps) {
  const [first, rest] = todayAnswer(items.length);
  const more = items.length - rows;
  return (
    <section className={styles.card} aria-labelledby="today-heading">
      <h2 className={styles.heading} id="today-heading" tabIndex={-1}>
        Today
      </h2>
      <p className={styles.answer}>
        <strong>{first}</strong> {rest}
      </p>
      {items.length > 0 && (
        <ul className={styles.rows}>
          {todayRows(items.slice(0, rows), book, workspace).map((row) => {
            const { order, openItem } = row;
            const about = { ...row, missing: openItem?.what ?? null };
            const words = todayWords(row.item, about, book.today, workspace.workshop);
            const spoken = `${words.button}: ${words.what}`;
            return (
              <li className={styles.row} key={row.key}>
                <div className={styles.words}>
                  <p className={styles.what}>{words.what}</p>
                  <p className={styles.why}>{words.why}</p>
                </div>
                {order !== null && openItem !== null ? (
                  <Button
                    spoken={spoken}
                    onPress={() => {
                      // The row goes with the button.
                      document.getElementById('today-heading')?.focus();
                      actions.itemCame(order, openItem.id);
                    }}
                  >
                    {words.button}
                  </Button>
                ) : (
                  <ButtonLink href={todayAddress(row)} spoken={spoken}>
                    {words.button}
                  </ButtonLink>
                )}
              </li>
            );
          })}
        </ul>
      )}
      {more > 0 && (
        <Button kind="quiet" onPress={onMore}>
          {more} more
        </Button>
      )}
    </section>
  );
}
