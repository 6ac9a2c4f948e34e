import { resolveJob } from '@/lib/job/resolveJob';
import { jobForStall } from '@/lib/stall/plan/costs/jobForStall';
import type { GoodsAsked } from '@/lib/stall/plan/demand/goodsAsked';
import type { Rate } from '@/shared/schemas/rate';
import type { Channel } from '@/shared/schemas/workshop';
import type { StallAsked } from './stallAsked';

/** @returns how many figures a plan rests on, each counted once, and how many of them nobody has told yet. */
export function restsOn(
  asked: StallAsked,
  channel: Channel,
  goods: readonly GoodsAsked[],
): { readonly figures: number; readonly typical: number } {
  const isTypical = new Map<string, boolean>();
  for (const { jobId, input } of asked.jobs) {
    const own = goods.filter((one) => one.jobId === jobId);
    if (own.length === 0) continue;
    const { day, workshop } = asked;
    const { usedRates } = resolveJob(jobForStall(input, { day, workshop, channel, goods: own }));
    for (const { rate, where, needed } of usedRates) {
      const { document, id, path } = where;
      const owner = document === 'job' ? jobId : id;
      if (needed)
        isTypical.set(JSON.stringify([document, owner, path]), rate === null || rate.origin === 'typical');
    }
  }
  const all = [...isTypical.values(), ...ofTheDay(asked).map((rate) => rate.origin === 'typical')];
  return { figures: all.length, typical: all.filter(Boolean).length };
}

// Helpers

function ofTheDay({ stallDay, workshop }: StallAsked): readonly Rate[] {
  const { weathers, leftoverShare, forecast, costs } = stallDay;
  const drives = costs.some(({ amount }) => amount.of === 'drive' && amount.km !== 0);
  return [
    ...weathers.flatMap(({ chance, factor }) => [chance, factor]),
    leftoverShare,
    ...(forecast.from === 'visitors' ? [forecast.stopShare, forecast.buyShare] : []),
    drives ? workshop.rates.travelRate : null,
  ].filter((rate) => rate !== null);
}
