import { carWords } from '@/app/_words/stall/carWords';
import { loadNameWords } from '@/app/_words/stall/dayLoadWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { CarListBody } from '@/lib/papers/bodies/carListPaper';
import type { PaperSource } from '@/lib/papers/paperOf';
import { dayLoads } from '@/lib/stall/car/dayLoads';
import { designKey } from '@/lib/stall/designKey';
import { daysInOrder } from '@/lib/stall/sellingDays';
import { toMinor } from '@/shared/money';
import type { PlannedGoods, StallPlan } from '@/shared/schemas/stallPapers';
import type { CarOnScreen, StallPart } from './carOnScreen';

/** @returns the list to load by, each range once for each day it is loaded for; null while there is no plan. */
export function carListSource(
  { workspace, stallDay, today }: Pick<StallPart, 'workspace' | 'stallDay' | 'today'>,
  { plans, toIssue, float }: Pick<CarOnScreen, 'plans' | 'toIssue' | 'float'>,
  page: CarListBody['page'],
): PaperSource | null {
  const { workshop } = workspace;
  const plan =
    plans.counts?.body ?? (toIssue?.kind === 'ready' ? toIssue.body({ count: 1, letter: null }) : null);
  if (plan === null) return null;
  const locale = usableLocale(workshop.locale);
  const days = daysInOrder(plan).map(({ day }) => day);
  return {
    kind: 'carList',
    body: {
      page,
      locale,
      language: 'en',
      currency: plan.currency,
      workshop: workshop.seller.name.trim() === '' ? workshop.name : workshop.seller.name,
      name: plan.title,
      place: plan.place,
      days,
      ranges: plan.ranges.flatMap(({ id, name, hasSizes }) => {
        const goods = plan.goods.filter(({ rangeId }) => rangeId === id);
        const seconds = goods.flatMap((one) =>
          one.seconds === undefined ? [] : [{ ...one, bring: one.seconds }],
        );
        const ofDays = loadsOfDays(goods, plan).flatMap(({ day, loads }, at) => {
          const named = days.length < 2 ? name : loadNameWords(name, day, at === 0, { today, locale });
          return loads.length === 0 ? [] : [{ name: named, ...loadOf(loads, hasSizes) }];
        });
        // Seconds lie there from the first day on.
        return seconds.length === 0
          ? ofDays
          : [...ofDays, { name: carWords.secondsOf(name), ...loadOf(seconds, hasSizes) }];
      }),
      takeAlong: stallDay.takeAlong.map(({ what }) => what),
      float: (plans.counts?.body.float ?? float).map(({ value, count }) => ({
        minor: toMinor(value, plan.currency),
        count,
      })),
    },
  };
}

// Helpers

/** What is brought, day by day: each has its part of it. */
const loadsOfDays = (goods: readonly PlannedGoods[], plan: Pick<StallPlan, 'days'>) =>
  daysInOrder(plan).map(({ day }, at) => ({
    day,
    loads: goods
      .map((one) => ({ ...one, bring: dayLoads(one.bring, plan.days)[at] ?? 0 }))
      .filter(({ bring }) => bring > 0),
  }));

function loadOf(goods: readonly PlannedGoods[], hasSizes: boolean) {
  const sizes = hasSizes ? [...new Set(goods.map(({ size }) => size))] : [''];
  const designs = new Map(goods.map((one) => [designKey(one), one.design] as const));
  return {
    sizes,
    designs: [...designs].map(([key, name]) => ({
      name,
      bring: sizes.map((size) =>
        goods
          .filter((one) => designKey(one) === key && (!hasSizes || one.size === size))
          .reduce((sum, { bring }) => sum + bring, 0),
      ),
    })),
  };
}
