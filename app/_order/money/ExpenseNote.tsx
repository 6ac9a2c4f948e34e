'use client';

import { useState } from 'react';
import { type FileDraft, OneFile } from '@/app/_attachments/OneFile';
import { AmountField } from '@/app/_fields/AmountField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { TextField } from '@/app/_fields/TextField';
import { useTypedChoice, useTypedNumber, useTypedText } from '@/app/_fields/useTyped';
import { choicesOf } from '@/app/_order/notes/choicesOf';
import { NoteFrame } from '@/app/_order/notes/NoteFrame';
import type { StepNoteProps } from '@/app/_order/notes/stepNote';
import { useNoting } from '@/app/_order/notes/useNoting';
import { expenseWords } from '@/app/_words/orders/money/orderMoneyWords';
import { numberLimits, textLimits } from '@/shared/limits';
import { toMinor } from '@/shared/money';
import { type Expense, expenseSchema } from '@/shared/schemas/orderEvents';

/** Money spent for the order: on what, how much, and the receipt. */
export function ExpenseNote({ on, form, onDone, onLeave }: StepNoteProps) {
  const { currency } = on.standing.money;
  const what = useTypedText(form, 'what');
  const [kind, setKind] = useTypedChoice(form, 'kind', expenseWords, 'blanks');
  const amount = useTypedNumber(form, 'amount');
  const [receipt, setReceipt] = useState<FileDraft | null>(null);
  const { problem, note } = useNoting(on, form);
  const missing = amount.value === null ? 'How much comes first.' : undefined;
  return (
    <NoteFrame
      name="Money spent"
      {...{ on, form, missing, problem, onLeave }}
      onEnter={(day) => {
        if (amount.value === null) return;
        const body: Expense = {
          ...{ orderId: on.orderId, day, kind, currency, amountMinor: toMinor(amount.value, currency) },
          // What nobody names is called as its kind is.
          ...{ what: what.value.trim() || expenseWords[kind], receipt: receipt?.attachment ?? null },
        };
        const isNoted = note(
          'Money spent',
          [{ kind: 'expense', body }],
          receipt === null ? [] : [receipt.file],
        );
        if (isNoted) onDone();
      }}
    >
      <FieldGroup>
        <AmountField
          label="How much"
          currency={currency}
          minorLimits={numberLimits(expenseSchema, ['amountMinor'])}
          {...amount}
        />
        <ChoiceField label="On what" value={kind} choices={choicesOf(expenseWords)} onCommit={setKind} />
        <TextField
          label="Which"
          {...what}
          {...textLimits(expenseSchema, ['what'])}
          hint="Such as 45 white shirts. May stay empty."
        />
      </FieldGroup>
      <OneFile label="Receipt; may be added now" purpose="receipt" value={receipt} onChange={setReceipt} />
    </NoteFrame>
  );
}
