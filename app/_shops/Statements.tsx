'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import { ListRow, RowList } from '@/app/_controls/RowList';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { settledWords } from '@/app/_words/stall/shopWords';
import { type SettledStatement, takenBackWith } from '@/lib/stall/shops/shopStanding';
import { PaymentForm } from './PaymentForm';
import styles from './Shops.module.css';
import type { ShopOnScreen } from './shopOnScreen';

/** What a shop said and paid, the last first. A statement is taken back with what it took off the shelf. */
export function Statements({ on }: Readonly<{ on: ShopOnScreen }>) {
  const { workspace, standing, formatter, locale } = on;
  const [paying, setPaying] = useState<string | null>(null);
  const [removed, setRemoved] = useState<string | null>(null);
  const takeBack = (statement: SettledStatement) => {
    const label = `Take back the statement of ${formatter.day(statement.entry.body.day)}`;
    const ids = takenBackWith(statement, workspace.entries.stockMove);
    workspace.note(
      label,
      ids.map((entryId) => ({ kind: 'takeBack' as const, body: { entryId } })),
    );
    setRemoved(label);
  };
  return (
    <>
      <RowList label="Statements">
        {standing.statements.map((statement) => {
          const { id, body } = statement.entry;
          const day = formatter.day(body.day);
          const sold = body.rows.reduce((sum, row) => sum + row.sold, 0);
          const missing = body.rows.reduce((sum, row) => sum + row.missing, 0);
          return (
            <ListRow
              key={workspace.firstId(id)}
              acts={
                <>
                  {statement.openMinor > 0 && paying !== id && (
                    <Button spoken={`Note a payment for ${day}`} onPress={() => setPaying(id)}>
                      Note a payment
                    </Button>
                  )}
                  <Button
                    kind="quiet"
                    spoken={`Take back the statement of ${day}`}
                    onPress={() => takeBack(statement)}
                  >
                    Take back
                  </Button>
                </>
              }
              unfolded={
                paying === id && <PaymentForm {...{ on, statement }} onDone={() => setPaying(null)} />
              }
            >
              <strong>{minorMoney(body.dueMinor, body.currency, locale)}</strong>{' '}
              {settledWords(statement, locale)}
              <p className={styles.quiet}>
                {day}: {formatter.count(sold, 'piece')} sold
                {missing > 0 && `, ${formatter.number(missing, 0)} missing`}
              </p>
            </ListRow>
          );
        })}
      </RowList>
      <RemovedNote
        how="taken back"
        what={removed !== null && workspace.undoLabel === removed ? removed.replace(/^Take back /, '') : null}
        onUndo={() => void workspace.undo()}
      />
    </>
  );
}
