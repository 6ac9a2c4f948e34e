import type { TextContext } from '@/app/_words/formatter';
import { unitWords } from '@/app/_words/unitWords';
import type { RowUnit } from '@/lib/grid/rowTypes';
import { formatNumber } from '@/shared/formatNumber';
import { currencyDigits } from '@/shared/tables/currencies';

/**
 * A value of the cost sheet with its unit after it. Small amounts keep three figures that mean
 * something, because the parts of a sum are unrounded and should be seen to make it.
 *
 * @example figureWords(0.018, 'money/press', context) // '0.018 USD a press'
 */
export function figureWords(value: number, unit: RowUnit, context: TextContext): string {
  const { locale, currency } = context;
  if (unit === 'yes or no') return value === 0 ? 'no' : 'yes';
  if (unit === 'share')
    return `${formatNumber(value * 100, locale, { maxDecimals: decimalsFor(value * 100) })} %`;
  if (unit === 'money' || unit.startsWith('money/')) {
    const digits = currencyDigits(currency) ?? 2;
    const maxDecimals = Math.max(digits, decimalsFor(value));
    return `${formatNumber(value, locale, { minDecimals: digits, maxDecimals })} ${unitWords(unit, currency)}`;
  }
  const number = formatNumber(value, locale, { maxDecimals: decimalsFor(value) });
  if (unit === 'number') return number;
  const one = ones[unit];
  if (one !== undefined) return `${number} ${number === '1' ? one : unit}`;
  return `${number} ${unit === 'm2' ? 'm²' : unitWords(unit, currency)}`;
}

// Helpers

const ones: Readonly<Record<string, string>> = {
  pieces: 'piece',
  sheets: 'sheet',
  presses: 'press',
  sessions: 'session',
  designs: 'design',
  payments: 'payment',
  years: 'year',
};

/** Three figures that mean something, at most six decimals. */
function decimalsFor(value: number): number {
  const size = Math.abs(value);
  if (size === 0 || size >= 100) return 2;
  if (size >= 1) return 3;
  return Math.min(6, 3 - Math.floor(Math.log10(size)) - 1);
}
