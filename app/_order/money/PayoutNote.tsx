'use client';

import { AmountField } from '@/app/_fields/AmountField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { TextField } from '@/app/_fields/TextField';
import { useTypedNumber, useTypedText } from '@/app/_fields/useTyped';
import { NoteFrame } from '@/app/_order/notes/NoteFrame';
import type { StepNoteProps } from '@/app/_order/notes/stepNote';
import { takingBack, useNoting } from '@/app/_order/notes/useNoting';
import type { OrderPayment } from '@/lib/orders/money/payments';
import { numberLimits, textLimits } from '@/shared/limits';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import { payoutSchema } from '@/shared/schemas/orderEvents';

/** A payment reached the bank: on which day, under which reference, and what was kept back of it. */
export function PayoutNote({
  on,
  form,
  payment,
  onDone,
  onLeave,
}: StepNoteProps & Readonly<{ payment: OrderPayment }>) {
  const { entry, payouts, feeMinor } = payment;
  const { currency } = entry.body;
  const last = payouts.at(-1)?.body;
  const fee = useTypedNumber(
    form,
    'fee',
    feeMinor === 0 ? null : fromMinor(feeMinor as MinorUnits, currency),
  );
  const reference = useTypedText(form, 'reference', last?.reference);
  const { problem, note } = useNoting(on, form);
  const enter = (day: string) => {
    const body = {
      ...{ orderId: on.orderId, paymentId: entry.id, day, reference: reference.value.trim() },
      feeMinor: fee.value === null ? 0 : toMinor(fee.value, currency),
    };
    const isNoted = note('At the bank', [
      ...takingBack(payouts.map(({ id }) => id)),
      { kind: 'payout', body },
    ]);
    if (isNoted) onDone();
  };
  return (
    <NoteFrame
      name="At the bank"
      {...{ on, form, problem, onLeave }}
      {...(last !== undefined && { day: last.day })}
      onEnter={enter}
    >
      <FieldGroup>
        <AmountField
          label="Fee kept back"
          currency={currency}
          minorLimits={numberLimits(payoutSchema, ['feeMinor'])}
          {...fee}
          hint="In all; empty where there was none."
        />
        <TextField
          label="Reference there"
          width="narrow"
          {...reference}
          {...textLimits(payoutSchema, ['reference'])}
          hint="May stay empty."
        />
      </FieldGroup>
    </NoteFrame>
  );
}
