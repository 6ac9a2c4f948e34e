import { currencyDigits } from '@/shared/tables/currencies';
import type { Brand } from './brand';
import { MONEY_DIGITS, roundDecimal, roundToStep } from './decimal';
import { numberFormat, withMinus } from './numberFormat';
import { splitWhole } from './splitWhole';

/** Whole minor units (cents, yen, fils) of a currency that is named beside it. */
export type MinorUnits = Brand<number, 'MinorUnits'>;

/** Amounts above this are refused: beyond it the cents would not survive twelve significant digits. */
export const LARGEST_AMOUNT = 1e9;

export class AmountTooLarge extends RangeError {
  override readonly name = 'AmountTooLarge';
  constructor(amount: number) {
    super(`${amount} is beyond the largest amount of ${LARGEST_AMOUNT} that is kept exact to the cent`);
  }
}

export class UnknownCurrency extends RangeError {
  override readonly name = 'UnknownCurrency';
  constructor(code: string) {
    super(`${code} is not a currency code of ISO 4217 with a minor unit`);
  }
}

/**
 * The one rounding of the product: an unrounded amount becomes whole minor units, half away from zero on
 * its decimal text.
 *
 * @param amount currency units, −10^9 to 10^9
 * @param currency ISO 4217 code
 * @returns whole minor units
 * @throws AmountTooLarge, UnknownCurrency
 * @example toMinor(761.305, 'USD') // => 76131
 */
export function toMinor(amount: number, currency: string): MinorUnits {
  if (!(Math.abs(amount) <= LARGEST_AMOUNT)) throw new AmountTooLarge(amount);
  const digits = digitsOf(currency);
  const rounded = roundDecimal(amount, digits, 'halfUp', MONEY_DIGITS);
  return roundDecimal(rounded * 10 ** digits, 0, 'halfUp') as MinorUnits;
}

/** @returns currency units of whole minor units: fromMinor(300, 'JPY') is 300, of 'USD' 3. */
export const fromMinor = (minor: MinorUnits, currency: string): number =>
  Number(`${minor}e${-digitsOf(currency)}`);

/**
 * An amount lifted to the next price the maker likes to write.
 *
 * @param amount currency units
 * @param step price ending in currency units, above 0 (0.5 gives .00 and .50)
 * @param currency ISO 4217 code; a step finer than its minor unit is widened to it
 * @returns whole minor units, never below the amount
 */
export function toPriceEnding(amount: number, step: number, currency: string): MinorUnits {
  const unit = Number(`1e${-digitsOf(currency)}`);
  return toMinor(roundToStep(amount, Math.max(step, unit), 'ceiling'), currency);
}

/**
 * @param minor minor units, unrounded
 * @param step price ending in currency units
 * @returns the largest price on the ending that is no more
 */
export function toPriceUnder(minor: number, step: number, currency: string): MinorUnits {
  const unit = Number(`1e${-digitsOf(currency)}`);
  return toMinor(roundToStep(minor * unit, Math.max(step, unit), 'floor'), currency);
}

/**
 * Splits whole minor units over shares by largest remainder, so that the parts add to the whole exactly.
 * Ties go to the part named first.
 *
 * @param total whole minor units, may be negative
 * @param shares unrounded sizes of the parts; at least one, none negative, not all 0
 * @returns one whole number for each share
 * @throws RangeError for shares it cannot split over
 * @example splitMinor(100 as MinorUnits, [1, 1, 1]) // => [34, 33, 33]
 */
export function splitMinor(total: MinorUnits, shares: readonly number[]): readonly MinorUnits[] {
  const sum = shares.reduce((running, share) => running + share, 0);
  if (!(sum > 0) || shares.some((share) => !(share >= 0))) {
    throw new RangeError(`nothing to split over: the shares are ${shares.join(', ')}`);
  }
  const exact = shares.map((share) => Math.abs(total) * (share / sum));
  return splitWhole(Math.abs(total), exact).map((part) => (total < 0 ? -part || 0 : part) as MinorUnits);
}

/**
 * Rounds parts so that what is shown adds to the total that is shown, each part within one minor unit of
 * its own value. Parts may be negative.
 *
 * @param total unrounded total in currency units; the parts add to it but for floating-point noise
 * @param parts unrounded parts in currency units
 * @param currency ISO 4217 code
 * @returns whole minor units for each part; they add to toMinor(total)
 */
export function shownParts(total: number, parts: readonly number[], currency: string): readonly MinorUnits[] {
  const scale = 10 ** digitsOf(currency);
  const cents = parts.map((part) => Number((part * scale).toPrecision(MONEY_DIGITS)));
  return splitWhole(toMinor(total, currency), cents).map((part) => part as MinorUnits);
}

/**
 * @param minor whole minor units
 * @param currency ISO 4217 code
 * @param locale BCP 47 tag, decides the marks only
 * @returns the figure without the currency's name, in the currency's own digits; never a minus before zero
 * @example formatMinor(76131 as MinorUnits, 'USD', 'en-US') // => '761.31'
 */
export function formatMinor(minor: MinorUnits, currency: string, locale: string): string {
  const digits = digitsOf(currency);
  return withMinus(
    numberFormat(locale, {
      minimumFractionDigits: digits,
      maximumFractionDigits: digits,
    }).format(fromMinor(minor, currency) || 0),
  );
}

function digitsOf(currency: string): number {
  const digits = currencyDigits(currency);
  if (digits === null) throw new UnknownCurrency(currency);
  return digits;
}
