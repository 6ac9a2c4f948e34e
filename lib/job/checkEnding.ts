import { roundDecimal } from '@/shared/decimal';
import { currencyDigits } from '@/shared/tables/currencies';

export type EndingProblem =
  | { readonly kind: 'unknownCurrency'; readonly currency: string }
  | { readonly kind: 'notAStep'; readonly step: number }
  | { readonly kind: 'finerThanCurrency'; readonly step: number; readonly digits: number };

/**
 * @param step price ending in currency units
 * @param currency ISO 4217 code
 * @returns what keeps prices from ending on multiples of the step, or null: half a yen cannot be paid
 */
export function checkEnding(step: number, currency: string): EndingProblem | null {
  const digits = currencyDigits(currency);
  if (digits === null) return { kind: 'unknownCurrency', currency };
  if (!(step > 0 && step <= 1e6)) return { kind: 'notAStep', step };
  return roundDecimal(step, digits, 'halfUp') === step ? null : { kind: 'finerThanCurrency', step, digits };
}
