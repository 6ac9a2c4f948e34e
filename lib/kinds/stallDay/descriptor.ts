import type { KindDescriptor, Link } from '@/lib/stored/registry';
import { type StallDay, stallDaySchema } from '@/shared/schemas/stallDay';

export const stallDay: KindDescriptor<StallDay, 'draft'> = {
  nature: 'draft',
  word: 'stall day',
  version: 1,
  schema: stallDaySchema,
  steps: {},
  linksOf: ({ channelId, ranges, held, prices, forecast, power, made, likeId }) => [
    ...(channelId === null ? [] : [{ to: 'channel', id: channelId, path: ['channelId'] }]),
    ...ranges.flatMap(({ designs }, at) => jobLinks(designs, ['ranges', at, 'designs'])),
    ...jobLinks(held, ['held']),
    ...jobLinks(prices.own, ['prices', 'own']),
    ...jobLinks(prices.lastHour?.prices ?? [], ['prices', 'lastHour', 'prices']),
    ...jobLinks(made, ['made']),
    ...made.map(({ of }, at): Link => ({ to: 'job', id: of, path: ['made', at, 'of'] })),
    ...power.pressIds.map((id, at): Link => ({ to: 'press', id, path: ['power', 'pressIds', at] })),
    ...(likeId === undefined
      ? []
      : [{ to: 'stallDay', id: likeId, path: ['likeId'], isApart: true } as const]),
    // A day it learns from has a plan and an end of its own.
    ...(forecast.from === 'pastDays' ? forecast.stallDayIds : []).map(
      (id, at): Link => ({ to: 'stallDay', id, path: ['forecast', 'stallDayIds', at], isApart: true }),
    ),
  ],
};

// Helpers

const jobLinks = (named: readonly { readonly jobId: string }[], path: Link['path']): readonly Link[] =>
  named.map(({ jobId }, at) => ({ to: 'job', id: jobId, path: [...path, at, 'jobId'] }));
