'use client';

import { AmountField } from '@/app/_fields/AmountField';
import { TextField } from '@/app/_fields/TextField';
import { useTypedNumber, useTypedText } from '@/app/_fields/useTyped';
import { numberLimits, textLimits } from '@/shared/limits';
import { toMinor } from '@/shared/money';
import { orderEventSchema } from '@/shared/schemas/orderEvents';
import { NoteFrame } from './NoteFrame';
import styles from './Notes.module.css';
import type { StepNoteProps } from './stepNote';
import { useNoting } from './useNoting';

/** Something else is wanted after the yes: what, and what it costs. */
export function ChangeNote({ on, form, onDone, onLeave }: StepNoteProps) {
  const { currency } = on.standing.money;
  const wish = useTypedText(form, 'wish');
  const amount = useTypedNumber(form, 'amount');
  const { problem, noteSteps } = useNoting(on, form);
  const missing =
    wish.value.trim() === ''
      ? 'What they want comes first.'
      : amount.value === null
        ? 'What it costs comes first; 0 where you ask nothing for it.'
        : undefined;
  return (
    <NoteFrame
      name="Change of the order"
      {...{ on, form, missing, problem, onLeave }}
      onEnter={(day) => {
        if (amount.value === null) return;
        const amountMinor = toMinor(amount.value, currency);
        if (noteSteps(day, [{ what: 'change', wish: wish.value.trim(), amountMinor, currency }])) onDone();
      }}
    >
      <TextField
        label="What they want"
        {...wish}
        rows={2}
        width="full"
        {...textLimits(orderEventSchema, ['step', 'wish'])}
      />
      <AmountField
        label="What it costs"
        {...{ currency }}
        minorLimits={numberLimits(orderEventSchema, ['step', 'amountMinor'])}
        {...amount}
        hint="As the prices of the quote are written; its tax is added where theirs is."
      />
      <p className={styles.told}>The jobs do not change by it: set pieces and pictures there.</p>
      <p className={styles.told}>
        Where it costs them less, the paper for it is a new quote, and once that is billed a credit note.
      </p>
    </NoteFrame>
  );
}
