'use client';

import { Button } from '@/app/_controls/Button';
import type { EveningOnScreen } from '@/app/_evening/eveningOnScreen';
import { CoinCounts } from '@/app/_fields/CoinCounts';
import type { Coins } from '@/shared/schemas/stallDay';
import styles from './Slips.module.css';

type CoinFieldsProps = Readonly<{
  on: EveningOnScreen;
  /** Null while nothing is counted by notes and coins. */
  coins: Coins | null;
  onCount: (coins: Coins | null) => void;
}>;

/** The tin, note by note and coin by coin. */
export function CoinFields({ on, coins, onCount }: CoinFieldsProps) {
  const set = (value: number, count: number | null) => {
    const others = (coins ?? []).filter((one) => one.value !== value);
    const next = count === null ? others : [...others, { value, count }];
    onCount(next.length === 0 ? null : next.toSorted((one, other) => other.value - one.value));
  };
  return (
    <>
      <div className={styles.coins}>
        <CoinCounts
          currency={on.evening.plan.currency}
          locale={on.locale}
          coins={coins ?? []}
          otherwise={null}
          idStart="coin-"
          onCount={set}
        />
      </div>
      {coins !== null && (
        <Button kind="quiet" onPress={() => onCount(null)}>
          Type the sum instead
        </Button>
      )}
    </>
  );
}
