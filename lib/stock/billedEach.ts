import { MONEY_DIGITS } from '@/shared/decimal';
import { fromMinor, type MinorUnits } from '@/shared/money';
import type { SupplyItem } from '@/shared/schemas/making/supply';
import type { GoodsIn } from '@/shared/schemas/making/supplyEvents';
import { stockKey } from './stockKey';

/** What one of a thing was billed at in one delivery. */
interface Billed {
  readonly item: SupplyItem;
  /** All its billed rows together. */
  readonly counted: number;
  /** Minor units of the delivery, unrounded, without freight. */
  readonly eachMinor: number;
}

/**
 * The one price of each thing of a delivery: all its lots and rows together, by what they were billed at. A row of nothing
 * is a free replacement or a gift and tells no price; one whose bill is not here yet neither.
 *
 * @returns in the order in which they stand first
 */
export function billedEach({ rows }: Pick<GoodsIn, 'rows'>): readonly Billed[] {
  const found = new Map<string, { item: SupplyItem; counted: number; minor: number }>();
  for (const { item, counted, amountMinor } of rows) {
    if (amountMinor === null || amountMinor === 0 || !(counted > 0)) continue;
    const key = stockKey(item);
    const known = found.get(key) ?? { item, counted: 0, minor: 0 };
    found.set(key, { item, counted: known.counted + counted, minor: known.minor + amountMinor });
  }
  return [...found.values()].map(({ item, counted, minor }) => ({
    item,
    counted,
    eachMinor: minor / counted,
  }));
}

/** @returns a price of minor units as it is typed and kept, currency units: 22,275 for 45 is 4.95 each. */
export const paidEach = (eachMinor: number, currency: string): number =>
  Number(fromMinor(eachMinor as MinorUnits, currency).toPrecision(MONEY_DIGITS));
