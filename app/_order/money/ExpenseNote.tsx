'use client';

import { useState } from 'react';
import { type FileDraft, OneFile } from '@/app/_attachments/OneFile';
import { AmountField } from '@/app/_fields/AmountField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { currencyChoices } from '@/app/_fields/currencyChoices';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { TextField } from '@/app/_fields/TextField';
import { useTyped, useTypedChoice, useTypedNumber, useTypedText } from '@/app/_fields/useTyped';
import { choicesOf } from '@/app/_order/notes/choicesOf';
import { NoteFrame } from '@/app/_order/notes/NoteFrame';
import type { StepNoteProps } from '@/app/_order/notes/stepNote';
import { useNoting } from '@/app/_order/notes/useNoting';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { expenseWords } from '@/app/_words/orders/money/orderMoneyWords';
import { amountQuestion, currencyQuestion } from '@/app/_words/year/expenseQuestions';
import { numberLimits, textLimits } from '@/shared/limits';
import { toMinor } from '@/shared/money';
import { type Expense, expenseSchema } from '@/shared/schemas/orderEvents';

type ExpenseNoteProps = Omit<StepNoteProps, 'on'> &
  Readonly<{
    on: Pick<OrderOnScreen, 'workspace' | 'today' | 'formatter'>;
    /** Null where it is of no single order. */
    orderId: string | null;
    currency: string;
    /** It may have been paid in another currency. */
    isAnyCurrency?: boolean;
  }>;

/** Money spent, for an order or the workshop: on what, how much, and the receipt. */
export function ExpenseNote(props: ExpenseNoteProps) {
  const { on, orderId, currency: own, isAnyCurrency = false, form, onDone, onLeave } = props;
  const [currency, setCurrency] = useTyped(form, 'currency', expenseSchema.shape.currency, own);
  const what = useTypedText(form, 'what');
  const [kind, setKind] = useTypedChoice(form, 'kind', expenseWords, 'blanks');
  const amount = useTypedNumber(form, 'amount');
  const [receipt, setReceipt] = useState<FileDraft | null>(null);
  const { problem, note } = useNoting(on, form);
  const asked = amountQuestion(amount.value);
  const missing = amount.value === null ? 'How much comes first.' : undefined;
  return (
    <NoteFrame
      name="Money spent"
      {...{ on, form, missing, problem, onLeave }}
      isAsked={asked !== null}
      onEnter={(day) => {
        if (amount.value === null) return;
        const body: Expense = {
          ...{ orderId, day, kind, currency, amountMinor: toMinor(amount.value, currency) },
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
          caution={asked ?? undefined}
          {...amount}
        />
        {isAnyCurrency && (
          <ChoiceField
            label="Currency"
            value={currency}
            choices={currencyChoices(own)}
            caution={currencyQuestion(currency, own) ?? undefined}
            onCommit={setCurrency}
          />
        )}
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
