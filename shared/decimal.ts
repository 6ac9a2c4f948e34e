export type RoundingMode = 'halfUp' | 'halfDown' | 'up' | 'down' | 'floor' | 'ceiling';

/** Digits that survive a handful of floating-point operations on amounts up to 10^9 with cents to spare. */
export const MONEY_DIGITS = 12;
/** Digits that every decimal number keeps through a double (IEEE 754 binary64). */
export const DOUBLE_DIGITS = 15;

/**
 * Rounds on the decimal text of a number, so that 1.005 is a half and not the 1.00499… its double holds.
 *
 * @param value any finite number
 * @param decimals places kept after the point, may be negative (−2 keeps hundreds)
 * @param mode halfUp takes a half away from zero, halfDown towards it; up is away from zero, down towards it
 * @param significantDigits digits of the decimal text that are taken as meant, 1 to 17
 * @returns the rounded number, never −0
 * @throws RangeError for a value that is not finite
 * @example roundDecimal(1.005, 2, 'halfUp') // => 1.01
 */
export function roundDecimal(
  value: number,
  decimals: number,
  mode: RoundingMode,
  significantDigits = DOUBLE_DIGITS,
): number {
  if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be rounded: it is not a finite number`);
  const { negative, digits, exponent } = decimalText(value, significantDigits);
  // The value is 0.DIGITS × 10^exponent; the first `kept` digits stay.
  const kept = exponent + decimals;
  if (kept >= digits.length) return Number(`${negative ? '-' : ''}0.${digits}e${exponent}`) || 0;
  const head = kept > 0 ? digits.slice(0, kept) : '0';
  const rest = kept >= 0 ? digits.slice(kept) : `0${digits}`;
  const up = roundsAway(mode, rest, negative);
  const whole = BigInt(head) + (up ? 1n : 0n);
  return Number(`${negative ? '-' : ''}${whole}e${-decimals}`) || 0;
}

/**
 * The whole multiple of `step` nearest in the given direction, again on decimal text.
 *
 * @param value any finite number
 * @param step above 0
 * @param mode direction of rounding
 * @returns a multiple of `step`
 * @example roundToStep(16.27, 0.5, 'ceiling') // => 16.5
 */
export function roundToStep(value: number, step: number, mode: RoundingMode): number {
  if (!(step > 0)) throw new RangeError(`a step of ${step} has no multiples to round to`);
  const count = roundDecimal(Number((value / step).toPrecision(DOUBLE_DIGITS)), 0, mode, MONEY_DIGITS);
  return Number((count * step).toPrecision(DOUBLE_DIGITS));
}

interface DecimalText {
  readonly negative: boolean;
  readonly digits: string;
  readonly exponent: number;
}

function decimalText(value: number, significantDigits: number): DecimalText {
  const [mantissa = '0', power = '0'] = Math.abs(value)
    .toExponential(significantDigits - 1)
    .split('e');
  return { negative: value < 0, digits: mantissa.replace('.', ''), exponent: Number(power) + 1 };
}

function roundsAway(mode: RoundingMode, rest: string, negative: boolean): boolean {
  const something = /[1-9]/.test(rest);
  switch (mode) {
    case 'halfUp':
      return (rest[0] ?? '0') >= '5';
    case 'halfDown':
      return /^(?:[6-9]|5\d*[1-9])/.test(rest);
    case 'up':
      return something;
    case 'down':
      return false;
    case 'floor':
      return something && negative;
    case 'ceiling':
      return something && !negative;
    default:
      return mode satisfies never;
  }
}
