import type { NumberRefusal } from './refuseNumber';

/** A binary number keeps 15 decimal digits for certain (IEEE 754 double: 15.95). */
const surestDigits = 15;

/**
 * Refuses digits that would be lost: more decimals than the field keeps, or more digits than a number holds.
 *
 * @param parts - digits before and after the decimal mark
 * @param limits - decimals allowed; zeros at the end don't count
 * @example tooExact({ whole: '1', fraction: '255' }, { decimals: 2 }) // refused, 'decimals'
 */
export function tooExact(
  parts: Readonly<{ whole: string; fraction: string }>,
  limits: Readonly<{ decimals?: number }>,
): NumberRefusal | null {
  const fraction = parts.fraction.replace(/0+$/, '');
  const most = limits.decimals;
  if (most !== undefined && fraction.length > most)
    return { kind: 'refused', reason: 'decimals', facts: { typed: fraction.length, most } };
  const digits = `${parts.whole}${fraction}`.replace(/^0+/, '');
  if (digits.length > surestDigits)
    return { kind: 'refused', reason: 'digits', facts: { typed: digits.length, most: surestDigits } };
  return null;
}
