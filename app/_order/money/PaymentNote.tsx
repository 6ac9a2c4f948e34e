'use client';

import { Fold } from '@/app/_controls/Fold';
import { AmountField } from '@/app/_fields/AmountField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { TextField } from '@/app/_fields/TextField';
import { useTypedChoice, useTypedNumber, useTypedText } from '@/app/_fields/useTyped';
import { choicesOf } from '@/app/_order/notes/choicesOf';
import { NoteFrame } from '@/app/_order/notes/NoteFrame';
import styles from '@/app/_order/notes/Notes.module.css';
import { quoteOut } from '@/app/_order/notes/quoteOut';
import type { StepNoteProps } from '@/app/_order/notes/stepNote';
import { useNoting } from '@/app/_order/notes/useNoting';
import { paymentTold } from '@/app/_words/orders/money/orderMoneyWords';
import { paymentKindWords, paymentWayWords } from '@/app/_words/orders/notes/orderStepWords';
import { settlement } from '@/lib/orders/money/settlement';
import { numberLimits, textLimits } from '@/shared/limits';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import { type Payment, paymentSchema } from '@/shared/schemas/orderEvents';

type PaymentNoteProps = StepNoteProps &
  Readonly<{
    /** What is due, whole minor units; null where nothing is, or nobody knows. */
    dueMinor: number | null;
    /** What most likely happened; money that came unless told. */
    kind?: Payment['kind'];
  }>;

/** Money that came or went back: how much and how. */
export function PaymentNote({
  on,
  form,
  dueMinor,
  kind: likely = 'payment',
  onDone,
  onLeave,
}: PaymentNoteProps) {
  const { standing, orderId, locale } = on;
  const { currency, receivedMinor } = standing.money;
  const left = settlement(standing);
  const totalMinor = left === null ? standing.money.totalMinor : left.owedMinor;
  const units = (minor: number) => fromMinor(minor as MinorUnits, currency);
  const [kind, setKind] = useTypedChoice(form, 'kind', paymentKindWords, likely);
  const typed = useTypedNumber(form, 'amount', dueMinor === null || dueMinor === 0 ? null : units(dueMinor));
  const [way, setWay] = useTypedChoice(form, 'way', paymentWayWords, 'transfer');
  const fee = useTypedNumber(form, 'fee');
  const text = useTypedText(form, 'note');
  const { problem, note } = useNoting(on, form);
  const amountMinor = typed.value === null ? null : toMinor(typed.value, currency);
  const feeMinor = fee.value === null ? 0 : toMinor(fee.value, currency);
  const told = paymentTold({ kind, amountMinor, feeMinor }, { totalMinor, receivedMinor }, currency, locale);
  // Found again after a reload: nothing that was typed is folded away.
  const isMoreTyped =
    fee.value !== null || fee.half.recall() !== null || text.value !== '' || text.half.recall() !== null;
  const missing = amountMinor === null ? 'How much comes first.' : undefined;
  const enter = (day: string) => {
    if (amountMinor === null) return;
    const body = { orderId, day, kind, amountMinor, currency, way, feeMinor, note: text.value.trim() };
    if (note(paymentKindWords[kind], [{ kind: 'payment', body }])) onDone();
  };
  return (
    <NoteFrame name="Payment" {...{ on, form, missing, problem, onLeave }} out={quoteOut(on)} onEnter={enter}>
      <FieldGroup>
        <AmountField
          label="How much"
          currency={currency}
          minorLimits={numberLimits(paymentSchema, ['amountMinor'])}
          {...typed}
        />
        <ChoiceField
          label="What happened"
          value={kind}
          choices={choicesOf(paymentKindWords)}
          onCommit={setKind}
        />
        <ChoiceField label="How" value={way} choices={choicesOf(paymentWayWords)} onCommit={setWay} />
      </FieldGroup>
      {told !== null && (
        <p className={told.isCaution ? styles.caution : styles.told} role="status">
          {told.sentence}
        </p>
      )}
      <Fold summary="Fee, note" line="may be left out" isOpenAtFirst={isMoreTyped}>
        <div className={styles.more}>
          <FieldGroup>
            <AmountField
              label="Fee kept back"
              currency={currency}
              minorLimits={numberLimits(paymentSchema, ['feeMinor'])}
              {...fee}
              hint="Empty where there was none."
            />
          </FieldGroup>
          <TextField
            label="Note"
            width="full"
            {...text}
            {...textLimits(paymentSchema, ['note'])}
            hint="May stay empty."
          />
        </div>
      </Fold>
    </NoteFrame>
  );
}
