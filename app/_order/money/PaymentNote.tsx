'use client';

import { useState } from 'react';
import { Fold } from '@/app/_controls/Fold';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { DateField } from '@/app/_fields/DateField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { TextField } from '@/app/_fields/TextField';
import { choicesOf } from '@/app/_order/notes/choicesOf';
import { NoteFrame } from '@/app/_order/notes/NoteFrame';
import styles from '@/app/_order/notes/Notes.module.css';
import type { StepNoteProps } from '@/app/_order/notes/stepNote';
import { useNoting } from '@/app/_order/notes/useNoting';
import { paymentTold } from '@/app/_words/orders/orderMoneyWords';
import { paymentKindWords, paymentWayWords } from '@/app/_words/orders/orderStepWords';
import type { NotedOf } from '@/lib/orders/orderFacts';
import { numberLimits, textLimits } from '@/shared/limits';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import { type Payment, paymentSchema } from '@/shared/schemas/orderEvents';
import { AmountField } from './AmountField';

type PaymentNoteProps = StepNoteProps &
  Readonly<{
    /** What is due, whole minor units; null where nothing is, or nobody knows. */
    dueMinor: number | null;
    /** A payment that is noted anew, as when it reached the bank; null for a further one. */
    before?: NotedOf<'payment'> | null;
  }>;

/** Money that came or went back: how much, how, and when it reached the bank. */
export function PaymentNote({ on, dueMinor, before = null, onDone, onLeave }: PaymentNoteProps) {
  const { standing, orderId, locale } = on;
  const currency = before?.body.currency ?? standing.money.currency;
  const units = (minor: number) => fromMinor(minor as MinorUnits, currency);
  const [kind, setKind] = useState<Payment['kind']>(before?.body.kind ?? 'payment');
  const [amount, setAmount] = useState<number | null>(amountAtFirst(before, dueMinor, units));
  const [way, setWay] = useState<Payment['way']>(before?.body.way ?? 'transfer');
  const [fee, setFee] = useState<number | null>(before === null ? null : units(before.body.feeMinor));
  const [payoutDay, setPayoutDay] = useState(before?.body.payout?.day ?? null);
  const [reference, setReference] = useState(before?.body.payout?.reference ?? '');
  const [text, setText] = useState(before?.body.note ?? '');
  const { problem, note } = useNoting(on);
  const amountMinor = amount === null ? null : toMinor(amount, currency);
  const feeMinor = fee === null ? 0 : toMinor(fee, currency);
  const told = paymentTold(
    { kind, amountMinor, feeMinor },
    withoutBefore(standing.money, before),
    currency,
    locale,
  );
  const missing =
    amountMinor === null
      ? 'How much comes first.'
      : reference.trim() !== '' && payoutDay === null
        ? 'The day it reached the bank comes first.'
        : undefined;
  const enter = (day: string) => {
    if (amountMinor === null) return;
    const payout = payoutDay === null ? null : { day: payoutDay, reference: reference.trim() };
    const body = { orderId, day, kind, amountMinor, currency, way, feeMinor, payout, note: text.trim() };
    const isNoted = note(paymentKindWords[kind], [
      ...(before === null ? [] : [{ kind: 'takeBack', body: { entryId: before.id } } as const]),
      { kind: 'payment', body },
    ]);
    if (isNoted) onDone();
  };
  const more = (
    <div className={styles.more}>
      <FieldGroup>
        <AmountField
          label="Fee kept back"
          currency={currency}
          minorLimits={numberLimits(paymentSchema, ['feeMinor'])}
          value={fee}
          hint="Empty where there was none."
          onCommit={setFee}
        />
        <DateField
          label="Reached the bank on"
          width="narrow"
          value={payoutDay}
          hint="Empty while it has not."
          onCommit={setPayoutDay}
        />
        <TextField
          label="Reference there"
          width="narrow"
          value={reference}
          {...textLimits(paymentSchema, ['payout', 'reference'])}
          onCommit={setReference}
        />
      </FieldGroup>
      <TextField
        label="Note"
        width="full"
        value={text}
        {...textLimits(paymentSchema, ['note'])}
        hint="May stay empty."
        onCommit={setText}
      />
    </div>
  );
  return (
    <NoteFrame
      name={before === null ? 'Payment' : 'The payment, noted anew'}
      {...{ on, missing, problem, onLeave }}
      {...(before !== null && { day: before.body.day })}
      onEnter={enter}
    >
      <FieldGroup>
        <AmountField
          label="How much"
          currency={currency}
          minorLimits={numberLimits(paymentSchema, ['amountMinor'])}
          value={amount}
          onCommit={setAmount}
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
      {before === null ? (
        <Fold summary="Fee, bank, note" line="may be added later">
          {more}
        </Fold>
      ) : (
        more
      )}
    </NoteFrame>
  );
}

// Helpers

function amountAtFirst(
  before: NotedOf<'payment'> | null,
  dueMinor: number | null,
  units: (minor: number) => number,
): number | null {
  if (before !== null) return units(before.body.amountMinor);
  return dueMinor === null || dueMinor === 0 ? null : units(dueMinor);
}

/** What is owed and was received if a payment that is noted anew had never come. */
function withoutBefore(
  { totalMinor, receivedMinor }: OnScreenMoney,
  before: NotedOf<'payment'> | null,
): OnScreenMoney {
  const was = before?.body;
  const came = was === undefined ? 0 : was.kind === 'payment' ? was.amountMinor : -was.amountMinor;
  return { totalMinor, receivedMinor: receivedMinor - came };
}

type OnScreenMoney = Pick<StepNoteProps['on']['standing']['money'], 'totalMinor' | 'receivedMinor'>;
