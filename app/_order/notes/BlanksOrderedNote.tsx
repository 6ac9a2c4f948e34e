'use client';

import { useState } from 'react';
import { AmountField } from '@/app/_order/money/AmountField';
import { blanksNeededWords } from '@/app/_words/orders/blanksNeededWords';
import { expenseWords } from '@/app/_words/orders/orderMoneyWords';
import { blanksNeeded } from '@/lib/orders/bench/blanksNeeded';
import { numberLimits } from '@/shared/limits';
import { toMinor } from '@/shared/money';
import { type Expense, expenseSchema } from '@/shared/schemas/orderEvents';
import styles from './Notes.module.css';
import { PlainNote } from './PlainNote';
import type { StepNoteProps } from './stepNote';

/** Blanks were ordered: how many of each size the jobs need, and what they cost, noted with it. */
export function BlanksOrderedNote(props: StepNoteProps) {
  const { orderId, jobs, workspace, standing, formatter } = props.on;
  const { currency } = standing.money;
  const [amount, setAmount] = useState<number | null>(null);
  const needed = blanksNeeded(
    jobs.map(({ job }) => job),
    workspace.blanks,
  );
  const cost = (day: string): Expense | null =>
    amount === null
      ? null
      : {
          ...{ orderId, day, kind: 'blanks', currency, amountMinor: toMinor(amount, currency) },
          ...{ what: expenseWords.blanks, receipt: null },
        };
  return (
    <PlainNote
      {...props}
      what="blanksOrdered"
      also={(day) => {
        const body = cost(day);
        return body === null ? [] : [{ kind: 'expense', body }];
      }}
    >
      {needed.length > 0 && (
        <div>
          <p>The jobs need, in good pieces:</p>
          <ul className={styles.needed}>
            {needed.map((one) => (
              <li key={one.blankId}>{blanksNeededWords(one, formatter)}</li>
            ))}
          </ul>
          <p className={styles.told}>
            Spares for what is spoiled are extra: each job counts them with its making.
          </p>
        </div>
      )}
      <AmountField
        label="What they cost"
        currency={currency}
        minorLimits={numberLimits(expenseSchema, ['amountMinor'])}
        value={amount}
        hint="May stay empty. What stands here is noted as money spent, too."
        onCommit={setAmount}
      />
    </PlainNote>
  );
}
