import type { RateUnit } from '@/shared/tables/rateCatalogue';
import { typicalMoneyCurrencies } from '@/shared/tables/typicalRates';

/** What follows from a rate that is needed and not there. */
export function missingRateWords(unit: RateUnit, currency: string, isVital = false): string {
  if (isVital) return 'Missing. No job can be priced without it; 0 would be a figure, nothing is none.';
  const isStranger = unit.startsWith('money') && !typicalMoneyCurrencies.includes(currency);
  return isStranger
    ? 'Missing. Jobs that need it cannot be priced.'
    : 'Missing. Jobs that need it count with the typical value, and say so.';
}
