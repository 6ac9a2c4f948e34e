'use client';

import { Button } from '@/app/_controls/Button';
import type { EveningOnScreen } from '@/app/_evening/eveningOnScreen';
import { AmountField } from '@/app/_fields/AmountField';
import { QuantityField } from '@/app/_fields/QuantityField';
import { QuantityRow } from '@/app/_fields/QuantityRow';
import { minorWords } from '@/app/_words/orders/minorWords';
import { numberLimits } from '@/shared/limits';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import { type Coins, coinsSchema } from '@/shared/schemas/stallDay';
import { cashOf } from '@/shared/tables/coins';
import styles from './Slips.module.css';

type CoinFieldsProps = Readonly<{
  on: EveningOnScreen;
  /** Null while nothing is counted by notes and coins. */
  coins: Coins | null;
  onCount: (coins: Coins | null) => void;
}>;

/** The tin, note by note and coin by coin; what a currency has is known for some, and typed for all others. */
export function CoinFields({ on, coins, onCount }: CoinFieldsProps) {
  const { currency } = on.evening.plan;
  const known = cashOf(currency);
  const groups =
    known === null
      ? []
      : [
          { label: 'Notes', values: known.notes },
          { label: 'Coins', values: known.coins },
        ];
  const listed = groups.flatMap(({ values }) => values);
  const own = (coins ?? []).filter(({ value }) => !listed.includes(value));
  const countOf = (value: number) => coins?.find((one) => one.value === value)?.count ?? null;
  const set = (value: number, count: number | null) => {
    const others = (coins ?? []).filter((one) => one.value !== value);
    const next = count === null ? others : [...others, { value, count }];
    onCount(next.length === 0 ? null : next.toSorted((one, other) => other.value - one.value));
  };
  const nameOf = (value: number) => minorWords(toMinor(value, currency), currency, on.locale);
  return (
    <>
      {[
        ...groups,
        ...(own.length === 0 ? [] : [{ label: 'Others', values: own.map(({ value }) => value) }]),
      ].map(({ label, values }) => (
        <div className={styles.coins} key={label}>
          <QuantityRow label={label}>
            {values.map((value) => (
              <QuantityField
                key={value}
                id={`coin-${toMinor(value, currency)}`}
                label={nameOf(value)}
                value={countOf(value)}
                {...numberLimits(coinsSchema, [0, 'count'])}
                onCommit={(count) => set(value, count)}
              />
            ))}
          </QuantityRow>
        </div>
      ))}
      {known === null && (
        <OtherValue key={own.length} currency={currency} onAdd={(value) => set(value, countOf(value) ?? 0)} />
      )}
      {coins !== null && (
        <Button kind="quiet" onPress={() => onCount(null)}>
          Type the sum instead
        </Button>
      )}
    </>
  );
}

// Helpers

/** A note or coin of a currency whose own are not known here. */
const OtherValue = ({ currency, onAdd }: Readonly<{ currency: string; onAdd: (value: number) => void }>) => (
  <AmountField
    label="Add a note or coin worth"
    currency={currency}
    value={null}
    minorLimits={{ min: fromMinor(1 as MinorUnits, currency) }}
    onCommit={(value) => {
      if (value !== null && value > 0) onAdd(value);
    }}
  />
);
