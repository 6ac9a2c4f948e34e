import type { FixedPlan } from '@/lib/stall/car/plansOf';
import { besidePlan } from '@/lib/stall/count/besidePlan';
import type { DayCount, GoodsCount } from '@/lib/stall/count/dayCount';
import type { WallClock } from '@/lib/stall/count/sellingTime';
import { openHours } from '@/lib/stall/days/openHours';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { type Bridge, bridgeOf } from './bridge';
import { type DayMoney, dayMoney } from './dayMoney';
import { type DayResult, dayResult } from './dayResult';
import { type DayWeather, dayWeather } from './dayWeather';
import type { EveningAnswers } from './eveningAnswers';
import { type StockRow, soldFromOf, stockRows } from './stockRows';
import { type Lesson, lessonsOf } from './teaches';

/** What must be said before a day can be closed. */
export type Unsettled =
  | { readonly slip: 'cash'; readonly why: 'notCounted' }
  | { readonly slip: 'cash'; readonly why: 'differs'; readonly minor: number }
  | { readonly slip: 'card'; readonly why: 'noTotal' }
  | { readonly slip: 'card'; readonly why: 'beyond'; readonly minor: number }
  | { readonly slip: 'stock'; readonly why: 'notCounted'; readonly sizes: number }
  | { readonly slip: 'stock'; readonly why: 'differs'; readonly row: StockRow };

/** A stall day as it ended: everything the evening shows, and the close is made of. */
export interface Evening {
  readonly plan: StallPlan;
  readonly count: DayCount;
  readonly soldFrom: 'taps' | 'count';
  readonly rows: readonly StockRow[];
  /** Tapped, but in no plan of the day that is here. */
  readonly strays: readonly GoodsCount[];
  /** More was noted than was brought. */
  readonly overdrawn: readonly StockRow[];
  readonly pieces: number;
  readonly money: DayMoney;
  readonly result: DayResult;
  /** That held longest on every day; null where nobody said, and where days had different ones. */
  readonly weatherId: string | null;
  readonly weather: DayWeather;
  readonly bridge: Bridge | null;
  readonly lessons: readonly Lesson[];
  readonly sellingHours: number;
  readonly unsettled: readonly Unsettled[];
}

/**
 * Holds what was noted through a day against what is there in the evening.
 *
 * @param clock how moments stand on the wall of whoever counted
 * @param earlier plans of the day that this one took the place of, the newest first: goods that were tapped by them and
 *   that it does not name have rows of their own
 */
export function reconcile(
  plan: StallPlan,
  count: DayCount,
  answers: EveningAnswers,
  clock: WallClock,
  earlier: readonly Pick<FixedPlan, 'body'>[] = [],
): Evening {
  const rows = stockRows(plan, count, answers, besidePlan(plan, earlier, count.goods));
  const money = dayMoney(plan, count, rows, answers);
  const result = dayResult(plan, rows, money, answers.hours);
  const weather = dayWeather(plan, count, answers);
  const named = new Set(rows.map(({ key }) => key));
  return {
    ...{ plan, count, rows, money, result, weather, weatherId: sameOfAll(weather) },
    soldFrom: soldFromOf(count),
    strays: count.goods.filter((goods) => !named.has(goodsKey(goods))),
    overdrawn: rows.filter(({ reckoned }) => reckoned !== null && reckoned < 0),
    pieces: rows.reduce((sum, { sold }) => sum + sold, 0),
    bridge: bridgeOf(plan, rows, money, result, weather.weatherIds),
    lessons: lessonsOf(plan, count, rows, answers, clock),
    sellingHours: openHours(plan),
    unsettled: [
      ...openCash(money),
      ...openCard(rows, count, money, answers),
      ...openStock(rows, count, answers),
    ],
  };
}

// Helpers

function sameOfAll({ weatherIds }: DayWeather): string | null {
  const [first = null, ...others] = weatherIds ?? [];
  return others.every((id) => id === first) ? first : null;
}

function openCash({ countedCash, difference, reason }: DayMoney): readonly Unsettled[] {
  if (countedCash === null) return reason === 'notKnown' ? [] : [{ slip: 'cash', why: 'notCounted' }];
  if (difference === null || difference === 0 || reason !== null) return [];
  return [{ slip: 'cash', why: 'differs', minor: difference }];
}

function openCard(
  rows: readonly StockRow[],
  count: DayCount,
  { beyond }: DayMoney,
  { card }: Pick<EveningAnswers, 'card'>,
): readonly Unsettled[] {
  const isByCount = soldFromOf(count) === 'count';
  if (isByCount && card.total === null) return [{ slip: 'card', why: 'noTotal' }];
  // Before the last size is counted nobody knows what was sold.
  const isKnown = !isByCount || rows.every(({ counted }) => counted !== null);
  return beyond > 0 && isKnown && !card.isRight ? [{ slip: 'card', why: 'beyond', minor: beyond }] : [];
}

function openStock(
  rows: readonly StockRow[],
  count: DayCount,
  { stock }: Pick<EveningAnswers, 'stock'>,
): readonly Unsettled[] {
  // Where nobody tapped, only the count says what was sold: it cannot be left out.
  const mayStayOpen = stock.isRestUnknown && soldFromOf(count) === 'taps';
  const sizes = mayStayOpen ? 0 : rows.filter(({ counted }) => counted === null).length;
  const differing = rows.filter(
    ({ difference, reason }) => difference !== null && difference !== 0 && reason === null,
  );
  return [
    ...(sizes === 0 ? [] : [{ slip: 'stock', why: 'notCounted', sizes } as const]),
    ...differing.map((row) => ({ slip: 'stock', why: 'differs', row }) as const),
  ];
}
