import type { DayCount } from '@/lib/stall/count/dayCount';
import { sellingTime, type WallClock } from '@/lib/stall/count/sellingTime';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import type { EveningAnswers } from './eveningAnswers';
import { lostSales, sellingMinutesUntil } from './lostSales';
import type { StockRow } from './stockRows';

/** What a day teaches the next, as an offer. */
export type Lesson =
  | {
      /** Goods that were gone before the end. */
      readonly kind: 'more';
      readonly row: StockRow;
      /** Bring so many next time. */
      readonly next: number;
      /** Pieces that would have sold too: asked for, and reckoned where that is not left out; unrounded. */
      readonly lost: number;
      /** Reckoned from how fast the others went, also where the maker leaves it out. */
      readonly atPace: number;
      /** In how many minutes of selling all but one went; null where no clock told. */
      readonly withinMinutes: number | null;
      readonly isLeftOut: boolean;
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
  { notLost }: Pick<EveningAnswers, 'notLost'>,
  clock: WallClock,
): readonly Lesson[] {
  const more = rows.flatMap((row): readonly Extract<Lesson, { kind: 'more' }>[] => {
    const atPace = lostSales(plan, row, clock);
    if (row.left !== 0 || atPace + row.asked < LEAST_LOST) return [];
    const isLeftOut = notLost.includes(row.key);
    const lost = row.asked + (isLeftOut ? 0 : atPace);
    const wanted = row.sold + lost;
    const next = Math.max(row.brought + 1, Math.round(((row.goods.expected ?? wanted) + wanted) / 2));
    const { lastSoldAt } = row;
    const goneAtMinute = lastSoldAt === null ? null : sellingTime(plan, clock(lastSoldAt)).minute;
    const withinMinutes = lastSoldAt === null ? null : sellingMinutesUntil(plan, lastSoldAt, clock);
    return [{ kind: 'more', row, next, lost, atPace, withinMinutes, isLeftOut, goneAtMinute }];
  });
  const asked = count.askedFor.map(
    ({ words, count: times }): Lesson => ({ kind: 'asked', words, count: times }),
  );
  return [
    ...more.toSorted((one, other) => other.atPace + other.row.asked - one.atPace - one.row.asked),
    ...asked,
  ];
}
