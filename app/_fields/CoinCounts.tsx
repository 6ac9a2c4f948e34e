'use client';

import { numberLimits } from '@/shared/limits';
import { formatMinor, fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import { type Coins, coinsSchema } from '@/shared/schemas/stallDay';
import { cashOf } from '@/shared/tables/coins';
import { AmountField } from './AmountField';
import { QuantityField } from './QuantityField';
import { QuantityRow } from './QuantityRow';

type CoinCountsProps = Readonly<{
  currency: string;
  locale: string;
  coins: Coins;
  /** What a value stands at that is not among them: none of it, or not counted yet. */
  otherwise: 0 | null;
  /** Ids of the fields begin so. */
  idStart: string;
  onCount: (value: number, count: number | null) => void;
}>;

/** Money note by note and coin by coin; what a currency has is known for some, and typed for all others. */
export function CoinCounts({ currency, locale, coins, otherwise, idStart, onCount }: CoinCountsProps) {
  const known = cashOf(currency);
  const listed = known === null ? [] : [...known.notes, ...known.coins];
  const own = coins.flatMap(({ value }) => (listed.includes(value) ? [] : [value]));
  const countOf = (value: number) => coins.find((one) => one.value === value)?.count ?? otherwise;
  const groups = [
    { label: 'Notes', values: known?.notes ?? [] },
    { label: 'Coins', values: known?.coins ?? [] },
    { label: 'Others', values: own },
  ].filter(({ values }) => values.length > 0);
  return (
    <>
      {groups.map(({ label, values }) => (
        <QuantityRow key={label} label={label}>
          {values.map((value) => (
            <QuantityField
              key={value}
              id={`${idStart}${toMinor(value, currency)}`}
              label={formatMinor(toMinor(value, currency), currency, locale)}
              value={countOf(value)}
              {...numberLimits(coinsSchema, [0, 'count'])}
              onCommit={(count) => onCount(value, count)}
            />
          ))}
        </QuantityRow>
      ))}
      {known === null && (
        <AmountField
          key={own.length}
          label="Add a note or coin worth"
          currency={currency}
          value={null}
          minorLimits={{ min: fromMinor(1 as MinorUnits, currency) }}
          onCommit={(value) => {
            if (value !== null && value > 0) onCount(value, countOf(value) ?? 0);
          }}
        />
      )}
    </>
  );
}
