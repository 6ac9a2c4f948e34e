import { closeInForce, type DayPaper } from '@/lib/stall/closeInForce';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { PastDay } from '@/lib/stall/plan/demand/pastDay';
import { fromMinor, type MinorUnits } from '@/shared/money';
import type { DayClose, StallPlan } from '@/shared/schemas/stallPapers';
import { weatherShares } from './dayWeather';
import { firstsSold } from './firstsSold';

/**
 * What all closed days teach.
 *
 * @param closes papers in the one order; the last of a day counts
 * @returns days with the latest first
 */
export function pastDaysOf(
  plans: readonly DayPaper<'stallPlan', StallPlan>[],
  closes: readonly DayPaper<'dayClose', DayClose>[],
): readonly PastDay[] {
  const byId = new Map(plans.map(({ id, body }) => [id, body]));
  return [...new Set(closes.map(({ body }) => body.stallDayId))]
    .flatMap((id) => closeInForce(closes, id)?.body ?? [])
    .map((close) => pastDay(close, close.planId === null ? null : (byId.get(close.planId) ?? null)))
    .toSorted((one, other) => (one.day < other.day ? 1 : -1));
}

// Helpers

function pastDay(close: DayClose, plan: StallPlan | null): PastDay {
  const { stallDayId, title, days, sellingHours, result, money, currency } = close;
  const weather = plan === null ? null : weatherOf(close, plan);
  const planned = new Map((plan?.goods ?? []).map((goods) => [goodsKey(goods), goods]));
  const rangeName = (rangeId: string | undefined) =>
    plan?.ranges.find(({ id }) => id === rangeId)?.name ?? '';
  const expected = (plan?.goods ?? []).flatMap((goods) => goods.expected ?? []);
  return {
    ...{ stallDayId, name: title, day: days[0] ?? close.issuedOn, sellingHours, currency },
    payPerHour: result.payPerHour,
    takings: fromMinor(money.gross as MinorUnits, currency),
    stallFee: plan?.costs.stallFee ?? null,
    weather,
    wanted: close.goods
      .map((goods) => ({
        ...{ jobId: goods.jobId, lineId: goods.lineId, size: goods.size, sold: firstsSold(goods) },
        rangeName: rangeName(planned.get(goodsKey(goods))?.rangeId),
        // A piece of an earlier fair that came back was not wanted less here.
        pieces: Math.max(0, firstsSold(goods)) + goods.lost + goods.asked,
        brought: goods.brought,
      }))
      // What stayed at home was not there to be asked for.
      .flatMap(({ brought, ...one }) => (brought > 0 || one.pieces > 0 ? [one] : [])),
    expected:
      weather === null || expected.length === 0
        ? null
        : expected.reduce((sum, pieces) => sum + pieces, 0) * weather.factor,
  };
}

function weatherOf({ weather }: DayClose, plan: StallPlan): PastDay['weather'] {
  if (weather === null) return null;
  const parts = weatherShares(plan, weather.parts).flatMap(({ weatherId, share }) => {
    const planned = plan.weathers.find(({ id }) => id === weatherId);
    return planned === undefined ? [] : [{ name: planned.name, factor: planned.factor, share }];
  });
  return { factor: weather.factor, parts };
}
