import { cashHalf, cashStep } from '@/shared/tables/cashRounding';
import { roundToStep } from './decimal';
import { fromMinor, type MinorUnits, toMinor, UnknownCurrency } from './money';

/**
 * A total as it is paid in coins and notes; a half goes up, or down where that is the custom (`cashHalf`). For totals of cash payments only, after tax: never for
 * single prices, card payments or transfers.
 *
 * @param total whole minor units
 * @param currency ISO 4217 code
 * @returns whole minor units
 * @throws UnknownCurrency
 * @example roundCash(492 as MinorUnits, 'CAD') // => 490
 */
export function roundCash(total: MinorUnits, currency: string): MinorUnits {
  const step = cashStep(currency);
  if (step === null) throw new UnknownCurrency(currency);
  return toMinor(roundToStep(fromMinor(total, currency), step, cashHalf(currency)), currency);
}
