import { compareText } from '@/shared/compareText';
import { compareDays } from '@/shared/days';
import type { SupplyItem } from '@/shared/schemas/making/supply';
import type { Pile } from './foldStock';
import { isReady } from './isReady';
import { stockKey } from './stockKey';

/** What some work is going to use of one thing. */
export interface StockNeed {
  readonly item: SupplyItem;
  /** Pieces, sheets, m, mL or units. */
  readonly quantity: number;
  readonly jobId: string;
  /** For whom; null where nobody waits for it. */
  readonly orderId: string | null;
  readonly by: { readonly kind: 'run' | 'order'; readonly id: string };
  /** When it is wanted at the bench; null where no day is set. */
  readonly day: string | null;
  /** Whoever comes first takes first; 0 of all that has begun or was bought for. */
  readonly place: number;
}

/** What is kept for work that is going to be done, and what of the thing is left beside it. */
export interface Reserved {
  readonly item: SupplyItem;
  /** At home, first grade; null where nobody ever noted anything of it. */
  readonly ready: number | null;
  readonly reserved: number;
  /** Beyond what is reserved, below 0 where it does not suffice; null where it is not known what lies there. */
  readonly free: number | null;
  /** The day of the first work that it does not suffice for; null where it suffices, and where no day is set. */
  readonly shortOn: string | null;
  /** What it is kept for. */
  readonly needs: readonly StockNeed[];
}

/**
 * What lies ready against what open runs and accepted orders are going to use.
 *
 * @param needs in any order
 */
export function reserved(piles: readonly Pile[], needs: readonly StockNeed[]): readonly Reserved[] {
  const ready = new Map(piles.filter(isReady).map(({ item, quantity }) => [stockKey(item), quantity]));
  const byItem = new Map<string, StockNeed[]>();
  for (const need of needs) {
    const key = stockKey(need.item);
    byItem.set(key, [...(byItem.get(key) ?? []), need]);
  }
  return [...byItem].flatMap(([key, own]) => {
    const [first] = own;
    return first === undefined ? [] : [reservedOf(first.item, ready.get(key) ?? null, own)];
  });
}

// Helpers

function reservedOf(item: SupplyItem, ready: number | null, needs: readonly StockNeed[]): Reserved {
  const sorted = needs.toSorted(byDay);
  const all = sorted.reduce((sum, { quantity }) => sum + quantity, 0);
  return {
    ...{ item, ready, reserved: all, needs: sorted },
    free: ready === null ? null : ready - all,
    shortOn: ready === null ? null : shortOn(ready, sorted),
  };
}

function shortOn(ready: number, sorted: readonly StockNeed[]): string | null {
  let left = ready;
  for (const { quantity, day } of sorted) {
    left -= quantity;
    if (left < -SLACK) return day;
  }
  return null;
}

/** Work without a day comes after all that has one; needs of one work by what they are for, whatever order they came in. */
const byDay = (one: StockNeed, other: StockNeed): number =>
  compareDays(one.day, other.day) ||
  compareText(one.by.kind, other.by.kind) ||
  compareText(one.by.id, other.by.id) ||
  compareText(one.jobId, other.jobId) ||
  compareText(one.orderId ?? '', other.orderId ?? '') ||
  one.quantity - other.quantity;

/** Sums of decimals miss by the last digit. */
const SLACK = 1e-9;
