import { numberFormat, withMinus } from './numberFormat';

interface NumberShape {
  /** Decimals always shown, 0 to 12. */
  readonly minDecimals?: number;
  /** Decimals shown at most, 0 to 12; 12 hides the noise of binary sums. */
  readonly maxDecimals?: number;
  /** False leaves the thousands together, as in a field being edited. */
  readonly grouped?: boolean;
}

/**
 * Writes a number the way a locale does; what rounds to nothing is never shown as minus nothing.
 *
 * @param value - a finite number
 * @param locale - a BCP 47 tag
 * @returns text that `parseNumber` reads back in the same locale
 * @example formatNumber(-0.004, 'en', { minDecimals: 2, maxDecimals: 2 }) // '0.00'
 */
export function formatNumber(value: number, locale: string, shape: NumberShape = {}): string {
  if (!Number.isFinite(value)) throw new NotANumberToShow(value);
  const minimumFractionDigits = shape.minDecimals ?? 0;
  return withMinus(
    numberFormat(locale, {
      minimumFractionDigits,
      maximumFractionDigits: Math.max(minimumFractionDigits, shape.maxDecimals ?? 12),
      useGrouping: shape.grouped ?? true,
      signDisplay: 'negative',
    }).format(value),
  );
}

/** A figure that is not there is `null` in every document, so meeting NaN here is a fault of ours. */
export class NotANumberToShow extends Error {
  constructor(value: number) {
    super(`formatNumber was given ${value}, and shows finite numbers only`);
    this.name = 'NotANumberToShow';
  }
}
