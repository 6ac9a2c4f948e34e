import { resolveJob } from '@/lib/job/resolveJob';
import type { FrozenRate } from '@/shared/schemas/priceList';
import type { JobInput } from '@/shared/schemas/request';

/** A rate with whether anybody has looked at it: typical values do not age. */
export interface StandingRate extends FrozenRate {
  readonly isTypical: boolean;
}

/**
 * @param jobId names the job's own rates where those of several jobs are kept together
 * @returns every rate the price of one line stands on, as it is now; blanks of other lines are left out
 */
export function frozenRates(input: JobInput, blankId: string, jobId = ''): readonly StandingRate[] {
  return resolveJob(input).usedRates.flatMap(
    ({ needed, rate, typical, where, of }): readonly StandingRate[] => {
      const isOther = where.document === 'blank' && where.id !== blankId;
      const value = rate?.value ?? typical.typical;
      if (!needed || isOther || value === null || value === undefined) return [];
      return [
        {
          place: JSON.stringify([
            where.document,
            where.id ?? (where.document === 'job' ? jobId : ''),
            where.path,
          ]),
          label: of === '' ? typical.label : `${typical.label}, ${of}`,
          value,
          unit: rate?.unit ?? typical.unit,
          date: rate?.date ?? input.asOf,
          isTypical: rate === null || rate.origin === 'typical',
        },
      ];
    },
  );
}
