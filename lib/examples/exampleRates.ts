import type { Rate } from '@/shared/schemas/rate';
import type { RateUnit } from '@/shared/tables/rateCatalogue';

/** Makes the rates of one example document: all set on the same day. */
export const ratesOf =
  (day: string) =>
  <Unit extends RateUnit>(
    value: number,
    unit: Unit,
    origin: Rate['origin'] = 'yours',
    count?: number,
  ): Rate<Unit> => ({
    value,
    unit,
    date: day,
    origin,
    ...(count === undefined ? {} : { count }),
  });
