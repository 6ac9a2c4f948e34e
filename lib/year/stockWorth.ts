import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import type { StockWorth } from './yearStanding';

/** Something that lies in stock at what was paid for it. */
interface Valued {
  /** Unrounded minor units of each currency. */
  readonly paid: readonly { readonly currency: string; readonly minor: number }[];
  /** How many lie there whose price nobody knows. */
  readonly unknown: number;
}

/** @returns all that lies in stock together, in one currency; piles of which something is not in it are counted. */
export function stockWorth(values: readonly Valued[], currency: string): StockWorth {
  const own = values.flatMap(({ paid }) => paid.filter((one) => one.currency === currency));
  const minor = own.reduce((sum, one) => sum + one.minor, 0);
  const isOpen = ({ paid, unknown }: Valued) =>
    unknown > 0 || paid.some((one) => one.currency !== currency && one.minor !== 0);
  return {
    paidMinor: toMinor(fromMinor(minor as MinorUnits, currency), currency),
    unknown: values.filter(isOpen).length,
  };
}
