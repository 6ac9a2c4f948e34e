'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import type { EveningOnScreen } from '@/app/_evening/eveningOnScreen';
import { AmountField } from '@/app/_fields/AmountField';
import { DateField } from '@/app/_fields/DateField';
import { numberLimits } from '@/shared/limits';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import { dayCloseSchema } from '@/shared/schemas/stallPapers';
import styles from './Slips.module.css';

/** What reached the bank, once it did; while its field is empty nothing is known of it, which is not 0. */
export function Payout({ on: { evening, answers, say, today } }: Readonly<{ on: EveningOnScreen }>) {
  const { money, plan } = evening;
  const { payout } = answers.card;
  // The fields stay while one of them is emptied, so that another amount can be typed.
  const [openOn, setOpenOn] = useState<string | null>(null);
  const setPayout = (to: typeof payout) => say({ card: { ...answers.card, payout: to } });
  const day = payout?.day ?? openOn;
  if (day === null) {
    const came = { minor: Math.max(0, money.payoutDue), day: today };
    return <Button onPress={() => setPayout(came)}>The payout came</Button>;
  }
  return (
    <div className={styles.ask}>
      <AmountField
        label="What came"
        currency={plan.currency}
        value={payout === null ? null : fromMinor(payout.minor as MinorUnits, plan.currency)}
        minorLimits={numberLimits(dayCloseSchema, ['money', 'payout', 'minor'])}
        hint="Empty: not known yet."
        onCommit={(value) => {
          setOpenOn(day);
          setPayout(value === null ? null : { minor: toMinor(value, plan.currency), day });
        }}
      />
      <DateField
        label="On"
        width="narrow"
        value={day}
        needed
        onCommit={(to) => {
          if (to === null) return;
          setOpenOn(to);
          if (payout !== null) setPayout({ ...payout, day: to });
        }}
      />
      <Button
        kind="quiet"
        onPress={() => {
          setOpenOn(null);
          setPayout(null);
        }}
      >
        It did not come yet
      </Button>
    </div>
  );
}
