'use client';

import { useState } from 'react';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { TextField } from '@/app/_fields/TextField';
import { choicesOf } from '@/app/_order/notes/choicesOf';
import { NoteFrame } from '@/app/_order/notes/NoteFrame';
import { type FileDraft, OneFile } from '@/app/_order/notes/OneFile';
import type { StepNoteProps } from '@/app/_order/notes/stepNote';
import { useNoting } from '@/app/_order/notes/useNoting';
import { expenseWords } from '@/app/_words/orders/orderMoneyWords';
import { numberLimits, textLimits } from '@/shared/limits';
import { toMinor } from '@/shared/money';
import { type Expense, expenseSchema } from '@/shared/schemas/orderEvents';
import { AmountField } from './AmountField';

/** Money spent for the order: on what, how much, and the receipt. */
export function ExpenseNote({ on, onDone, onLeave }: StepNoteProps) {
  const { currency } = on.standing.money;
  const [what, setWhat] = useState('');
  const [kind, setKind] = useState<Expense['kind']>('blanks');
  const [amount, setAmount] = useState<number | null>(null);
  const [receipt, setReceipt] = useState<FileDraft | null>(null);
  const { problem, note } = useNoting(on);
  const missing = amount === null ? 'How much comes first.' : undefined;
  return (
    <NoteFrame
      name="Money spent"
      {...{ on, missing, problem, onLeave }}
      onEnter={(day) => {
        if (amount === null) return;
        const body: Expense = {
          ...{ orderId: on.orderId, day, kind, currency, amountMinor: toMinor(amount, currency) },
          // What nobody names is called as its kind is.
          ...{ what: what.trim() || expenseWords[kind], receipt: receipt?.attachment ?? null },
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
          value={amount}
          onCommit={setAmount}
        />
        <ChoiceField label="On what" value={kind} choices={choicesOf(expenseWords)} onCommit={setKind} />
        <TextField
          label="Which"
          value={what}
          {...textLimits(expenseSchema, ['what'])}
          hint="Such as 45 white shirts. May stay empty."
          onCommit={setWhat}
        />
      </FieldGroup>
      <OneFile label="Receipt; may be added now" purpose="receipt" value={receipt} onChange={setReceipt} />
    </NoteFrame>
  );
}
