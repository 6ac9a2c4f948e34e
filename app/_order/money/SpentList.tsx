'use client';

import { KeptFileButton } from '@/app/_attachments/KeptFileButton';
import { Button } from '@/app/_controls/Button';
import { ListRow, RowList } from '@/app/_controls/RowList';
import { useNoting } from '@/app/_order/notes/useNoting';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { expenseWords } from '@/app/_words/orders/money/orderMoneyWords';
import { shortDay } from '@/app/_words/orders/orderDayWords';
import styles from './Money.module.css';

/** What was spent for the order; stock that moved for it is seen where it lies. */
export function SpentList({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { standing, workspace, today, locale, formatter, facts } = on;
  const { spent, unpriced, currency } = standing.money;
  const { problem, note } = useNoting(on);
  return (
    <>
      <RowList>
        {spent.map(({ entryId, day, what, kind, amountMinor }) => {
          const expense = facts.happened.find(({ id }) => id === entryId);
          const receipt = expense?.kind === 'expense' ? expense.body.receipt : null;
          const name = kind === 'stock' ? `Stock, ${what}` : what;
          return (
            <ListRow
              key={workspace.firstId(entryId)}
              acts={
                <>
                  {receipt !== null && <KeptFileButton attachment={receipt} readFile={workspace.readFile} />}
                  {kind !== 'stock' && (
                    <Button
                      kind="quiet"
                      spoken={`Take back ${name}, ${minorMoney(amountMinor, currency, locale)}`}
                      onPress={() => note(`Take back ${name}`, [{ kind: 'takeBack', body: { entryId } }])}
                    >
                      Take back
                    </Button>
                  )}
                </>
              }
            >
              <strong>{minorMoney(amountMinor, currency, locale)}</strong> <bdi>{name}</bdi>
              <p className={styles.quiet}>
                {shortDay(day, today, locale)}
                {kind !== 'stock' && `, ${expenseWords[kind].toLowerCase()}`}
              </p>
            </ListRow>
          );
        })}
      </RowList>
      {unpriced.length > 0 && (
        <p className={styles.caution}>
          {formatter.count(unpriced.length, 'move')} of stock for this order without a price: what was spent
          is not all known. Note the receipt.
        </p>
      )}
      <p role="alert">{problem}</p>
    </>
  );
}
