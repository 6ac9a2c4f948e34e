'use client';

import { AmountField } from '@/app/_fields/AmountField';
import { useTypedNumber } from '@/app/_fields/useTyped';
import { blanksOnScreen } from '@/app/_order/waits/blanksOnScreen';
import { expenseWords } from '@/app/_words/orders/money/orderMoneyWords';
import { blanksNeededWords, reckonedHint, SPARES_UNKNOWN } from '@/app/_words/orders/waits/blanksNeededWords';
import { numberLimits } from '@/shared/limits';
import { fromMinor, toMinor } from '@/shared/money';
import { type Expense, expenseSchema } from '@/shared/schemas/orderEvents';
import styles from './Notes.module.css';
import { PlainNote } from './PlainNote';
import type { StepNoteProps } from './stepNote';

/** Blanks were ordered: how many of each size the jobs need, and what they cost, noted with it. */
export function BlanksOrderedNote(props: StepNoteProps) {
  const { orderId, workspace, standing, formatter } = props.on;
  const { currency } = standing.money;
  const blanks = blanksOnScreen(props.on);
  // What was noted for them already would be noted twice.
  const isFirst =
    standing.money.blanksMinor === 0 && !standing.steps.some(({ step }) => step.what === 'blanksOrdered');
  // As the jobs reckon it, until something is typed: the same currency is asked, for jobs know no other.
  const reckoned =
    blanks.cost === null || !isFirst || workspace.workshop.currency !== currency
      ? null
      : fromMinor(toMinor(blanks.cost.amount, currency), currency);
  const amount = useTypedNumber(props.form, 'amount', reckoned);
  const cost = (day: string): Expense | null =>
    amount.value === null
      ? null
      : {
          ...{ orderId, day, kind: 'blanks', currency, amountMinor: toMinor(amount.value, currency) },
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
      {blanks.needed.length > 0 && (
        <div>
          <p>The jobs need:</p>
          <ul className={styles.needed}>
            {blanks.needed.map((one) => (
              <li key={one.blankId}>{blanksNeededWords(one, formatter)}</li>
            ))}
          </ul>
          {blanks.needed.some(({ get }) => get === null) && <p className={styles.told}>{SPARES_UNKNOWN}</p>}
        </div>
      )}
      <AmountField
        label="What they cost"
        currency={currency}
        minorLimits={numberLimits(expenseSchema, ['amountMinor'])}
        {...amount}
        hint={
          reckoned !== null && amount.value === reckoned
            ? reckonedHint(blanks.cost?.withFreight === true)
            : 'May stay empty. What stands here is noted as money spent, too.'
        }
      />
    </PlainNote>
  );
}
