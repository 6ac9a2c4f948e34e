import type { Rate } from '@/shared/schemas/rate';
import type { RateUnit } from '@/shared/tables/rateCatalogue';
import { M2_PER_SQUARE_INCH, milesFromKm } from '@/shared/units';

/**
 * The value of a rate in another of the units it may be typed in.
 *
 * @returns the value unchanged where the unit is the same or not of the same kind
 */
export function rateInUnit({ value, unit }: Pick<Rate, 'value' | 'unit'>, wanted: RateUnit): number {
  if (unit === 'mL/m2' && wanted === 'mL/in2') return value * M2_PER_SQUARE_INCH;
  if (unit === 'mL/in2' && wanted === 'mL/m2') return value / M2_PER_SQUARE_INCH;
  // A rate for a kilometre buys less road than one for a mile.
  if (unit === 'money/km' && wanted === 'money/mi') return value / milesFromKm(1);
  if (unit === 'money/mi' && wanted === 'money/km') return value * milesFromKm(1);
  return value;
}
