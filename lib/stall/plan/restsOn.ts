import { resolveJob } from '@/lib/job/resolveJob';
import { jobForStall } from '@/lib/stall/plan/costs/jobForStall';
import type { GoodsAsked } from '@/lib/stall/plan/demand/goodsAsked';
import type { Where } from '@/shared/finding';
import type { Rate } from '@/shared/schemas/rate';
import type { Channel } from '@/shared/schemas/workshop';
import type { StallAsked } from './stallAsked';

/** @returns how many figures a plan rests on, each counted once, how many of them nobody has told yet, and the first such. */
export function restsOn(
  asked: StallAsked,
  channel: Channel,
  goods: readonly GoodsAsked[],
): { readonly figures: number; readonly typical: number; readonly first: Where | null } {
  const found = new Map<string, FigureAt>();
  for (const { jobId, input } of asked.jobs) {
    const own = goods.filter((one) => one.jobId === jobId);
    if (own.length === 0) continue;
    const { day, workshop } = asked;
    const { usedRates } = resolveJob(jobForStall(input, { day, workshop, channel, goods: own }));
    for (const { rate, where, needed } of usedRates) {
      const { document, id, path } = where;
      const owner = document === 'job' ? jobId : id;
      if (needed)
        found.set(JSON.stringify([document, owner, path]), {
          where: owner === undefined ? where : { ...where, id: owner },
          isTypical: rate === null || rate.origin === 'typical',
        });
    }
  }
  // Those of the day first: they are said on its own screen.
  const all = [...ofTheDay(asked), ...found.values()];
  const typical = all.filter(({ isTypical }) => isTypical);
  return { figures: all.length, typical: typical.length, first: typical[0]?.where ?? null };
}

// Helpers

interface FigureAt {
  readonly where: Where;
  readonly isTypical: boolean;
}

function ofTheDay({ stallDay, workshop }: StallAsked): readonly FigureAt[] {
  const { weathers, leftoverShare, forecast, costs } = stallDay;
  const drives = costs.some(({ amount }) => amount.of === 'drive' && amount.km !== 0);
  const ofDay = (rate: Rate | null, ...path: Where['path']) => ({
    rate,
    where: { document: 'stallDay', path },
  });
  const rates = [
    ...weathers.flatMap(({ chance, factor }, at) => [
      ofDay(chance, 'weathers', at, 'chance'),
      ofDay(factor, 'weathers', at, 'factor'),
    ]),
    ofDay(leftoverShare, 'leftoverShare'),
    ...(forecast.from === 'visitors'
      ? [ofDay(forecast.stopShare, 'forecast', 'stopShare'), ofDay(forecast.buyShare, 'forecast', 'buyShare')]
      : []),
    {
      rate: drives ? workshop.rates.travelRate : null,
      where: { document: 'workshop', path: ['rates', 'travelRate'] },
    },
  ];
  return rates.flatMap(({ rate, where }) =>
    rate === null ? [] : [{ where, isTypical: rate.origin === 'typical' }],
  );
}
