'use client';

import type { NumberLimits } from '@/shared/limits';
import { fromMinor, LARGEST_AMOUNT, type MinorUnits } from '@/shared/money';
import { currencyDigits } from '@/shared/tables/currencies';
import type { HalfTyped } from './formMemory';
import { NumberField } from './NumberField';

type AmountFieldProps = Readonly<{
  label: string;
  currency: string;
  /** Currency units, as typed. */
  value: number | null;
  onCommit: (value: number | null) => void;
  /** Of the place where it is kept, whole minor units. */
  minorLimits: NumberLimits;
  hint?: string | undefined;
  caution?: string | undefined;
  half?: HalfTyped | undefined;
  /** True where a label for the id stands elsewhere, beside the field. */
  labelled?: boolean | undefined;
  id?: string | undefined;
}>;

/** An amount in whole coins of its currency; finer ones are told and not rounded. */
export function AmountField({ currency, minorLimits, ...rest }: AmountFieldProps) {
  const digits = currencyDigits(currency) ?? 2;
  const limits: NumberLimits = {
    min: fromMinor((minorLimits.min ?? 0) as MinorUnits, currency),
    max: Math.min(LARGEST_AMOUNT, fromMinor((minorLimits.max ?? Infinity) as MinorUnits, currency)),
  };
  return (
    <NumberField
      {...rest}
      {...limits}
      unit={currency}
      decimals={digits}
      minDecimals={digits}
      width="narrow"
    />
  );
}
