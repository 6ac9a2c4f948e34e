import { roundDecimal } from '@/shared/decimal';
import type { StockItem } from '@/shared/schemas/stock';
import { stockKey } from './stockKey';
import type { PileValue } from './stockValue';

/** What some stock is worth at what was paid for it. */
export interface StockWorth {
  /** By currency, whole minor units, the greatest first. */
  readonly paid: PileValue['paid'];
  /** How many lie there at a cost that nobody knows; a sum only where all of it is one thing. */
  readonly unknown: number;
  /** Things of which at least some lie there at a cost that nobody knows. */
  readonly unknownThings: number;
  /** Things of which more went out somewhere than was ever in: what lies there is not known. */
  readonly shortThings: number;
}

/**
 * @param currency where a sum is of one alone, things paid in another count as those whose cost nobody knows
 * @returns what piles come to together; nothing where there are none
 */
export function stockWorth(values: readonly PileValue[], currency: string | null = null): StockWorth {
  const paid = new Map<string, number>();
  const unknown = new Set<string>();
  let unknownMany = 0;
  const short = new Set<string>();
  for (const value of values) {
    for (const { currency, minor } of value.paid) paid.set(currency, (paid.get(currency) ?? 0) + minor);
    const isElsewhere = currency !== null && value.paid.some((one) => one.currency !== currency);
    if (value.unknown > 0 || isElsewhere) unknown.add(stockKey(value.item));
    unknownMany += value.unknown;
    if (value.quantity < 0) short.add(stockKey(value.item));
  }
  return {
    paid: [...paid]
      .map(([currency, minor]) => ({ currency, minor: roundDecimal(minor, 0, 'halfUp') }))
      .toSorted((one, other) => other.minor - one.minor),
    unknown: unknownMany,
    unknownThings: unknown.size,
    shortThings: short.size,
  };
}

/** @returns what is worth something of one thing, wherever it lies */
export function valuesOf(values: readonly PileValue[], item: StockItem): readonly PileValue[] {
  const key = stockKey(item);
  return values.filter((value) => stockKey(value.item) === key);
}
