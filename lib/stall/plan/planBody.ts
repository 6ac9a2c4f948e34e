import { secondsOf } from '@/lib/stall/car/secondsFor';
import { dayCosts, stallFeeOf } from '@/lib/stall/plan/costs/dayCosts';
import { dayPriceOf } from '@/lib/stall/plan/costs/dayPriceOf';
import { type SellingTerms, sellingTerms } from '@/lib/stall/plan/costs/sellingTerms';
import { daysInOrder } from '@/lib/stall/sellingDays';
import { mostEntries, numberLimits } from '@/shared/limits';
import { type MinorUnits, toMinor } from '@/shared/money';
import type { PaperNumber } from '@/shared/schemas/happened';
import type { Coins, StallDay, StallGoods } from '@/shared/schemas/stallDay';
import { type PlannedGoods, type StallPlan, stallPlanSchema } from '@/shared/schemas/stallPapers';
import type { Workshop } from '@/shared/schemas/workshop';
import type { GoodsPlanned, StallAnswer, StallTrouble } from './stallPlanned';

/** What a plan is fixed from. */
export interface PlanToFix {
  readonly stallDayId: string;
  /** The day on which it is fixed, YYYY-MM-DD. */
  readonly day: string;
  readonly stallDay: StallDay;
  readonly workshop: Workshop;
  readonly answer: StallAnswer;
  /** What goes into the tin. */
  readonly float: Coins;
  /** Seconds that can come along; they do where seconds have a price. */
  readonly seconds?: readonly (StallGoods & { readonly pieces: number })[];
}

/** Why a plan cannot be fixed. */
export type PlanObstacle =
  | { readonly kind: 'trouble'; readonly trouble: StallTrouble }
  | { readonly kind: 'nothingBrought' }
  /** More sizes of designs than a plan holds. */
  | { readonly kind: 'tooManyGoods'; readonly goods: number; readonly most: number }
  /** A set that nobody priced could not be sold. */
  | { readonly kind: 'setWithoutPrice'; readonly setId: string; readonly name: string };

export type PlanToIssue =
  /** What goes out under the number that the paper is given. */
  | { readonly kind: 'ready'; readonly body: (number: PaperNumber) => StallPlan }
  | { readonly kind: 'refused'; readonly obstacles: readonly PlanObstacle[] };

/** @returns the plan as it goes to the phone, or all that stands in its way at once. */
export function planBody(asked: PlanToFix): PlanToIssue {
  const { answer, stallDay, workshop } = asked;
  if (answer.kind === 'refused')
    return { kind: 'refused', obstacles: answer.troubles.map((trouble) => ({ kind: 'trouble', trouble })) };
  const channel = workshop.channels.find(({ id }) => id === stallDay.channelId);
  const terms = channel === undefined ? null : sellingTerms(channel);
  const costs = costsOf(asked, answer);
  const obstacles = [
    ...(terms === null ? [{ kind: 'trouble', trouble: { kind: 'noChannel' } } as const] : []),
    ...(costs === null ? [{ kind: 'trouble', trouble: { kind: 'wageUnknown' } } as const] : []),
    ...(stallDay.days.length === 0 ? [{ kind: 'trouble', trouble: { kind: 'noDays' } } as const] : []),
    ...obstaclesOf(asked, answer),
  ];
  if (terms === null || costs === null || obstacles.length > 0) return { kind: 'refused', obstacles };
  const body = bodyOf(asked, answer, terms, costs);
  return { kind: 'ready', body: (number) => ({ ...body, number }) };
}

// Helpers

type Planned = Extract<StallAnswer, { readonly kind: 'planned' }>;

const MOST_GOODS = mostEntries(stallPlanSchema, ['goods']);
const MOST_PIECES = numberLimits(stallPlanSchema, ['goods', 0, 'fromHome']).max ?? 0;

function obstaclesOf({ stallDay }: PlanToFix, { mine, goods }: Planned): readonly PlanObstacle[] {
  const unpriced = stallDay.prices.sets.filter(({ price }) => price === null);
  return [
    ...(goods.length > MOST_GOODS
      ? [{ kind: 'tooManyGoods', goods: goods.length, most: MOST_GOODS } as const]
      : []),
    ...(mine.pieces === 0 ? [{ kind: 'nothingBrought' } as const] : []),
    ...unpriced.map(({ id, name }) => ({ kind: 'setWithoutPrice', setId: id, name }) as const),
  ];
}

function bodyOf(
  asked: PlanToFix,
  answer: Planned,
  terms: SellingTerms,
  costs: StallPlan['costs'],
): Omit<StallPlan, 'number'> {
  const { stallDay, workshop, float } = asked;
  const { mine, currency } = answer;
  const { name, place, days, ranges, prices, weathers } = stallDay;
  const seconds = secondsOf(prices.secondsShare == null ? [] : (asked.seconds ?? []));
  const minor = (amount: number): MinorUnits => toMinor(amount, currency);
  return {
    issuedOn: asked.day,
    stallDayId: asked.stallDayId,
    title: name,
    place,
    days: daysInOrder({ days }).map(({ day, fromMinute, toMinute, weight }) => ({
      day,
      fromMinute,
      toMinute,
      weight,
    })),
    currency,
    ...terms,
    taxRounding: workshop.policy.taxRounding,
    ranges: ranges.map((range) => ({ id: range.id, name: range.name, hasSizes: range.sizes !== null })),
    goods: answer.goods.map((goods) => ({
      ...plannedGoods(goods, stallDay, minor),
      ...secondsAlong(seconds(goods)),
    })),
    sets: prices.sets.flatMap(({ price, ...set }) =>
      price === null ? [] : [{ ...set, price: minor(price) }],
    ),
    lastHourFrom: prices.lastHour?.fromMinute ?? null,
    ...(prices.secondsShare == null ? {} : { secondsShare: prices.secondsShare }),
    float,
    weathers: weathers.map((weather) => ({
      id: weather.id,
      name: weather.name,
      chance: weather.chance?.value ?? 0,
      factor: weather.factor?.value ?? 0,
    })),
    costs,
    breakEven:
      mine.breakEven === null
        ? null
        : {
            cash: mine.breakEven.cash,
            withPay: mine.breakEven.withPay,
            everything: mine.breakEven.everything,
            withWriteDown: mine.breakEven.withWriteDown,
          },
    outcomes: mine.outcomes.map(({ weather, weatherIds, chance, sold, netRevenue, profit, payPerHour }) => ({
      ...{ weather, weatherIds: [...weatherIds], chance, sold, netRevenue, profit, payPerHour },
    })),
    weightedProfit: mine.weighted.profit,
  };
}

function plannedGoods(
  goods: GoodsPlanned,
  { prices }: StallDay,
  minor: (amount: number) => MinorUnits,
): PlannedGoods {
  const { jobId, lineId, size, rangeId, design, mine, cost, packaging } = goods;
  const { finishedBefore, leftoverShare, expected } = goods;
  const price = minor(goods.price);
  const late = dayPriceOf(prices.lastHour?.prices ?? [], goods);
  return {
    ...{ jobId, lineId, size, rangeId, design },
    bring: mine,
    fromHome: Math.min(MOST_PIECES, Math.max(0, Math.floor(finishedBefore))),
    price,
    lastHourPrice: late === null || minor(late) === price ? null : minor(late),
    ...{ cost, packaging, leftoverShare, expected },
  };
}

const secondsAlong = (seconds: number): Pick<PlannedGoods, 'seconds'> => (seconds === 0 ? {} : { seconds });

function costsOf({ stallDay, workshop }: PlanToFix, { mine }: Planned): StallPlan['costs'] | null {
  const day = dayCosts(stallDay, workshop);
  if (day === null) return null;
  const { sunk, avoidable, hours, wage, overheadPerHour } = day;
  return {
    cash: sunk + avoidable,
    avoidable,
    // Each cost of the day is known here, so null is none.
    stallFee: stallFeeOf(stallDay, workshop) ?? 0,
    hours,
    wage,
    overheadPerHour,
    batch: mine.batch,
    benchHours: mine.benchHours,
  };
}
