'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import { ListRow, RowList } from '@/app/_controls/RowList';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { creditWords, settledWords, statementLine } from '@/app/_words/stall/shopWords';
import { type SettledStatement, takenBackWith } from '@/lib/stall/shops/shopStanding';
import { PaymentForm } from './PaymentForm';
import { Payments } from './Payments';
import styles from './Shops.module.css';
import type { ShopOnScreen } from './shopOnScreen';

/** What a shop said and paid, the last first. A statement is taken back with what it took off the shelf. */
export function Statements({ on }: Readonly<{ on: ShopOnScreen }>) {
  const { workspace, standing, formatter, locale } = on;
  const [paying, setPaying] = useState<string | null>(null);
  const [removed, setRemoved] = useState<string | null>(null);
  const takeBack = (what: string, ids: readonly string[]) => {
    const label = `Take back ${what}`;
    workspace.note(
      label,
      ids.map((entryId) => ({ kind: 'takeBack' as const, body: { entryId } })),
    );
    setRemoved(label);
  };
  const acts = (statement: SettledStatement) => {
    const { id, body } = statement.entry;
    const day = formatter.day(body.day);
    const what = `the statement of ${day}`;
    return (
      <>
        {statement.openMinor > 0 && paying !== id && (
          <Button spoken={`Note a payment for ${day}`} onPress={() => setPaying(id)}>
            Note a payment
          </Button>
        )}
        <Button
          kind="quiet"
          spoken={`Take back ${what}`}
          onPress={() => takeBack(what, takenBackWith(statement, workspace.entries.stockMove))}
        >
          Take back the statement
        </Button>
      </>
    );
  };
  return (
    <>
      {standing.credits.length > 0 && (
        <>
          <p className={styles.caution}>{creditWords(standing.credits, locale)}</p>
          <Payments {...{ on, takeBack }} label="Payments without a statement" payments={standing.credits} />
        </>
      )}
      <RowList label="Statements">
        {standing.statements.map((statement) => {
          const { id, body } = statement.entry;
          return (
            <ListRow
              key={workspace.firstId(id)}
              acts={acts(statement)}
              unfolded={
                <>
                  <Payments
                    {...{ on, takeBack }}
                    label={`Paid of the statement of ${formatter.day(body.day)}`}
                    payments={statement.payments}
                  />
                  {paying === id && <PaymentForm {...{ on, statement }} onDone={() => setPaying(null)} />}
                </>
              }
            >
              <strong>{minorMoney(body.dueMinor, body.currency, locale)}</strong>{' '}
              {settledWords(statement, locale)}
              <p className={styles.quiet}>
                {formatter.day(body.day)}: {statementLine(body, formatter)}
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
