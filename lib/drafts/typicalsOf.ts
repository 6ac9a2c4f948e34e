import type { Rate } from '@/shared/schemas/rate';
import type { RateUnit } from '@/shared/tables/rateCatalogue';
import { typicalMoneyCurrencies } from '@/shared/tables/typicalRates';

/**
 * Makes the typical rates of one new document, all of the same day.
 *
 * @param day YYYY-MM-DD
 * @param currency ISO 4217 code; in one far from the dollar an amount of money is missing rather than typical
 */
export const typicalsOf =
  (day: string, currency: string) =>
  <Unit extends RateUnit>(value: number | null, unit: Unit): Rate<Unit> | null =>
    value === null || (unit.startsWith('money') && !typicalMoneyCurrencies.includes(currency))
      ? null
      : { value, unit, date: day, origin: 'typical' };
