'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { AmountField } from '@/app/_fields/AmountField';
import { shortAmount } from '@/app/_words/stall/count/countWords';
import { tinWords } from '@/app/_words/stall/count/tapWords';
import { numberLimits } from '@/shared/limits';
import { toMinor } from '@/shared/money';
import { stallTapSchema } from '@/shared/schemas/stallEvents';
import type { Counting } from '../useCount';
import styles from './Panel.module.css';

const causes = ['skimmed', 'added', 'spent'] as const;

/** Money that goes into the tin or out of it beside sales. */
export function TinPart({ counting: { plan, count, locale, tap } }: Readonly<{ counting: Counting }>) {
  const [amount, setAmount] = useState<number | null>(null);
  const { currency } = plan;
  const moved = `${shortAmount(count.tinMinor, currency, locale)} ${currency}`;
  return (
    <Fold
      summary="Tin"
      line={count.tinMinor === 0 ? 'money in or out beside sales' : `${moved} beside sales`}
    >
      <div className={styles.part}>
        <AmountField
          label="How much"
          currency={currency}
          value={amount}
          onCommit={setAmount}
          minorLimits={numberLimits(stallTapSchema, ['tap', 'minor'])}
        />
        <div className={styles.keys}>
          {causes.map((cause) => (
            <Button
              key={cause}
              blockedBy={amount === null ? 'How much comes first.' : undefined}
              onPress={() => {
                if (amount === null) return;
                if (tap({ what: 'tin', cause, minor: toMinor(amount, currency), words: '' })) setAmount(null);
              }}
            >
              {tinWords[cause]}
            </Button>
          ))}
        </div>
      </div>
    </Fold>
  );
}
