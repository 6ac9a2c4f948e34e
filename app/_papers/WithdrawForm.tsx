'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { withdrawalWords } from '@/app/_words/orders/papers/paperTabWords';
import { type WithdrawalReason, withdrawalReasons } from '@/shared/schemas/entries';
import styles from './WithdrawForm.module.css';

type WithdrawFormProps = Readonly<{
  name: string;
  /** What else counts no more with it. */
  told?: readonly string[];
  onWithdraw: (why: WithdrawalReason) => void;
  onLeave: () => void;
}>;

/** Asks why a paper that went out is withdrawn. */
export function WithdrawForm({ name, told = [], onWithdraw, onLeave }: WithdrawFormProps) {
  const [why, setWhy] = useState<WithdrawalReason | null>(null);
  return (
    <div className={styles.asking}>
      {told.length > 0 && <p className={styles.wrong}>{told.join(' ')}</p>}
      <ChoiceField
        label={`Why ${name} is withdrawn`}
        value={why}
        choices={withdrawalReasons.map((value) => ({ value, label: withdrawalWords[value] }))}
        hint="It stays kept with its number, and counts no more."
        onCommit={setWhy}
      />
      <div className={styles.acts}>
        <Button
          blockedBy={why === null ? 'Choose why first.' : undefined}
          onPress={() => why !== null && onWithdraw(why)}
        >
          Withdraw it
        </Button>
        <Button kind="quiet" onPress={onLeave}>
          Leave it
        </Button>
      </div>
    </div>
  );
}
