import type { DayCount } from '@/lib/stall/count/dayCount';
import { sellingTime, type WallClock } from '@/lib/stall/count/sellingTime';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { lostSales } from './lostSales';
import type { StockRow } from './stockRows';

/** What a day teaches the next, as an offer. */
export type Lesson =
  | {
      /** Goods that were gone before the end. */
      readonly kind: 'more';
      readonly row: StockRow;
      /** Bring so many next time. */
      readonly next: number;
      /** Pieces that would have sold too, those asked for among them; unrounded. */
      readonly lost: number;
      /** When the last was sold, minutes since the midnight its day began at; null where no clock told. */
      readonly goneAtMinute: number | null;
    }
  | {
      /** Somebody wanted what there is none of. */
      readonly kind: 'asked';
      readonly words: string;
      readonly count: number;
    };

/** Fewer lost pieces than this are not worth a line. */
const LEAST_LOST = 1;

/**
 * What was missed that day, the most first.
 *
 * The next number lies halfway between what was expected and what was wanted, for one day is no rule; it is one more
 * than was brought at least (the product's own choice).
 */
export function lessonsOf(
  plan: StallPlan,
  count: Pick<DayCount, 'askedFor'>,
  rows: readonly StockRow[],
  clock: WallClock,
): readonly Lesson[] {
  const more = rows.flatMap((row): readonly Extract<Lesson, { kind: 'more' }>[] => {
    const lost = lostSales(plan, row, clock) + row.asked;
    if (row.left !== 0 || lost < LEAST_LOST) return [];
    const wanted = row.sold + lost;
    const next = Math.max(row.brought + 1, Math.round(((row.goods.expected ?? wanted) + wanted) / 2));
    const goneAtMinute = row.lastSoldAt === null ? null : sellingTime(plan, clock(row.lastSoldAt)).minute;
    return [{ kind: 'more', row, next, lost, goneAtMinute }];
  });
  const asked = count.askedFor.map(
    ({ words, count: times }): Lesson => ({ kind: 'asked', words, count: times }),
  );
  return [...more.toSorted((one, other) => other.lost - one.lost), ...asked];
}
