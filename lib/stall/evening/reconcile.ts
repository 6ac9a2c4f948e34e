import type { DayCount, GoodsCount } from '@/lib/stall/count/dayCount';
import { goodsKey } from '@/lib/stall/count/goodsKey';
import type { WallClock } from '@/lib/stall/count/sellingTime';
import { openHours } from '@/lib/stall/days/openHours';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { type Bridge, bridgeOf } from './bridge';
import { type DayMoney, dayMoney } from './dayMoney';
import { type DayResult, dayResult } from './dayResult';
import { DIFFERENT_WEATHERS, type EveningAnswers } from './eveningAnswers';
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
  /** Tapped, but in no row of the plan. */
  readonly strays: readonly GoodsCount[];
  /** More was noted than was brought. */
  readonly overdrawn: readonly StockRow[];
  readonly pieces: number;
  readonly money: DayMoney;
  readonly result: DayResult;
  /** Null where nobody said, and where days of one fair had different weathers. */
  readonly weatherId: string | null;
  readonly hasDifferentWeathers: boolean;
  readonly bridge: Bridge | null;
  readonly lessons: readonly Lesson[];
  readonly sellingHours: number;
  readonly unsettled: readonly Unsettled[];
}

/**
 * Holds what was noted through a day against what is there in the evening.
 *
 * @param clock how moments stand on the wall of whoever counted
 */
export function reconcile(
  plan: StallPlan,
  count: DayCount,
  answers: EveningAnswers,
  clock: WallClock,
): Evening {
  const rows = stockRows(plan, count, answers);
  const money = dayMoney(plan, count, rows, answers);
  const result = dayResult(plan, rows, money, answers.hours);
  const weather = weatherOf(plan, count, answers);
  const planned = new Set(plan.goods.map(goodsKey));
  return {
    ...{ plan, count, rows, money, result, ...weather },
    soldFrom: soldFromOf(count),
    strays: count.goods.filter((goods) => !planned.has(goodsKey(goods))),
    overdrawn: rows.filter(({ reckoned }) => reckoned !== null && reckoned < 0),
    pieces: rows.reduce((sum, { sold }) => sum + sold, 0),
    bridge: bridgeOf(plan, rows, money, result, weather.weatherId),
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

/** Taps of a fair of one day are of that day, whatever a wrong clock says. */
function weatherOf(
  { weathers, days }: StallPlan,
  count: DayCount,
  answers: Pick<EveningAnswers, 'weatherId'>,
): Pick<Evening, 'weatherId' | 'hasDifferentWeathers'> {
  const tapped = new Set(count.weatherOfDays.map(({ weatherId }) => weatherId));
  const asTapped = days.length > 1 && tapped.size > 1 ? DIFFERENT_WEATHERS : count.weatherId;
  const told = answers.weatherId ?? asTapped;
  const [only] = weathers;
  if (only !== undefined && weathers.length === 1) return { weatherId: only.id, hasDifferentWeathers: false };
  return {
    weatherId: weathers.some(({ id }) => id === told) ? told : null,
    hasDifferentWeathers: days.length > 1 && told === DIFFERENT_WEATHERS,
  };
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
